using System.Text;
using Longrail.Coaching.Contrasts;
using Longrail.Coaching.Players;
using Longrail.Coaching.Ways;
using Longrail.Coaching.Ways.Words;
using Longrail.Physics.Equipment;
using Longrail.Scenes;
using static System.FormattableString;

namespace Longrail.Cli.Text;

/// <summary>The ways to play a ball as text for people: a ranked table, then how the first is played, then why the
/// others cannot be.</summary>
public static class WaysText
{
    // Words longer than this are broken.
    private const int Width = 110;

    private const double Degrees = 180 / Math.PI;

    /// <summary>The text, ending with a line break.</summary>
    /// <param name="answer">The answer to a question in which nothing was wrong.</param>
    /// <param name="listed">How many of the ways are listed, from the best on.</param>
    /// <param name="detailed">How many of these are told in full.</param>
    public static string Of(WaysAnswer answer, int listed = int.MaxValue, int detailed = 1)
    {
        var text = new StringBuilder();
        AppendHead(text, answer);
        if (answer.IsPartial)
            Lines(text, [WaysNotes.PartialMark, ""]);
        if (answer.Ways.Count > 0)
            AppendWays(text, answer, listed, Math.Min(listed, detailed));
        else
            Lines(text, [$"No way was found to make {answer.Request.Ball}.", ""]);
        AppendNotPlayable(text, answer);
        AppendFoot(text, answer, listed);
        return text.ToString();
    }

    private static void AppendHead(StringBuilder text, WaysAnswer answer)
    {
        WaysRequest request = answer.Request;
        Scene scene = request.Scene.AsUsed;
        if (scene.Title is { Length: > 0 } title)
            Lines(text, [title]);
        TableSpec table = request.Scene.Setup.Equipment.Table;
        string next = request.NextBall is { } ball ? $", then {ball}" : "";
        string pocket = request.Pocket is { } only ? $", into {TableWords.Of(only)} only" : "";
        string kicks = request.MostKickRails == 0 ? "no kicks" : $"kicks off up to {request.MostKickRails}";
        string rails = request.FewestRails == request.MostRails
            ? request.MostRails == 1 ? "1 rail" : $"{request.MostRails} rails"
            : $"{request.FewestRails} to {request.MostRails} rails";
        Lines(
            text,
            [
                Invariant($"{scene.Table!.Preset}, {table.Length:0.###} x {table.Width:0.###} m, ")
                    + $"cloth {scene.Cloth!.State}, balls {scene.BallSet!.State}, cushions {scene.Cushion!.Law}",
                $"Asked: {request.Ball}{next}{pocket}, with {request.CueBall}; {rails}, {kicks}",
                .. PlainText.Wrapped($"Player: {Errors(request.Player)}; seed {request.Seed}", Width, "", "  "),
                "",
            ]);
    }

    private static string Errors(Player player) =>
        Invariant($"{player.Name}, strays by {player.Aim * Degrees:0.###} deg of aim, ")
        + Invariant($"{100 * player.Speed:0.#} % of speed, ")
        + Invariant($"{1000 * player.TipAcross:0.##} mm of tip across and {1000 * player.TipUp:0.##} up, ")
        + Invariant($"{player.Elevation * Degrees:0.##} deg of elevation")
        + (double.IsFinite(player.HardStroke)
            ? Invariant($"; hard strokes ({player.HardStroke:0.#} m/s) by more")
            : "");

    private static void AppendWays(StringBuilder text, WaysAnswer answer, int listed, int detailed)
    {
        WaysTable table = WaysTable.Of(answer.Request, [.. answer.Ways.Take(listed)]);
        // The table is wide enough without; it is told with each way in full.
        int[] columns =
            [.. Enumerable.Range(0, table.Columns.Count).Where(c => table.Columns[c].Name != WaysTable.Rests)];
        ColumnText.Append(
            text, [.. columns.Select(c => table.Columns[c])],
            [.. table.Rows.Select(row => (IReadOnlyList<string>)[.. columns.Select(c => row[c])])]);
        if (answer.Ways.Count > listed)
            Lines(text, [$"and {answer.Ways.Count - listed} more (--top {answer.Ways.Count} lists them)"]);
        Lines(text, [""]);
        if (answer.Reason is { } reason)
            Lines(text, [$"A before B: {reason}", ""]);
        for (int k = 0; k < Math.Min(detailed, answer.Ways.Count); k++)
        {
            Way way = answer.Ways[k];
            Lines(text, [$"{VariantLetter.Of(k)}: {way.Words}"]);
            foreach ((string name, string words) in WayDetails.Of(answer.Request, way))
                Lines(text, PlainText.Wrapped(words, Width, $"  {name,-6}  ", "          "));
            Lines(text, [""]);
        }
    }

    private static void AppendNotPlayable(StringBuilder text, WaysAnswer answer)
    {
        IReadOnlyList<string> reasons = WaysNotes.NotPlayable(answer);
        if (reasons.Count == 0)
            return;
        Lines(text, ["Not playable:"]);
        foreach (string reason in reasons)
            Lines(text, PlainText.Wrapped(reason, Width, "  ", "    "));
        Lines(text, [""]);
    }

    private static void AppendFoot(StringBuilder text, WaysAnswer answer, int listed)
    {
        IReadOnlyList<string> cautions = WaysNotes.Cautions(answer, listed);
        foreach (string caution in cautions)
            Lines(text, PlainText.Wrapped(caution, Width, "Caution: ", "  "));
        if (cautions.Count > 0)
            Lines(text, [""]);
        if (answer.Ways.Count == 0)
            return;
        string order = answer.Request.Order switch
        {
            WaysOrder.Odds => "made",
            WaysOrder.Leeway => "the leeway of aim",
            WaysOrder.Kiss => "the kiss gap",
            WaysOrder.Speed => "speed, softest first",
            WaysOrder.Rails => "fewest rails",
            _ => answer.Request.NextBall is null ? "made" : "plan",
        };
        Lines(
            text,
            [
                $"Ranked by {order}. Made: goes down there and the cue ball does not; "
                    + "in brackets the 95 % interval of the count.",
                "Leeway: how far the aim may be off to the left and to the right, all else as meant.",
                "The aim is where the line of the stick meets a cushion's nose; "
                    + "diamonds along from the head, across from the right.",
            ]);
        if (answer.Request.NextBall is not null)
            Lines(text, ["Plan: this ball and the next one."]);
    }

    private static void Lines(StringBuilder text, IEnumerable<string> lines)
    {
        foreach (string line in lines)
            text.Append(PlainText.Of(line)).Append('\n');
    }
}
