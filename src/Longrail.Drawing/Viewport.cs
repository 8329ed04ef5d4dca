using Longrail.Physics.Geometry;

namespace Longrail.Drawing;

/// <summary>Where the table lies on the sheet: the only place where table metres become sheet units.</summary>
/// <remarks>The head is on the left: X = Left + Scale x, Y = Bottom - Scale y.</remarks>
/// <param name="Left">Sheet x of the head cushion's nose line.</param>
/// <param name="Bottom">Sheet y of the right cushion's nose line (the lower one on the sheet).</param>
/// <param name="Scale">Sheet units per metre, positive. 10000 is full size.</param>
public sealed record Viewport(double Left, double Bottom, double Scale)
{
    /// <summary>Full size: a sheet unit is a tenth of a millimetre.</summary>
    public const double UnitsPerMetre = 10000.0;

    /// <summary>The drawing's scale as the number n of "1 : n".</summary>
    public double Reduction => UnitsPerMetre / Scale;

    /// <summary>The point on the sheet of a point on the table.</summary>
    public SvgPoint ToSheet(TablePoint point) => new(Left + Scale * point.X, Bottom - Scale * point.Y);

    /// <summary>The point on the table of a point on the sheet.</summary>
    public TablePoint ToTable(SvgPoint point) => new((point.X - Left) / Scale, (Bottom - point.Y) / Scale);

    /// <summary>The length on the sheet of a length on the table.</summary>
    /// <param name="metres">Metres.</param>
    public double ToSheet(double metres) => Scale * metres;

    /// <summary>The direction on the sheet (y downwards) of a direction on the table, not scaled.</summary>
    public static SvgPoint Direction(Vec2 direction) => new(direction.X, -direction.Y);
}
