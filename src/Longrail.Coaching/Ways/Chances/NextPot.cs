using Longrail.Coaching.Players;
using Longrail.Coaching.Statistics;
using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;

namespace Longrail.Coaching.Ways.Chances;

/// <summary>The shot on the next ball, from the balls as the first shot left them.</summary>
/// <remarks>Only straight pots are looked at, into the pocket with the best estimated chance, at a speed that carries
/// the ball a little farther than the pocket, struck in the centre. Where none is open the place counts nothing. A next
/// ball that went down with the first counts nothing either.</remarks>
internal sealed class NextPot
{
    /// <summary>A ball may clip a cushion beside the pocket.</summary>
    private const int StrayCushions = 1;

    /// <summary>More places than these are not played from: they would not narrow the interval enough to be worth their
    /// time. The places are independent of each other, so the first are as good as any.</summary>
    private const int MostPlaces = 200;

    private readonly WayOddsRequest _request;
    private readonly int _ball;
    private readonly ShotPlayer _player = new();
    private readonly PocketOutline[] _pockets;
    private readonly double _contact;
    private readonly double _direction;

    /// <summary>Prepares it.</summary>
    public NextPot(WayOddsRequest request, int ball)
    {
        _request = request;
        _ball = ball;
        EquipmentSpec equipment = request.Setup.Equipment;
        _pockets = new TableOutline(equipment.Table).Pockets;
        ShotBall cue = request.Setup.Balls[request.CueBall];
        _contact = BallContact.Reach(cue.Radius, request.Setup.Balls[ball].Radius);
        // Near the centre the squirt grows in proportion to the offset.
        const double Small = 1e-3;
        double squirt = TipContact.SquirtTangent(Small, cue.Mass, equipment.Cue) / (Small * cue.Radius);
        Player player = request.Player;
        _direction = Math.Sqrt(player.Aim * player.Aim + squirt * squirt * player.TipAcross * player.TipAcross);
    }

    /// <summary>An estimate of the chance from a layout, without playing.</summary>
    public double Estimate(IReadOnlyList<Vec2?> places) =>
        Easiest(places) is { } pot ? pot.Chance(_direction, _contact) : 0;

    /// <summary>Plays the shot once from each layout.</summary>
    /// <param name="layouts">The balls after each made ball.</param>
    /// <param name="made">The chance to make the first ball.</param>
    /// <param name="errors">The player's errors.</param>
    /// <param name="stop">Ends it early.</param>
    public NextShot Of(
        IReadOnlyList<IReadOnlyList<Vec2?>> layouts, Odds made, StrokeErrors errors, CancellationToken stop)
    {
        int places = Math.Min(layouts.Count, MostPlaces);
        int potted = 0;
        int[] played = new int[_pockets.Length];
        for (int i = 0; i < places; i++)
        {
            if (i % 16 == 0) stop.ThrowIfCancellationRequested();
            if (Easiest(layouts[i]) is not { } pot) continue;
            played[(int)pot.Pocket]++;
            if (IsPotted(layouts[i], pot, errors, (ulong)i)) potted++;
        }

        int most = played.Length > 0 ? Array.IndexOf(played, played.Max()) : -1;
        bool any = most >= 0 && played[most] > 0;
        var odds = Odds.Of(potted, places);
        return new NextShot(
            any ? _pockets[most].Name : null,
            any ? CutFromTheMean(layouts, _pockets[most]) : null,
            odds,
            made.Share * odds.Share);
    }

    private double? CutFromTheMean(IReadOnlyList<IReadOnlyList<Vec2?>> layouts, PocketOutline pocket)
    {
        // The balls that stayed up every time stand at their mean places; the others are out of the way.
        var means = new Vec2?[_request.Setup.Balls.Count];
        for (int ball = 0; ball < means.Length; ball++)
        {
            Vec2 sum = Vec2.Zero;
            int count = 0;
            foreach (IReadOnlyList<Vec2?> places in layouts)
            {
                if (places[ball] is not { } place) continue;
                sum += place;
                count++;
            }

            bool counts = ball == _request.CueBall || ball == _ball ? count > 0 : count == layouts.Count;
            means[ball] = counts ? sum / count : null;
        }

        return means[_request.CueBall] is not null && means[_ball] is not null
            ? PotLine.To(_request.Setup, means, _request.CueBall, _ball, pocket)?.Cut
            : null;
    }

    private PotLine? Easiest(IReadOnlyList<Vec2?> places)
    {
        if (places[_ball] is null) return null;
        PotLine? easiest = null;
        double best = 0;
        foreach (PocketOutline pocket in _pockets)
        {
            if (PotLine.To(_request.Setup, places, _request.CueBall, _ball, pocket) is not { } pot) continue;
            double chance = pot.Chance(_direction, _contact);
            if (chance <= best) continue;
            best = chance;
            easiest = pot;
        }

        return easiest;
    }

    private bool IsPotted(IReadOnlyList<Vec2?> places, PotLine pot, StrokeErrors errors, ulong number)
    {
        var balls = new List<ShotBall>(places.Count);
        int cueBall = 0;
        int ball = 0;
        for (int i = 0; i < places.Count; i++)
        {
            if (places[i] is not { } place) continue;
            if (i == _request.CueBall) cueBall = balls.Count;
            if (i == _ball) ball = balls.Count;
            balls.Add(_request.Setup.Balls[i] with { Start = BallState.AtRest(place) });
        }

        var player = new LayoutPlayer(new ShotSetup(_request.Setup.Equipment, balls), cueBall, _player);
        var template = new Stroke(pot.Approach, PotSpeed.Of(pot, _request.Setup.Equipment), 0, 0, _request.Elevation);
        if (PotAim.Of(player, cueBall, ball, pot, _contact, template) is not { } meant) return false;
        if (errors.Played(meant, number, player.Grip) is not { } stroke) return false;
        var watch = new FateWatch(cueBall, ball, pot.Pocket, StrayCushions, endsOnMiss: true);
        return player.Play(stroke, ref watch) == StopReason.AtRest && watch.Made;
    }
}
