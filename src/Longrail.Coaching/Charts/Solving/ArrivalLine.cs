using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Roots;
using Longrail.Physics.Shots;

namespace Longrail.Coaching.Charts.Solving;

/// <summary>The line across which a banked ball arrives: the mouth of a pocket, or a line square to the way that the
/// mirror ball comes.</summary>
/// <param name="Middle">Where the ball is to cross it, metres.</param>
/// <param name="Axis">Unit vector of the way across it.</param>
internal readonly record struct ArrivalLine(Vec2 Middle, Vec2 Axis)
{
    /// <summary>How far from the middle a ball of the last shot crosses, after a time.</summary>
    /// <param name="player">Has played the shot.</param>
    /// <param name="ball">Index of the ball.</param>
    /// <param name="from">When it leaves the cushion, seconds.</param>
    /// <param name="until">When something else happens to it, seconds.</param>
    /// <param name="reached">Whether it really crosses; if not, its last way is drawn on straight.</param>
    /// <returns>Metres, positive to the right of the axis; null if it moves away from the line.</returns>
    internal double? Offset(ShotPlayer player, int ball, double from, double until, out bool reached)
    {
        reached = false;
        Vec2 position = default;
        Vec2 way = default;
        int next = NextStretch(player, ball, 0);
        while (next < player.StretchCount)
        {
            MotionSegment stretch = player.Stretch(next, out _);
            next = NextStretch(player, ball, next + 1);
            if (stretch.StartTime >= until)
                break;
            double end = next < player.StretchCount ? player.Stretch(next, out _).StartTime : player.Duration;
            end = Math.Min(end, until);
            // What rounding leaves of the time at which the rubber lets go.
            if (end <= from || stretch.Phase is not (MotionPhase.Sliding or MotionPhase.Rolling))
                continue;
            double begin = Math.Max(from, stretch.StartTime);
            BallState start = stretch.At(begin);
            double time = FirstCrossing.Quadratic(
                (Middle - start.Position).Dot(Axis), -start.Velocity.Dot(Axis), -0.5 * stretch.Acceleration.Dot(Axis),
                end - begin);
            if (!double.IsPositiveInfinity(time))
            {
                reached = true;
                return (stretch.At(begin + time).Position - Middle).Dot(Axis.Right);
            }

            BallState last = stretch.At(end);
            position = last.Position;
            // A ball that has stopped still points somewhere.
            way = last.Velocity.Length > 1e-6 ? last.Velocity : start.Velocity;
        }

        double closing = way.Dot(Axis);
        if (!(closing > 1e-9 * way.Length))
            return null;
        double distance = (Middle - position).Dot(Axis);
        return (position + (distance / closing) * way - Middle).Dot(Axis.Right);
    }

    private static int NextStretch(ShotPlayer player, int ball, int at)
    {
        for (; at < player.StretchCount; at++)
        {
            _ = player.Stretch(at, out int owner);
            if (owner == ball)
                break;
        }

        return at;
    }
}
