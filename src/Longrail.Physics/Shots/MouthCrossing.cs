using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;

namespace Longrail.Physics.Shots;

/// <summary>Where a stretch of a ball's way crosses the line of a pocket's mouth.</summary>
internal static class MouthCrossing
{
    /// <summary>The ball as its centre crosses the mouth line on the way in.</summary>
    /// <param name="segment">The stretch.</param>
    /// <param name="from">A time before the crossing, seconds.</param>
    /// <param name="to">A time after it, seconds.</param>
    /// <param name="pocket">The pocket.</param>
    internal static BallState Within(MotionSegment segment, double from, double to, in PocketOutline pocket)
    {
        // Sixty halvings leave less than rounding of any stretch.
        for (int i = 0; i < 60; i++)
        {
            double middle = 0.5 * (from + to);
            if ((segment.At(middle).Position - pocket.MouthCentre).Dot(pocket.Axis) < 0) from = middle;
            else to = middle;
        }

        return segment.At(to);
    }
}
