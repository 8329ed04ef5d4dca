using Longrail.Physics.Geometry;

namespace Longrail.Physics.Shots.Aims;

/// <summary>What the cue ball meets first at an aim.</summary>
/// <param name="Failure">None if it is the object ball.</param>
/// <param name="Cut">The cut then, radians, positive to the left.</param>
/// <param name="InTheWay">The other ball that was met first.</param>
internal readonly record struct FirstContact(AimFailure Failure, double Cut, int? InTheWay)
{
    /// <summary>Time enough for a ball to cross a table at a walking pace and stop; the search needs no more,
    /// seconds.</summary>
    private static readonly ShotOptions Options = new(MaxTime: 60, MaxEvents: 2_000);

    internal static FirstContact Of(AimShot shot, double aim, int cueBall, int objectBall) =>
        In(shot.Play(aim, Options), cueBall, objectBall);

    internal static FirstContact In(Trace trace, int cueBall, int objectBall)
    {
        foreach (ShotEvent e in trace.Events)
        {
            bool involved = e.BallA == cueBall || e.BallB == cueBall;
            if (!involved) continue;
            switch (e.Kind)
            {
                case ShotEventKind.BallsMeet:
                    int other = e.BallA == cueBall ? e.BallB!.Value : e.BallA;
                    return other == objectBall
                        ? new FirstContact(AimFailure.None, CutAt(e, cueBall), null)
                        : new FirstContact(AimFailure.Blocked, 0, other);
                case ShotEventKind.Cushion or ShotEventKind.Jaw or ShotEventKind.Pocketed:
                    return new FirstContact(AimFailure.CushionFirst, 0, null);
                case ShotEventKind.Stops:
                    return new FirstContact(AimFailure.CueBallStops, 0, null);
            }
        }

        return new FirstContact(AimFailure.CueBallStops, 0, null);
    }

    private static double CutAt(ShotEvent e, int cueBall)
    {
        bool first = e.BallA == cueBall;
        Vec2 normal = (e.BeforeB!.Value.Position - e.BeforeA.Position) * (first ? 1 : -1);
        Vec2 approach = (e.BeforeA.Velocity - e.BeforeB.Value.Velocity) * (first ? 1 : -1);
        return Math.Atan2(approach.Cross(normal), approach.Dot(normal));
    }
}
