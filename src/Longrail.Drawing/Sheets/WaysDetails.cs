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
    private const int MostNotes = 2;
    private const int Split = 7;

    internal static double Height(WaysDrawing ways)
    {
        double notes = LineHeight * (Math.Min(ways.Notes.Count, MostNotes) + (ways.Reason is null ? 0 : 1));
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
                new SvgPoint(x, y + Ink.Body),
                TextWidth.Fit($"{first.Mark.Letter}: {first.Words}", width, Ink.Body, bold: true),
                new TextStyle(Ink.Body, Ink.Graphite, Bold: true));
            DrawColumns(svg, x, y + HeadHeight, width, ways);
            line += HeadHeight + LineHeight * Rows(ways);
        }

        string[] notes = [.. ways.Notes.Take(MostNotes)];
        string[] sentences = ways.Reason is { } reason ? [$"A before B: {reason}", .. notes] : notes;
        foreach (string sentence in sentences)
        {
            line += LineHeight;
            string text = TextWidth.Fit(SvgText.Clean(sentence), width, Size);
            svg.Text(new SvgPoint(x, line - 6), text, new TextStyle(Size, Ink.Graphite));
        }

        svg.End();
    }

    // Aim, speed, tip and leeway on the left, what comes of it on the right.
    private static int Rows(WaysDrawing ways) => Math.Min(ways.Details.Count, Split);

    private static void DrawColumns(SvgWriter svg, double x, double y, double width, WaysDrawing ways)
    {
        double column = (width - Gap) / 2;
        DrawColumn(svg, x, y, column, [.. ways.Details.Take(Split)], mostLines: 1);
        DrawColumn(svg, x + column + Gap, y, column, [.. ways.Details.Skip(Split)], mostLines: 2);
    }

    private static void DrawColumn(
        SvgWriter svg, double x, double y, double width, IReadOnlyList<(string Name, string Words)> details,
        int mostLines)
    {
        double line = y + Size;
        foreach ((string name, string words) in details)
        {
            svg.Text(new SvgPoint(x, line), name, new TextStyle(Size, Ink.Soft));
            foreach (string text in TextWidth.Wrap(SvgText.Clean(words), width - NameWidth, Size, mostLines))
            {
                svg.Text(new SvgPoint(x + NameWidth, line), text, new TextStyle(Size, Ink.Graphite));
                line += LineHeight;
            }
        }
    }
}
