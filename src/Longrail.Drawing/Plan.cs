namespace Longrail.Drawing;

/// <summary>A table in plan with a shot on it, in two parts: elements of SVG without a sheet around them.</summary>
public sealed record Plan
{
    /// <summary>Width of the sheet, tenths of a millimetre.</summary>
    public required double Width { get; init; }

    /// <summary>Height of the sheet, tenths of a millimetre.</summary>
    public required double Height { get; init; }

    /// <summary>Where the table lies on the sheet.</summary>
    public required Viewport View { get; init; }

    /// <summary>What the picture is called; any text.</summary>
    public required string Title { get; init; }

    /// <summary>What it shows, for those who cannot see it; any text.</summary>
    public required string Description { get; init; }

    /// <summary>The table: the same text as long as the table and the width are the same.</summary>
    public required string Table { get; init; }

    /// <summary>Paths, balls, contact and numbered events.</summary>
    public required string Shot { get; init; }

    /// <summary>How many events carry a number on the drawing.</summary>
    public required int Numbered { get; init; }
}
