using System.Text;

namespace Longrail.Drawing.Svg;

/// <summary>Writes a picture as SVG text: one element a line, numbers by <see cref="SvgNumber"/>, text by
/// <see cref="SvgText"/>.</summary>
/// <remarks>Only elements and attributes that every renderer knows: no style sheets, no scripts, no links, no filters.
/// Source: W3C, Scalable Vector Graphics (SVG) 1.1 (Second Edition), 2011.</remarks>
public sealed class SvgWriter
{
    private readonly StringBuilder _text = new();
    private int _depth;

    /// <summary>Begins a sheet.</summary>
    /// <param name="width">Width, tenths of a millimetre.</param>
    /// <param name="height">Height, tenths of a millimetre.</param>
    /// <param name="title">What the picture is called.</param>
    /// <param name="description">What it shows, for those who cannot see it.</param>
    public SvgWriter(double width, double height, string title, string description)
    {
        _text.Append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"").Append(SvgNumber.Format(width / 10))
            .Append("mm\" height=\"").Append(SvgNumber.Format(height / 10)).Append("mm\" viewBox=\"0 0 ")
            .Append(SvgNumber.Format(width)).Append(' ').Append(SvgNumber.Format(height))
            .Append("\" role=\"img\" font-family=\"'DejaVu Sans', sans-serif\">\n");
        _depth = 1;
        Element($"<title>{SvgText.Escape(title)}</title>");
        Element($"<desc>{SvgText.Escape(description)}</desc>");
    }

    private SvgWriter() => _depth = 1;

    /// <summary>Begins a part of a picture: elements without a sheet around them, for a page that has its
    /// own.</summary>
    public static SvgWriter Part() => new();

    /// <summary>Begins a group with a name of its own.</summary>
    /// <param name="role">What the group holds, as a class name for those who style or test the picture.</param>
    public void Begin(string role)
    {
        Element($"<g class=\"{SvgText.Escape(role)}\">");
        _depth++;
    }

    /// <summary>Begins a group that stands for one of several things of its kind.</summary>
    /// <param name="role">What the group holds, as a class name.</param>
    /// <param name="number">Which one it is; written as the attribute data-number.</param>
    public void Begin(string role, int number)
    {
        Element($"<g class=\"{SvgText.Escape(role)}\" data-number=\"{N(number)}\">");
        _depth++;
    }

    /// <summary>Ends the group.</summary>
    public void End()
    {
        _depth--;
        Element("</g>");
    }

    /// <summary>A rectangle.</summary>
    public void Rectangle(
        double x, double y, double width, double height, string? fill, Pen? pen = null, double corner = 0)
    {
        string rounded = corner > 0 ? $" rx=\"{SvgNumber.Format(corner)}\"" : "";
        string size = $"width=\"{N(width)}\" height=\"{N(height)}\"";
        Element($"<rect x=\"{N(x)}\" y=\"{N(y)}\" {size}{rounded}{Paint(fill, pen)}/>");
    }

    /// <summary>A straight line.</summary>
    public void Line(SvgPoint a, SvgPoint b, Pen pen) =>
        Element($"<line x1=\"{N(a.X)}\" y1=\"{N(a.Y)}\" x2=\"{N(b.X)}\" y2=\"{N(b.Y)}\"{Paint(null, pen, false)}/>");

    /// <summary>A circle.</summary>
    public void Circle(SvgPoint centre, double radius, string? fill, Pen? pen = null) =>
        Element($"<circle cx=\"{N(centre.X)}\" cy=\"{N(centre.Y)}\" r=\"{N(radius)}\"{Paint(fill, pen)}/>");

    /// <summary>A path; nothing if it is empty.</summary>
    public void Path(SvgPath path, string? fill, Pen? pen = null, bool evenOdd = false)
    {
        if (path.IsEmpty)
            return;
        string rule = evenOdd ? " fill-rule=\"evenodd\"" : "";
        Element($"<path d=\"{path}\"{Paint(fill, pen)}{rule}/>");
    }

    /// <summary>A line of text standing on a point.</summary>
    /// <param name="at">Where its base line stands.</param>
    /// <param name="text">The text, any characters.</param>
    /// <param name="style">How it is set.</param>
    /// <param name="turned">Whether it runs upwards instead of to the right.</param>
    public void Text(SvgPoint at, string text, TextStyle style, bool turned = false)
    {
        string anchor = style.Anchor switch
        {
            TextAnchor.Middle => " text-anchor=\"middle\"",
            TextAnchor.End => " text-anchor=\"end\"",
            _ => "",
        };
        string bold = style.Bold ? " font-weight=\"bold\"" : "";
        string turn = turned ? $" transform=\"rotate(-90 {N(at.X)} {N(at.Y)})\"" : "";
        string set = $"font-size=\"{N(style.Size)}\" fill=\"{style.Colour}\"{bold}{anchor}{turn}";
        Element($"<text x=\"{N(at.X)}\" y=\"{N(at.Y)}\" {set}>{SvgText.Escape(text)}</text>");
    }

    /// <summary>The finished part.</summary>
    /// <exception cref="InvalidOperationException">A group of it is still open.</exception>
    public string FinishPart() => _depth == 1
        ? _text.ToString()
        : throw new InvalidOperationException("A group of the picture was not ended.");

    /// <summary>The finished picture.</summary>
    /// <exception cref="InvalidOperationException">A group is still open.</exception>
    public string Finish()
    {
        if (_depth != 1)
            throw new InvalidOperationException("A group of the picture was not ended.");
        _depth = 0;
        Element("</svg>");
        return _text.ToString();
    }

    private static string N(double value) => SvgNumber.Format(value);

    private static string Paint(string? fill, Pen? pen, bool area = true)
    {
        string result = area ? $" fill=\"{fill ?? "none"}\"" : "";
        if (pen is not { } p)
            return result;
        string dash = p.Dash is null ? "" : $" stroke-dasharray=\"{p.Dash}\"";
        return $"{result} stroke=\"{p.Colour}\" stroke-width=\"{N(p.Width)}\"{dash}";
    }

    private void Element(string element) => _text.Append(' ', 2 * _depth).Append(element).Append('\n');
}
