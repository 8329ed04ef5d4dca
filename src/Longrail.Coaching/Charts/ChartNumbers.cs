using System.Globalization;
using Longrail.Physics.Equipment;
using Longrail.Physics.Shots.Readings;

namespace Longrail.Coaching.Charts;

/// <summary>The numbers of a chart as people read them: the same on the terminal and in a picture.</summary>
public static class ChartNumbers
{
    private const double Inch = 0.0254;

    /// <summary>The correction of a cell in the chart's unit: positive is longer; null without an answer.</summary>
    public static double? Correction(ChartRequest request, ChartCell cell)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(cell);
        if (cell.Correction is not { } correction)
            return null;
        TableSpec table = request.Equipment.Table;
        double metres =
            correction / DiamondNumbers.PerDiamond(request.Numbering) * Diamonds.Length(request.Route.Off, table);
        return request.Unit switch
        {
            ChartUnit.Millimetre => 1000 * metres,
            ChartUnit.Inch => metres / Inch,
            _ => correction,
        };
    }

    /// <summary>The correction as text with its sign, or the sign that says why there is none.</summary>
    public static string Text(ChartRequest request, ChartCell cell) =>
        Correction(request, cell) is { } value ? WithSign(request, value) : ChartWords.Sign(cell.Failure);

    /// <summary>A correction as text with its sign.</summary>
    public static string WithSign(ChartRequest request, double value)
    {
        ArgumentNullException.ThrowIfNull(request);
        int decimals = request.Unit switch
        {
            ChartUnit.Millimetre => 0,
            ChartUnit.Inch => 1,
            _ => request.Numbering == DiamondNumbering.Tens ? 1 : 2,
        };
        double rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        string digits = Math.Abs(rounded).ToString("F" + decimals, CultureInfo.InvariantCulture);
        return rounded == 0 ? digits : (rounded > 0 ? "+" : "-") + digits;
    }

    /// <summary>A number along a cushion as text; a dash if there is none.</summary>
    public static string Number(ChartRequest request, double? number)
    {
        ArgumentNullException.ThrowIfNull(request);
        string format = request.Numbering == DiamondNumbering.Tens ? "0.0" : "0.00";
        return number is { } value ? value.ToString(format, CultureInfo.InvariantCulture) : "-";
    }

    /// <summary>What a correction is counted in: "diamonds", "tens", "mm", "in".</summary>
    public static string UnitWords(ChartRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        return request.Unit switch
        {
            ChartUnit.Millimetre => "mm",
            ChartUnit.Inch => "in",
            _ => request.Numbering == DiamondNumbering.Tens ? "tenths of a diamond" : "diamonds",
        };
    }

    /// <summary>A speed as text: "4.5 m/s".</summary>
    public static string Speed(double speed) => string.Create(CultureInfo.InvariantCulture, $"{speed:0.##} m/s");

    /// <summary>A tip as text: "1/8 tip right", "centre".</summary>
    public static string Tip(ChartTip tip) => tip.Right switch
    {
        0 => "centre",
        > 0 => $"{tip.Text.TrimStart('+')} right",
        _ => $"{tip.Text.TrimStart('-')} left",
    };

    /// <summary>A place as text in diamonds.</summary>
    public static string Diamond(double diamonds) => diamonds.ToString("0.###", CultureInfo.InvariantCulture);
}
