using Longrail.Drawing.Svg;

namespace Longrail.Drawing.Sheets;

/// <summary>How the first way is played, in two columns of words beside the face of the cue ball.</summary>
internal static class WaysDetails
{
    private const double LineHeight = 32;
    private const double HeadHeight = 46;
    private const double NameWidth = 96;
    private const double Gap = 40;
    private const double InsetRadius = 78;
    private const double InsetWidth = 260;
    private const double Size = 21;

    internal static double Height(WaysDrawing ways)
    {
        double notes = LineHeight * (ways.Notes.Count + (ways.Reason is null ? 0 : 1));
        return ways.Details.Count == 0 ? notes : Math.Max(HeadHeight + LineHeight * Rows(ways) + notes, 300);
    }

    internal static void Draw(SvgWriter svg, double x, double y, double width, WaysDrawing ways)
    {
        svg.Begin("details");
        double line = y;
        if (ways.Details.Count > 0)
        {
            if (ways.Ways[0].Tip is { } tip)
            {
                var centre = new SvgPoint(x + width - InsetWidth / 2, y + HeadHeight + InsetRadius + 20);
                TipInset.Draw(svg, centre, InsetRadius, tip, ways.Ways[0].Mark.Colour);
                width -= InsetWidth;
            }

            WayDrawing first = ways.Ways[0];
            svg.Text(
                new SvgPoint(x, y + Ink.Body), TextWidth.Fit($"{first.Mark.Letter}: {first.Words}", width, Ink.Body, bold: true),
                new TextStyle(Ink.Body, Ink.Graphite, Bold: true));
            DrawColumns(svg, x, y + HeadHeight, width, ways);
            line += HeadHeight + LineHeight * Rows(ways);
        }

        string[] sentences = ways.Reason is { } reason ? [$"A before B: {reason}", .. ways.Notes] : [.. ways.Notes];
        foreach (string sentence in sentences)
        {
            line += LineHeight;
            string text = TextWidth.Fit(SvgText.Clean(sentence), width, Ink.Small);
            svg.Text(new SvgPoint(x, line - 6), text, new TextStyle(Ink.Small, Ink.Graphite));
        }

        svg.End();
    }

    private static int Rows(WaysDrawing ways) => (ways.Details.Count + 1) / 2;

    private static void DrawColumns(SvgWriter svg, double x, double y, double width, WaysDrawing ways)
    {
        double column = (width - Gap) / 2;
        int rows = Rows(ways);
        for (int k = 0; k < ways.Details.Count; k++)
        {
            (string name, string words) = ways.Details[k];
            double left = x + (k < rows ? 0 : column + Gap);
            double line = y + LineHeight * (k % rows) + Size;
            svg.Text(new SvgPoint(left, line), name, new TextStyle(Size, Ink.Soft));
            string text = TextWidth.Fit(SvgText.Clean(words), column - NameWidth, Size);
            svg.Text(new SvgPoint(left + NameWidth, line), text, new TextStyle(Size, Ink.Graphite));
        }
    }
}
