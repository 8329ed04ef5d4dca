using System.Globalization;
using System.Text;
using Longrail.Coaching.Charts;
using static Longrail.Cli.Text.ChartText;

namespace Longrail.Cli.Text;

/// <summary>A map as text for people: a number at each place, the head on the left.</summary>
public static class MapText
{
    /// <summary>The text, ending with a line break.</summary>
    public static string Of(OddsMap map)
    {
        ArgumentNullException.ThrowIfNull(map);
        MapRequest request = map.Request;
        bool isOdds = request.Measure == MapMeasure.Odds;
        int width = isOdds ? 4 : 5;
        var text = new StringBuilder();
        string what = isOdds ? "odds" : "leeway of the aim";
        Line(text, $"{Capital(request.Route.Words)}: {what} from each place of the ball");
        Line(text, ChartSentences.Equipment(request.Equipment, request.Names));
        Wrapped(text, ChartSentences.Played(request));
        Wrapped(text, ChartSentences.Measured(map) + (isOdds ? "" : " In hundredths of a degree."));
        Line(text, "");
        for (int row = request.Rows - 1; row >= 0; row--)
        {
            text.Append(Label(request.Place(0, row).Y).PadLeft(6)).Append(" |");
            for (int column = 0; column < request.Columns; column++)
                text.Append(Number(map, map[column, row]).PadLeft(width));
            text.Append('\n');
        }

        // Every other column has room for its label.
        text.Append("       +").Append('-', width * request.Columns).Append("\n        ");
        for (int column = 0; column < request.Columns; column += 2)
        {
            text.Append(Label(request.Place(column, 0).X).PadLeft(width));
            text.Append(' ', column + 1 < request.Columns ? width : 0);
        }


        text.Append('\n');
        Line(text, "");
        foreach (string sign in ChartSentences.Signs(map.Failures))
            Line(text, sign);
        Wrapped(text, "Places are the ball's centre in diamonds, along from the head, across from the right.");
        return text.ToString();
    }

    private static string Number(OddsMap map, MapCell cell) => cell.Failure != NoBank.None
        ? ChartWords.Sign(cell.Failure)
        : (100 * map.Value(cell)).ToString("0", CultureInfo.InvariantCulture);

    private static string Label(double diamonds) => diamonds.ToString("0.0#", CultureInfo.InvariantCulture);
}
