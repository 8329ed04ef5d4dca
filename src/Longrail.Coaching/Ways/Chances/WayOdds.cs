using Longrail.Coaching.Players;
using Longrail.Coaching.Statistics;
using Longrail.Physics.Equipment;

namespace Longrail.Coaching.Ways.Chances;

/// <summary>A way's odds for a player: his strokes of it, played one by one on the full physics.</summary>
public static class WayOdds
{
    /// <summary>Every candidate stroke is played this often before the better ones go on.</summary>
    private const int FirstHeat = 32;

    /// <summary>How often the better ones are played again.</summary>
    private const int SecondHeat = 64;

    private const int SecondHeatStrokes = 3;

    /// <summary>One final stroke in so many is followed to its end even when the ball is missed: the scratches are counted
    /// on these. The others end with the miss, which saves half the time.</summary>
    private const int FollowedInOne = 4;

    // Parts of a way's random stream. The final strokes are fresh: counting those that chose the stroke would flatter
    // it.
    private const uint HeatPart = 1;
    private const uint FinalPart = 2;
    private const uint NextPart = 3;

    /// <summary>Picks the stroke of a way that the player makes most of, and says what it promises.</summary>
    /// <remarks>The candidates are raced: all of them a few times with the same errors, the best of those more often,
    /// and the best of all is played <see cref="WayOddsRequest.Shots"/> times with fresh errors. With a next ball the
    /// race counts an estimate of the shot on it, the final its full play. Made means: the cue ball meets the object
    /// ball before any other, that goes down in the route's pocket by whatever way, and the cue ball does not. The
    /// answer is a pure function of its arguments.</remarks>
    /// <param name="request">Layout and player.</param>
    /// <param name="way">The way, as the search found it.</param>
    /// <param name="stop">Ends it early.</param>
    /// <returns>The way with all but its <see cref="Way.Words"/>, which stay empty.</returns>
    /// <exception cref="ArgumentException">The way has no stroke, or no strokes are to be played.</exception>
    /// <exception cref="OperationCanceledException">It was ended early.</exception>
    public static Way Of(WayOddsRequest request, FoundWay way, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(way);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(request.Shots, nameof(request));
        if (way.Strokes.Count == 0) throw new ArgumentException("The way has no stroke.", nameof(way));

        ulong key = KeyOf(request.Seed, way.Route);
        var trials = new WayTrials(request, way.Route);
        NextPot? next = request.NextBall is { } ball ? new NextPot(request, ball) : null;
        FoundStroke best = Race(way.Strokes, trials, next, Errors(request, key, HeatPart), stop);

        StrokeErrors errors = Errors(request, key, FinalPart);
        var tally = new WayTally();
        for (int i = 0; i < request.Shots; i++)
        {
            if (i % 16 == 0) stop.ThrowIfCancellationRequested();
            bool isFollowed = i % FollowedInOne == 0;
            tally.Add(trials.Strayed(best.Stroke, errors, (ulong)i, endsOnMiss: !isFollowed), isFollowed);
        }

        Trial meant = trials.AsMeant(best.Stroke, out double cut);
        return new Way
        {
            Route = way.Route,
            Words = "",
            Stroke = best,
            Windows = way.Windows,
            Cut = cut,
            HitFraction = 1 - Math.Abs(Math.Sin(cut)),
            AimPoint = StickLine.AimPoint(
                request.Setup.Balls[request.CueBall].Start.Position, best.Stroke.Aim, request.Setup.Equipment.Table),
            Made = tally.Made,
            Scratch = tally.Scratch,
            Kiss = tally.Kiss(meant.Gap),
            Rest = RestEllipse.Of(tally.RestPlaces(request.CueBall)),
            Next = next?.Of(tally.Layouts, tally.Made, Errors(request, key, NextPart), stop),
        };
    }

    /// <summary>The key of a way's random stream.</summary>
    internal static ulong KeyOf(ulong seed, WayRoute route)
    {
        ulong key = RandomNumbers.Mixed(seed, 1 + (ulong)route.Pocket);
        foreach (CushionName cushion in route.CueBall) key = RandomNumbers.Mixed(key, 1 + (ulong)cushion);
        key = RandomNumbers.Mixed(key, 0);
        foreach (CushionName cushion in route.ObjectBall) key = RandomNumbers.Mixed(key, 1 + (ulong)cushion);
        return key;
    }

    private static StrokeErrors Errors(WayOddsRequest request, ulong key, uint part) =>
        new(request.Player, new RandomNumbers(key, part));

    private static FoundStroke Race(
        IReadOnlyList<FoundStroke> strokes, WayTrials trials, NextPot? next, StrokeErrors errors, CancellationToken stop)
    {
        if (strokes.Count == 1) return strokes[0];
        double[] scores = new double[strokes.Count];
        Run(Enumerable.Range(0, strokes.Count), 0, FirstHeat);
        if (strokes.Count > SecondHeatStrokes) Run(Ranked().Take(SecondHeatStrokes), FirstHeat, SecondHeat);
        else Run(Ranked(), FirstHeat, SecondHeat);
        return strokes[Ranked()[0]];

        // Scores of the second heat stand on the first, so only those that ran in it can win.
        void Run(IEnumerable<int> entrants, int from, int count)
        {
            foreach (int entrant in entrants)
            {
                for (int i = from; i < from + count; i++)
                {
                    if (i % 16 == 0) stop.ThrowIfCancellationRequested();
                    Trial trial = trials.Strayed(strokes[entrant].Stroke, errors, (ulong)i, endsOnMiss: true);
                    if (trial.Made) scores[entrant] += next?.Estimate(trial.Places!) ?? 1;
                }
            }
        }

        // Ties go to the stroke that the search put first: the one with more leeway.
        List<int> Ranked() => [.. Enumerable.Range(0, strokes.Count).OrderByDescending(i => scores[i]).ThenBy(i => i)];
    }
}
