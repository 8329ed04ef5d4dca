using System.Text;

namespace Longrail.Drawing.Svg;

/// <summary>Builds the data of a path: "M0,0 L10,0 ...".</summary>
public sealed class SvgPath
{
    private readonly StringBuilder _data = new();

    /// <summary>Whether nothing has been added yet.</summary>
    public bool IsEmpty => _data.Length == 0;

    /// <summary>Begins a new stroke at a point.</summary>
    public SvgPath Move(SvgPoint to) => Add('M', to);

    /// <summary>A straight line to a point.</summary>
    public SvgPath Line(SvgPoint to) => Add('L', to);

    /// <summary>Straight lines through points, beginning a new stroke at the first.</summary>
    public SvgPath Polyline(IEnumerable<SvgPoint> points)
    {
        bool first = true;
        foreach (SvgPoint point in points)
        {
            Add(first ? 'M' : 'L', point);
            first = false;
        }

        return this;
    }

    /// <summary>A parabola: a quadratic curve with one control point.</summary>
    public SvgPath Quadratic(SvgPoint control, SvgPoint to)
    {
        Add('Q', control);
        _data.Append(' ').Append(SvgNumber.Format(to.X)).Append(',').Append(SvgNumber.Format(to.Y));
        return this;
    }

    /// <summary>An arc of an ellipse to a point.</summary>
    /// <param name="rx">Half-axis along the rotated x axis.</param>
    /// <param name="ry">The other half-axis; 0 gives a straight line.</param>
    /// <param name="rotationDegrees">Rotation of the ellipse's x axis on the sheet, clockwise.</param>
    /// <param name="large">The larger of the two arcs.</param>
    /// <param name="clockwise">Clockwise on the sheet.</param>
    /// <param name="to">End of the arc.</param>
    public SvgPath Arc(double rx, double ry, double rotationDegrees, bool large, bool clockwise, SvgPoint to)
    {
        // A needle-thin ellipse is its own chord; renderers are told so rather than left to divide by nothing.
        if (Math.Min(rx, ry) < 5e-4)
            return Line(to);

        _data.Append(" A").Append(SvgNumber.Format(rx)).Append(' ').Append(SvgNumber.Format(ry)).Append(' ')
            .Append(SvgNumber.Format(rotationDegrees)).Append(large ? " 1" : " 0").Append(clockwise ? " 1 " : " 0 ")
            .Append(SvgNumber.Format(to.X)).Append(',').Append(SvgNumber.Format(to.Y));
        return this;
    }

    /// <summary>A whole circle.</summary>
    public SvgPath Circle(SvgPoint centre, double radius) =>
        Ellipse(centre, radius, radius, 0);

    /// <summary>A whole ellipse.</summary>
    public SvgPath Ellipse(SvgPoint centre, double rx, double ry, double rotationDegrees)
    {
        double angle = rotationDegrees * Math.PI / 180.0;
        double dx = rx * Math.Cos(angle);
        double dy = rx * Math.Sin(angle);
        return Move(centre.Moved(-dx, -dy))
            .Arc(rx, ry, rotationDegrees, false, true, centre.Moved(dx, dy))
            .Arc(rx, ry, rotationDegrees, false, true, centre.Moved(-dx, -dy))
            .Close();
    }

    /// <summary>Closes the stroke.</summary>
    public SvgPath Close()
    {
        _data.Append(" Z");
        return this;
    }

    /// <summary>Adds another path's strokes after this one's.</summary>
    public SvgPath ContinueWith(SvgPath other)
    {
        if (_data.Length > 0 && !other.IsEmpty)
            _data.Append(' ');
        _data.Append(other._data);
        return this;
    }

    /// <inheritdoc/>
    public override string ToString() => _data.ToString();

    private SvgPath Add(char command, SvgPoint point)
    {
        if (_data.Length > 0)
            _data.Append(' ');
        _data.Append(command).Append(SvgNumber.Format(point.X)).Append(',').Append(SvgNumber.Format(point.Y));
        return this;
    }
}
