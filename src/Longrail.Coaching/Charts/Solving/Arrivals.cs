using Longrail.Physics.Shots;

namespace Longrail.Coaching.Charts.Solving;

/// <summary>Reads off a shot how its banked ball arrived.</summary>
internal static class Arrivals
{
    /// <summary>How the ball of the last shot arrived.</summary>
    /// <param name="player">Has played it.</param>
    /// <param name="ball">Index of the banked ball.</param>
    /// <param name="watch">Has watched it.</param>
    /// <param name="line">Where it is to arrive.</param>
    internal static Arrival Read(ShotPlayer player, int ball, in ArrivalWatch watch, ArrivalLine line)
    {
        if (watch.WentElsewhere)
            return Arrival.Failed(watch.MetMouth ? NoBank.TouchInMouth : NoBank.DoesNotLeadThere);
        if (!watch.Touched)
            return Arrival.Failed(NoBank.RunsOutOfSpeed);
        ShotMoment touch = Touch(player, ball);
        double leaves = touch.Time + touch.Duration;
        double? offset = line.Offset(player, ball, leaves, watch.Until, out bool reached);
        if (watch.Kissed && !reached)
            return Arrival.Failed(NoBank.DoubleKiss);
        return offset is { } at
            ? new Arrival(
                NoBank.None, at, touch.BeforeA.Position, touch.BeforeA.Velocity, reached, watch.Dropped)
            : Arrival.Failed(NoBank.DoesNotLeadThere);
    }

    private static ShotMoment Touch(ShotPlayer player, int ball)
    {
        for (int i = 0; i < player.EventCount; i++)
        {
            ShotMoment moment = player[i];
            if (moment.Kind == ShotEventKind.Cushion && moment.BallA == ball)
                return moment;
        }

        throw new InvalidOperationException("A ball that touched its cushion has no such event.");
    }
}
