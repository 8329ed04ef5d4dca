using System.Globalization;
using System.Text;
using Longrail.Physics.Shots.Readings;

namespace Longrail.Coaching.Charts;

/// <summary>Charts and maps as comma-separated values: one line for each number, units in the names of the
/// columns.</summary>
public static class ChartCsv
{
    private const double Degree = Math.PI / 180;

    /// <summary>A chart: a line for each place, tip and speed. Numbers in the chart's numbering, corrections in
    /// diamonds at the nose and in its numbering; empty where there is no answer.</summary>
    public static string Of(BankChart chart)
    {
        ArgumentNullException.ThrowIfNull(chart);
        ChartRequest request = chart.Request;
        string numbering = DiamondNumbers.Word(request.Numbering);
        var text = new StringBuilder();
        Line(
            text,
            [
                "along_diamonds", "across_diamonds", "tip", "tip_right_m", "speed_mps", "reason", "correction_diamonds",
                $"mirror_{numbering}", $"touch_{numbering}", $"correction_{numbering}", "aim_deg",
            ]);
        foreach (ChartRow row in chart.Rows)
        {
            for (int k = 0; k < row.Cells.Count; k++)
            {
                ChartCell cell = row.Cells[k];
                ChartTip tip = request.Tips[k / request.Speeds.Count];
                Line(
                    text,
                    [
                        Number(row.Place.X), Number(row.Place.Y), tip.Text, Number(tip.Right),
                        Number(request.Speeds[k % request.Speeds.Count]), ChartWords.Of(cell.Failure),
                        Number(cell.CorrectionDiamonds), Number(row.MirrorNumber), Number(cell.Number),
                        Number(cell.Correction), Number(cell.Stroke?.Aim / Degree),
                    ]);
            }
        }

        return text.ToString();
    }

    /// <summary>A map: a line for each place.</summary>
    public static string Of(OddsMap map)
    {
        ArgumentNullException.ThrowIfNull(map);
        var text = new StringBuilder();
        Line(
            text,
            [
                "along_diamonds", "across_diamonds", "reason", "speed_mps", "aim_deg", "leeway_deg", "made", "shots",
                "odds", "low", "high",
            ]);
        foreach (MapCell cell in map.Cells)
        {
            Line(
                text,
                [
                    Number(cell.Place.X), Number(cell.Place.Y), ChartWords.Of(cell.Failure), Number(cell.Speed),
                    Number(cell.Aim / Degree), Number(cell.Leeway / Degree), Number(cell.Made?.Made),
                    Number(cell.Made?.Trials), Number(cell.Made?.Share), Number(cell.Made?.Low),
                    Number(cell.Made?.High),
                ]);
        }

        return text.ToString();
    }

    private static string Number(double? value) => value?.ToString("R", CultureInfo.InvariantCulture) ?? "";

    private static void Line(StringBuilder text, IEnumerable<string> cells) =>
        text.AppendJoin(',', cells.Select(Quoted)).Append('\n');

    // RFC 4180: quotes around what holds a comma, a quote or a line break; a quote is doubled.
    private static string Quoted(string cell) => cell.AsSpan().IndexOfAny(",\"\r\n") < 0
        ? cell
        : $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
