using Longrail.Physics.Geometry;

namespace Longrail.Coaching.Ways.Chances;

/// <summary>The region in which a ball stops, from a sample of places.</summary>
internal static class RestEllipse
{
    /// <summary>The 90 % point of chi-square with two degrees of freedom, -2 ln(0.1) (4.605 in the tables).</summary>
    private static readonly double _nineInTen = -2 * Math.Log(0.1);

    /// <summary>Mean and ellipse. The ellipse holds nine places in ten if they are spread as a normal law in the plane;
    /// places split by a cushion or another ball are not, which is why the places themselves are shown with
    /// it.</summary>
    /// <returns>Null without a place; an ellipse of no size for one.</returns>
    public static RestRegion? Of(IReadOnlyList<Vec2> places)
    {
        if (places.Count == 0) return null;
        Vec2 sum = Vec2.Zero;
        foreach (Vec2 place in places) sum += place;
        Vec2 mean = sum / places.Count;
        double xx = 0;
        double yy = 0;
        double xy = 0;
        foreach (Vec2 place in places)
        {
            Vec2 d = place - mean;
            xx += d.X * d.X;
            yy += d.Y * d.Y;
            xy += d.X * d.Y;
        }

        double n = Math.Max(1, places.Count - 1);
        (xx, yy, xy) = (xx / n, yy / n, xy / n);
        // The axes of the covariance: its eigenvalues are middle plus and minus spread.
        double middle = 0.5 * (xx + yy);
        double spread = Math.Sqrt(0.25 * (xx - yy) * (xx - yy) + xy * xy);
        return new RestRegion(
            mean,
            Math.Sqrt(_nineInTen * (middle + spread)),
            Math.Sqrt(_nineInTen * Math.Max(0, middle - spread)),
            0.5 * Math.Atan2(2 * xy, xx - yy),
            places);
    }
}
