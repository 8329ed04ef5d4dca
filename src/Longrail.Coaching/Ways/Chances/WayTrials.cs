using Longrail.Coaching.Players;
using Longrail.Physics.Contacts;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;

namespace Longrail.Coaching.Ways.Chances;

/// <summary>Plays a player's strokes of a way.</summary>
internal sealed class WayTrials(WayOddsRequest request, WayRoute route)
{
    /// <summary>The ball may clip one cushion beside the route, as it often does on its last inches; farther travels
    /// are luck, and are not promised to anybody.</summary>
    private const int StrayCushions = 1;

    private readonly LayoutPlayer _player = new(request.Setup, request.CueBall);

    /// <summary>The stroke as it was meant.</summary>
    /// <param name="meant">The stroke.</param>
    /// <param name="cut">The cut at the meeting of the two balls, radians, positive to the left; 0 if they do not
    /// meet.</param>
    public Trial AsMeant(Stroke meant, out double cut)
    {
        var watch = Watch(endsOnMiss: false);
        StopReason ended = _player.Play(meant, ref watch);
        cut = watch.Cut;
        return ToTrial(in watch, ended);
    }

    /// <summary>A stroke with the player's errors.</summary>
    /// <param name="meant">The stroke as it was meant.</param>
    /// <param name="errors">The errors.</param>
    /// <param name="number">Which of them.</param>
    /// <param name="endsOnMiss">Whether only the making counts, so that a miss may be cut short.</param>
    public Trial Strayed(Stroke meant, StrokeErrors errors, ulong number, bool endsOnMiss)
    {
        if (errors.Played(meant, number, _player.Grip) is not { } stroke) return Trial.Miscue;
        var watch = Watch(endsOnMiss);
        StopReason ended = _player.Play(stroke, ref watch);
        return ToTrial(in watch, ended);
    }

    private FateWatch Watch(bool endsOnMiss) => new(
        request.CueBall, request.ObjectBall, route.Pocket, route.ObjectBall.Count + StrayCushions, endsOnMiss);

    private Trial ToTrial(in FateWatch watch, StopReason ended)
    {
        bool met = !double.IsNaN(watch.Met);
        double? gap = null;
        if (watch.Kissed) gap = 0;
        else if (met) gap = _player.Shot.ClosestAfter(request.CueBall, request.ObjectBall, watch.Met, watch.Decided);
        // A shot that never comes to rest within the limits leaves nobody a ball in hand: it counts as a miss.
        bool made = watch.Made && ended == StopReason.AtRest;
        return new Trial(made, watch.Scratched, met, watch.Kissed, gap, made ? Places() : null);
    }

    private Vec2?[] Places()
    {
        var places = new Vec2?[request.Setup.Balls.Count];
        for (int i = 0; i < places.Length; i++)
        {
            BallEnd end = _player.Shot.End(i);
            places[i] = end.Phase == MotionPhase.Pocketed ? null : end.State.Position;
        }

        return places;
    }
}
