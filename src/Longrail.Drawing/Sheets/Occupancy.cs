namespace Longrail.Drawing.Sheets;

/// <summary>Remembers what is already drawn where, so that marks and labels keep out of each other's way.</summary>
internal sealed class Occupancy
{
    private const int Rings = 5;

    private readonly List<(SvgPoint Centre, double Radius)> _discs = [];
    private readonly List<SvgPoint> _lines = [];

    /// <summary>Marks a disc as taken.</summary>
    internal void Take(SvgPoint centre, double radius) => _discs.Add((centre, radius));

    /// <summary>Marks points of lines: a label may lie on them, but rather not.</summary>
    internal void TakeLine(IEnumerable<SvgPoint> points) => _lines.AddRange(points);

    /// <summary>Takes a disc if nothing else is there.</summary>
    internal bool TryTake(SvgPoint centre, double radius)
    {
        if (_discs.Any(d => d.Centre.DistanceTo(centre) < d.Radius + radius))
            return false;
        _discs.Add((centre, radius));
        return true;
    }

    /// <summary>Takes a disc if nothing else is there, no line either.</summary>
    internal bool TryTakeBlank(SvgPoint centre, double radius) =>
        !_lines.Any(p => p.DistanceTo(centre) < radius) && TryTake(centre, radius);

    /// <summary>Finds and takes the best place for a round label near a point.</summary>
    /// <param name="anchor">What the label belongs to.</param>
    /// <param name="near">Least distance of its centre from there.</param>
    /// <param name="radius">The label's radius.</param>
    /// <param name="preferred">Direction in which it would best stand, on the sheet; zero for no preference.</param>
    internal SvgPoint Place(SvgPoint anchor, double near, double radius, SvgPoint preferred)
    {
        // Most of what is drawn is too far away to matter for any of the places that are tried.
        double reach = near + 0.8 * (Rings - 1) * radius + radius + 3;
        SvgPoint[] lines = [.. _lines.Where(point => point.DistanceTo(anchor) < reach)];
        (SvgPoint, double)[] discs = [.. _discs.Where(disc => disc.Centre.DistanceTo(anchor) < reach + disc.Radius)];
        SvgPoint best = anchor;
        double least = double.PositiveInfinity;
        for (int ring = 0; ring < Rings; ring++)
        {
            for (int k = 0; k < 24; k++)
            {
                double angle = 2 * Math.PI * k / 24;
                double distance = near + 0.8 * ring * radius;
                SvgPoint at = anchor.Moved(Math.Cos(angle) * distance, Math.Sin(angle) * distance);
                double along = Math.Cos(angle) * preferred.X + Math.Sin(angle) * preferred.Y;
                double cost = Cost(at, radius, discs, lines) + 3.0 * ring - 1.5 * along;
                if (cost < least)
                    (best, least) = (at, cost);
            }
        }

        _discs.Add((best, radius));
        return best;
    }

    private static double Cost(
        SvgPoint at, double radius, (SvgPoint Centre, double Radius)[] discs, SvgPoint[] lines)
    {
        double cost = 0;
        foreach ((SvgPoint centre, double other) in discs)
            cost += 100 * Math.Max(0, 1 - centre.DistanceTo(at) / (other + radius + 2));
        foreach (SvgPoint point in lines)
            cost += point.DistanceTo(at) < radius + 3 ? 2.0 : 0;
        return cost;
    }
}
