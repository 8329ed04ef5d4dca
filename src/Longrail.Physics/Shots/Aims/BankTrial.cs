using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;

namespace Longrail.Physics.Shots.Aims;

/// <summary>How one trial of a bank went.</summary>
/// <param name="Failure">What went wrong before the pocket could be looked at; none otherwise.</param>
/// <param name="InTheWay">The ball in the way, where one was.</param>
/// <param name="Cut">The cut, radians.</param>
/// <param name="Offset">How far from the middle of the mouth the way after the last cushion passes, metres, positive to
/// the right looking into the pocket.</param>
/// <param name="Pocketed">Whether the ball went down there straight from the last cushion, jaws allowed.</param>
/// <param name="JawTouches">How many jaw contacts it needed.</param>
internal readonly record struct BankTrial(
    AimFailure Failure, int? InTheWay, double Cut, double? Offset, bool Pocketed, int JawTouches)
{
    internal static BankTrial Of(Trace trace, PocketOutline pocket, int cueBall, int objectBall, IReadOnlyList<CushionName> off)
    {
        FirstContact first = FirstContact.In(trace, cueBall, objectBall);
        if (first.Failure != AimFailure.None) return Failed(first.Failure, first.InTheWay);
        int cushions = 0;
        int jaws = 0;
        bool met = false;
        double leaves = double.NaN;
        foreach (ShotEvent e in trace.Events)
        {
            bool involved = e.BallA == objectBall || e.BallB == objectBall;
            if (!involved) continue;
            switch (e.Kind)
            {
                case ShotEventKind.BallsMeet when !met && (e.BallA == cueBall || e.BallB == cueBall):
                    met = true;
                    break;
                case ShotEventKind.BallsMeet:
                    int other = e.BallA == objectBall ? e.BallB!.Value : e.BallA;
                    // A frozen ball may be pressed again before it has gone anywhere; a kiss on the way spoils the
                    // bank.
                    if (cushions == 0 && other == cueBall) break;
                    return Failed(AimFailure.WayBlocked, other);
                case ShotEventKind.Cushion when cushions < off.Count:
                    if (e.Cushion != off[cushions]) return Failed(AimFailure.OtherCushions, null);
                    cushions++;
                    leaves = e.Time + e.Duration;
                    break;
                case ShotEventKind.Cushion:
                    return Passed(trace, pocket, objectBall, first.Cut, leaves, e.Time, false, jaws);
                case ShotEventKind.Jaw when cushions < off.Count:
                    return Failed(AimFailure.OtherCushions, null);
                case ShotEventKind.Jaw:
                    if (e.Pocket != pocket.Name) return Passed(trace, pocket, objectBall, first.Cut, leaves, e.Time, false, jaws);
                    jaws++;
                    break;
                case ShotEventKind.Pocketed:
                    if (cushions < off.Count) return Failed(AimFailure.OtherCushions, null);
                    return Passed(trace, pocket, objectBall, first.Cut, leaves, e.Time, e.Pocket == pocket.Name, jaws);
                case ShotEventKind.Stops when met:
                    return Failed(AimFailure.ObjectBallStops, null);
            }
        }

        return Failed(AimFailure.OtherCushions, null);
    }

    private static BankTrial Failed(AimFailure failure, int? inTheWay) => new(failure, inTheWay, 0, null, false, 0);

    private static BankTrial Passed(
        Trace trace, PocketOutline pocket, int ball, double cut, double leaves, double until, bool pocketed, int jaws)
    {
        double? offset = OffsetAtMouth(trace, pocket, ball, leaves, until);
        return new BankTrial(AimFailure.None, null, cut, offset, pocketed, jaws);
    }

    /// <summary>Where the way from the last cushion crosses the mouth line, drawn on straight if it is ended
    /// before.</summary>
    private static double? OffsetAtMouth(Trace trace, PocketOutline pocket, int ball, double leaves, double until)
    {
        // Just before the next contact the curve is behind the ball in all but the hardest shots.
        BallState state = trace.StateAt(ball, leaves);
        IReadOnlyList<MotionSegment> segments = trace.Segments(ball);
        for (int i = 0; i < segments.Count; i++)
        {
            double end = i + 1 < segments.Count ? Math.Min(segments[i + 1].StartTime, until) : until;
            if (end <= leaves || segments[i].StartTime >= until || segments[i].Phase == MotionPhase.InRubber) continue;
            BallState at = segments[i].At(end);
            if ((at.Position - pocket.MouthCentre).Dot(pocket.Axis) >= 0)
            {
                state = MouthCrossing.Within(segments[i], Math.Max(leaves, segments[i].StartTime), end, pocket);
                break;
            }

            state = at;
        }

        double distance = (pocket.MouthCentre - state.Position).Dot(pocket.Axis);
        double closing = state.Velocity.Dot(pocket.Axis);
        if (distance <= 0) return (state.Position - pocket.MouthCentre).Dot(pocket.Axis.Right);
        if (!(closing > 0)) return null;
        Vec2 there = state.Position + (distance / closing) * state.Velocity;
        double offset = (there - pocket.MouthCentre).Dot(pocket.Axis.Right);
        // Drawn on over more than half a table's width it says nothing about the pocket.
        return Math.Abs(offset) < 0.5 * trace.Setup.Equipment.Table.Width ? offset : null;
    }
}
