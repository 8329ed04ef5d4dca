using Longrail.Coaching.Contrasts;
using Longrail.Drawing.Svg;

namespace Longrail.Drawing.Sheets;

/// <summary>The strip under the drawing of a comparison: table of numbers, target, notes, title block.</summary>
internal static class ContrastStrip
{
    private const double NoteHeight = 32;
    private const int MostNotes = 3;

    internal static void Draw(SvgWriter svg, Viewport view, ContrastDrawing contrast, string title)
    {
        const double Left = Sheet.Frame + 30;
        const double InsetLeft = 1500;
        const double Top = Sheet.StripTop + 6;
        double bottom = Sheet.StripBottom - 14;
        double keyWidth = contrast.Target is null ? Sheet.BlockLeft - 30 - Left : InsetLeft - 40 - Left;
        int notes = Math.Min(contrast.Notes.Count, MostNotes);
        bottom -= NoteHeight * notes;
        for (int k = 0; k < notes; k++)
        {
            string note = TextWidth.Fit(SvgText.Clean(contrast.Notes[k]), Sheet.BlockLeft - 40 - Left, Ink.Small);
            var at = new SvgPoint(Left, Sheet.StripBottom - 18 - NoteHeight * (notes - 1 - k));
            svg.Text(at, note, new TextStyle(Ink.Small, Ink.Graphite, Bold: k == 0 && contrast.VariesTwoThings));
        }

        ContrastKey.Draw(svg, Left, Top, keyWidth, bottom - Top, contrast);
        TargetInset.Draw(svg, InsetLeft, Top, Sheet.BlockLeft - 40 - InsetLeft, bottom - Top - 26, contrast);

        List<(string Name, string Value)> rows =
            EquipmentWords.Rows(contrast.Equipment, contrast.TableName, view.Reduction, contrast.Date);
        rows.InsertRange(0, [("VARIED", contrast.Varied), ("HELD", contrast.Held)]);
        if (contrast.VariesTwoThings)
            rows.Insert(1, ("", Contrast.TwoThingsMark));
        TitleBlock.Draw(
            svg, Sheet.BlockLeft, Sheet.StripTop, Sheet.Width - Sheet.Frame - Sheet.BlockLeft,
            Sheet.StripBottom - Sheet.StripTop, title, rows);
    }
}
