using System.Text;
using Longrail.Coaching.Contrasts;
using Longrail.Scenes;

namespace Longrail.Cli.Text;

/// <summary>A comparison as text for people: a table with the base first.</summary>
public static class ContrastText
{
    /// <summary>The text, ending with a line break.</summary>
    public static string Of(Contrast contrast)
    {
        var text = new StringBuilder();
        AppendHead(text, contrast);
        AppendTable(text, ContrastTable.Of(contrast));
        AppendFoot(text, contrast);
        return text.ToString();
    }

    private static void AppendHead(StringBuilder text, Contrast contrast)
    {
        if (contrast.Title.Length > 0)
            Line(text, PlainText.Of(contrast.Title));
        string varied = string.Join(" and ", contrast.Request.Variations.Select(v => v.Path));
        string mark = contrast.VariesTwoThings ? $" ({Contrast.TwoThingsMark})" : "";
        string held = contrast.Request.Hold == Hold.Path ? "the line on which the cue ball leaves" : "the stick's line";
        Line(text, $"Varied: {varied}{mark}");
        Line(text, $"Held: {held}, and everything else");
        if (contrast.Base.Bank is { } bank)
        {
            string cushion = TableWords.Of(bank.Cushion);
            Line(text, $"Read off: {contrast.Names[bank.Ball]}, from its first cushion on ({cushion} in the base)");
        }

        Line(text, "");
    }

    private static void AppendTable(StringBuilder text, ContrastTable table)
    {
        ColumnText.Append(text, table.Columns, table.Rows);
        Line(text, "");
    }

    private static void AppendFoot(StringBuilder text, Contrast contrast)
    {
        foreach (string note in ContrastNotes.Of(contrast))
            Line(text, note);
        Line(text, "Change is against the base, along the cushion where it lands; longer and shorter as players say.");
        Line(text, "Diamonds are the ball centre's, counted at the nose: along from the head, across from the right.");
        Line(text, "Out and speed are as the ball leaves the rubber; side and roll as it arrives.");
        Line(text, "Angles at a cushion are from its normal: 0 is straight in.");
    }

    private static void Line(StringBuilder text, string line) => text.Append(line).Append('\n');
}
