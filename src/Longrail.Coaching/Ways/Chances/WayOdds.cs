using Longrail.Coaching.Players;
using Longrail.Coaching.Statistics;
using Longrail.Physics.Contacts;
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

    /// <summary>One final stroke in so many is followed to its end even when the ball is missed: the scratches are
    /// counted on these. The others end with the miss, which saves half the time.</summary>
    private const int FollowedInOne = 4;

    // Parts of a way's random stream. The final strokes are fresh: counting those that chose the stroke would flatter
    // it.
    private const uint HeatPart = 1;
    private const uint FinalPart = 2;
    private const uint NextPart = 3;

    /// <summary>Picks the stroke of a way that the player makes most of, and says what it promises.</summary>
    /// <remarks>The candidates are raced: all of them a few times with the same errors, the best of those more often,
    /// and the best of all (or the mildest that cannot be told from it) is played <see cref="WayOddsRequest.Shots"/>
    /// times with fresh errors. With a next ball the race counts an estimate of the shot on it, the final its full
    /// play. Made means: the cue ball meets the object ball before any other, that goes down in the route's pocket
    /// with at most one cushion beside the route's, and the cue ball does not. The answer is a pure function of its
    /// arguments.</remarks>
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
        IReadOnlyList<FoundStroke> strokes, WayTrials trials, NextPot? next, StrokeErrors errors,
        CancellationToken stop)
    {
        if (strokes.Count == 1) return strokes[0];
        double[][] scores = [.. strokes.Select(_ => new double[FirstHeat + SecondHeat])];
        Run(Enumerable.Range(0, strokes.Count), 0, FirstHeat);
        List<int> finalists = [.. Ranked(Enumerable.Range(0, strokes.Count)).Take(SecondHeatStrokes)];
        Run(finalists, FirstHeat, SecondHeat);

        // What cannot be told apart from the best is chosen as a teacher would: the mildest.
        double[] best = scores[Ranked(finalists)[0]];
        IEnumerable<int> asGood = finalists.Where(i => WithinNoise(best, scores[i]));
        return strokes[asGood.MinBy(i => Hardness(strokes[i].Stroke))];

        void Run(IEnumerable<int> entrants, int from, int count)
        {
            foreach (int entrant in entrants)
            {
                for (int i = from; i < from + count; i++)
                {
                    if (i % 16 == 0) stop.ThrowIfCancellationRequested();
                    Trial trial = trials.Strayed(strokes[entrant].Stroke, errors, (ulong)i, endsOnMiss: true);
                    if (trial.Made) scores[entrant][i] = next?.Estimate(trial.Places!) ?? 1;
                }
            }
        }

        // Ties go to the stroke that the search put first.
        List<int> Ranked(IEnumerable<int> entrants) =>
            [.. entrants.OrderByDescending(i => scores[i].Sum()).ThenBy(i => i)];
    }

    /// <summary>Whether a score is less than one deviation below the best. Both had the same errors, so that only the
    /// trials in which they differ make noise.</summary>
    private static bool WithinNoise(double[] best, double[] other)
    {
        double behind = 0;
        double noise = 0;
        for (int i = 0; i < best.Length; i++)
        {
            double d = best[i] - other[i];
            behind += d;
            noise += d * d;
        }

        return behind <= Math.Sqrt(noise);
    }

    /// <summary>How much a stroke asks of a player: its speed and its tip offset, squares added. Eight miles an hour
    /// weighs as much as a tip a third of the radius off the centre (assumption).</summary>
    private static double Hardness(Stroke stroke)
    {
        const double HardSpeed = 3.6;
        const double FarTip = 0.0095;
        double speed = stroke.Speed / HardSpeed;
        double right = stroke.OffsetRight / FarTip;
        double above = stroke.OffsetAbove / FarTip;
        return speed * speed + right * right + above * above;
    }
}
