using Longrail.Physics.Contacts;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;

namespace Longrail.Coaching.Ways;

/// <summary>Plays a stroke on the layout of a question.</summary>
public static class WayShot
{
    /// <summary>The shot: what <c>shoot</c> shows for the way's scene, bit for bit.</summary>
    /// <param name="request">The question; its cue ball must be there.</param>
    /// <param name="stroke">The stroke.</param>
    public static Trace Of(WaysRequest request, Stroke stroke)
    {
        ArgumentNullException.ThrowIfNull(request);
        ShotSetup resting = AtRest(request.Scene.Setup);
        int cueBall = request.Scene.IndexOf(request.CueBall!);
        ShotBall cue = resting.Balls[cueBall];
        TipResult tip = TipContact.Strike(stroke, cue.Radius, cue.Mass, resting.Equipment.Cue);
        ShotBall[] balls = [.. resting.Balls];
        balls[cueBall] = cue with { Start = new BallState(cue.Start.Position, tip.Velocity, tip.Spin) };
        return ShotRunner.Run(new ShotSetup(resting.Equipment, balls, new StrokeRecord(cueBall, stroke, tip)));
    }

    /// <summary>The same layout with all balls at rest and nothing struck.</summary>
    /// <param name="setup">The set-up.</param>
    internal static ShotSetup AtRest(ShotSetup setup) => new(
        setup.Equipment,
        [.. setup.Balls.Select(ball => ball with { Start = new BallState(ball.Start.Position, default, default) })]);
}
