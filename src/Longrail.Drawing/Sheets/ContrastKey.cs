using Longrail.Drawing.Svg;

namespace Longrail.Drawing.Sheets;

/// <summary>The table of a comparison under its drawing, each row with a sample of its line.</summary>
internal static class ContrastKey
{
    // What the table of numbers has and the picture has no room for.
    private static readonly string[] _left = ["of mirror", "roll"];

    internal static void Draw(SvgWriter svg, double x, double y, double width, double height, ContrastDrawing contrast)
    {
        IEnumerable<int> all = Enumerable.Range(1, contrast.Columns.Count - 1);
        int[] columns = [.. all.Where(c => !_left.Contains(contrast.Columns[c].Name) && SaysAnything(contrast, c))];
        new KeyTable(contrast.Columns, columns, [.. contrast.Variants.Select(Row)]).Draw(svg, x, y, width, height);
    }

    private static bool SaysAnything(ContrastDrawing contrast, int column) =>
        contrast.Variants.Any(variant => variant.Cells[column] != "-");

    private static KeyTableRow Row(VariantDrawing variant) => variant.Mark is { } mark
        ? new KeyTableRow(variant.Cells[0], true, new Pen(mark.Colour, Ink.Medium, mark.Dash), variant.Cells)
        : new KeyTableRow("base", false, new Pen(Ink.Ghost, 9), variant.Cells);
}
