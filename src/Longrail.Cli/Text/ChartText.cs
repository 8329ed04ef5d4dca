using System.Text;
using Longrail.Coaching.Charts;
using Longrail.Coaching.Contrasts;
using Longrail.Scenes;

namespace Longrail.Cli.Text;

/// <summary>A bank chart as text for people.</summary>
public static class ChartText
{
    private const int Width = 110;

    /// <summary>The text, ending with a line break.</summary>
    public static string Of(BankChart chart)
    {
        ArgumentNullException.ThrowIfNull(chart);
        ChartRequest request = chart.Request;
        var text = new StringBuilder();
        Line(text, Capital(request.Route.Words));
        Line(text, ChartSentences.Equipment(request.Equipment, request.Names));
        Line(text, ChartSentences.Played(request));
        string cushion = TableWords.Of(request.Route.Off);
        Line(text, $"Correction to the mirror point on the {cushion} cushion, in {ChartNumbers.UnitWords(request)}:");
        Line(text, "");
        ColumnText.Append(
            text, Columns(request), [.. Enumerable.Range(0, chart.Rows.Count).Select(k => Cells(chart, k))]);
        Line(text, "");
        Wrapped(text, ChartSentences.Sense(chart));
        if (ChartSentences.Example(chart) is { } example)
            Wrapped(text, example);
        foreach (string sign in ChartSentences.Signs(chart.Failures))
            Line(text, sign);
        Wrapped(text, ChartSentences.Speeds(request.Speeds));
        Wrapped(text, ChartSentences.Places(request));
        return text.ToString();
    }

    /// <summary>Appends a sentence, broken into lines.</summary>
    internal static void Wrapped(StringBuilder text, string sentence)
    {
        foreach (string line in PlainText.Wrapped(sentence, Width, "", "  "))
            Line(text, line);
    }

    /// <summary>Appends a line.</summary>
    internal static void Line(StringBuilder text, string line) => text.Append(line).Append('\n');

    /// <summary>A text that begins a sentence.</summary>
    internal static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    private static List<ContrastColumn> Columns(ChartRequest request)
    {
        var columns = new List<ContrastColumn>
        {
            new("ball", "along", true), new("", "across", true), new("mirror", "at", true),
        };
        columns.AddRange(
            from tip in request.Tips
            from speed in Enumerable.Range(0, request.Speeds.Count)
            select new ContrastColumn(
                speed == 0 ? ChartNumbers.Tip(tip) : "", ChartNumbers.Speed(request.Speeds[speed]), true));
        return columns;
    }

    private static List<string> Cells(BankChart chart, int place)
    {
        ChartRow row = chart.Rows[place];
        var cells = new List<string>
        {
            ChartNumbers.Diamond(row.Place.X), ChartNumbers.Diamond(row.Place.Y),
            ChartNumbers.Number(chart.Request, row.MirrorNumber),
        };
        cells.AddRange(row.Cells.Select(cell => ChartNumbers.Text(chart.Request, cell)));
        return cells;
    }
}
