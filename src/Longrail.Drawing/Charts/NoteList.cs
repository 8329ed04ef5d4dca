using Longrail.Drawing.Svg;

namespace Longrail.Drawing.Charts;

/// <summary>Sentences under each other, each broken into lines of a width.</summary>
internal static class NoteList
{
    private const double Leading = 1.32;
    private const double Between = 12;
    private const int MostLines = 6;

    internal static void Draw(
        SvgWriter svg, IReadOnlyList<string> notes, double x, double y, double width, double height)
    {
        double size = Ink.Body - 1;
        while (size > 15 && Height(notes, width, size) > height)
            size -= 1;
        svg.Begin("notes");
        double line = y;
        foreach (string note in notes)
        {
            foreach (string text in TextWidth.Wrap(SvgText.Clean(note), width, size, MostLines))
            {
                line += Leading * size;
                if (line > y + height)
                    break;
                svg.Text(new SvgPoint(x, line), text, new TextStyle(size, Ink.Graphite));
            }

            line += Between;
        }

        svg.End();
    }

    private static double Height(IReadOnlyList<string> notes, double width, double size) =>
        notes.Sum(note => Leading * size * TextWidth.Wrap(SvgText.Clean(note), width, size, MostLines).Count + Between);
}
