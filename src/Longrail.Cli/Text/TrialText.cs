using System.Text;
using Longrail.Coaching.Contrasts;
using Longrail.Coaching.Statistics;
using Longrail.Coaching.Trials;
using static System.FormattableString;

namespace Longrail.Cli.Text;

/// <summary>Plans and results of trials as text for people.</summary>
public static class TrialText
{
    private const int Width = 110;

    /// <summary>A plan, ending with a line break.</summary>
    public static string Of(TrialPlan plan)
    {
        var text = new StringBuilder();
        if (plan.Title.Length > 0) Line(text, plan.Title);
        Line(text, $"Compared: {plan.Path}, everything else held");
        Line(text, $"Player: {plan.Player.Name}");
        Line(text, Invariant($"Reading: a landing to {1000 * plan.LandingReading:0.#} mm, ")
            + Invariant($"a speed to {100 * plan.SpeedReading:0.#} % (one standard error)"));
        Line(text, "");
        Line(text, "What the physics expects of this player:");
        Table(
            text,
            [
                Name(""), Name(plan.Path), Figure("lands", "mm"), Figure("scatter", "mm"), Figure("no landing", "%"),
                Figure("goes in", "%"),
            ],
            [.. plan.Conditions.Select(ExpectedRow)]);
        Line(text, Invariant($"Shots of each condition to see the difference {100 * plan.Power:0} times in 100, ")
            + Invariant($"with {100 * plan.Level:0.#} % of false alarms:"));
        Table(
            text,
            [Name(""), Name("measured as"), Figure("difference"), Figure("scatter", "mm"), Figure("shots of each")],
            [.. plan.Needs.Select(need => NeedRow(plan, need))]);
        Line(text, Decision(plan));
        foreach (string advice in plan.Advice) Line(text, advice);
        return text.ToString();
    }

    /// <summary>The order of a plan, ending with a line break.</summary>
    public static string OrderOf(TrialPlan plan)
    {
        var text = new StringBuilder();
        if (plan.Title.Length > 0) Line(text, plan.Title);
        foreach (TrialCondition condition in plan.Conditions)
            Line(text, $"{condition.Label}: {plan.Path} = {condition.Value}");
        Line(text, Invariant($"{plan.Shots} shots of each, in this order (lot {plan.Seed}):"));
        foreach (TrialTurn[] chunk in TrialSchedule.Of(plan).Chunk(20))
        {
            string letters = string.Join(' ', chunk.Select(turn => plan.Conditions[turn.Condition].Label));
            text.Append(Invariant($"{chunk[0].Shot,4}  {PlainText.Of(letters)}\n"));
        }

        return text.ToString();
    }

    /// <summary>A result, ending with a line break.</summary>
    public static string Of(TrialResult result)
    {
        var text = new StringBuilder();
        if (result.Title.Length > 0) Line(text, result.Title);
        foreach (string sentence in result.Sentences) Line(text, sentence);
        Line(text, "");
        Table(
            text,
            [
                Name(""), Name("condition"), Figure("shots"), Figure("lands", "mm"), Figure("scatter", "mm"),
                Figure("adjusted", "mm"),
                result.SpeedIsRollOut ? Figure("roll-out", "m") : Figure("speed", "m/s"), Figure("made"),
                Figure("made within", "%"),
            ],
            [.. result.Conditions.Select(ResultRow)]);
        string confidence = Invariant($"{100 * result.Confidence:0.#} %");
        Table(
            text, [Name(""), Name("looked at as"), Figure("difference"), Figure($"{confidence} interval"), Figure("p")],
            [.. result.Comparisons.SelectMany(comparison => ComparisonRows(result, comparison))]);
        if (result.Slope is { } slope && result.CommonSpeed is { } common)
        {
            string unit = result.SpeedIsRollOut ? "m of roll-out" : "m/s";
            Line(text, Invariant($"Speed moves the landing by {1000 * slope:+0;-0;0} mm for 1 {unit}; ")
                + Invariant($"adjusted figures are for {common:0.00} {unit}."));
        }

        foreach (string note in result.Notes) Line(text, note);
        return text.ToString();
    }

    private static string[] ExpectedRow(TrialCondition c) =>
    [
        c.Label, c.Value, Millimetres(c.Landing), Millimetres(c.Spread), Invariant($"{100 * c.Lost:0.#}"),
        c.Made is { } made ? Invariant($"{100 * made.Share:0.#} ({100 * made.Low:0.#} to {100 * made.High:0.#})") : "-",
    ];

    private static string[] NeedRow(TrialPlan plan, TrialNeed need) =>
    [
        $"{need.Condition} - {plan.Conditions[0].Label}",
        need.Measure == TrialMeasure.Made
            ? "makes and misses"
            : need.UsesSpeed ? "landing, speed evened out" : "landing",
        Difference(need.Measure, need.Effect), Millimetres(need.Spread),
        need.Shots >= ShotsNeeded.Most ? "over a million" : Invariant($"{need.Shots}"),
    ];

    private static string Decision(TrialPlan plan)
    {
        if (!plan.IsAffordable) return "No affordable number of shots will do.";
        string measure = plan.Measure == TrialMeasure.Made
            ? "count makes and misses"
            : "measure where the ball lands" + (plan.UsesSpeed ? " and how fast it was struck" : "");
        string looks = plan.Looks.Count == 1
            ? "look once, at the end"
            : $"look after {string.Join(", ", plan.Looks.Select(n => Invariant($"{n}")))} of each and at no other time";
        return Invariant($"Plan: {measure}, {plan.Shots} shots of each, {looks}.");
    }

    private static string[] ResultRow(WeighedCondition c) =>
    [
        c.Label, c.Value, Invariant($"{c.Shots}"), Millimetres(c.Landing?.Mean), Millimetres(c.Landing?.Deviation),
        Millimetres(c.Adjusted), c.Speed is { } s ? Invariant($"{s.Mean:0.00}") : "-",
        c.Made is { } m ? Invariant($"{m.Made} of {m.Trials}") : "-",
        c.Made is { } w ? Invariant($"{100 * w.Low:0} to {100 * w.High:0}") : "-",
    ];

    private static IEnumerable<string[]> ComparisonRows(TrialResult result, WeighedComparison c)
    {
        string name = $"{result.Conditions[c.Condition].Label} - {result.Conditions[0].Label}";
        if (c.Unadjusted is { } raw)
            yield return Row(name, "landing as it stands", TrialMeasure.Landing, raw);
        if (c.Adjusted is { } adjusted)
            yield return Row(name, "landing at the same speed", TrialMeasure.Landing, adjusted);
        if (c.Permutation is { } dealt)
        {
            string all = dealt.IsExact ? ", all there are" : "";
            yield return [name, Invariant($"conditions dealt again, {dealt.Dealings} times{all}"), "", "", P(dealt.P)];
        }

        if (c.EqualSlopes is { } slopes)
            yield return [name, "does speed move both alike?", "", "", P(slopes)];
        if (c.Made is { } made)
            yield return Row(name, "makes", TrialMeasure.Made, made);
        if (c.Expected is { } expected)
            yield return [name, "expected by the physics", Difference(result.Measure, expected), "", ""];
    }

    private static string[] Row(string name, string what, TrialMeasure measure, WeighedDifference d) =>
        [name, what, Difference(measure, d.Value),
            $"{Difference(measure, d.Within.Low)} to {Difference(measure, d.Within.High)}", P(d.P)];

    private static string Difference(TrialMeasure measure, double value) => measure == TrialMeasure.Made
        ? Invariant($"{100 * value:+0.#;-0.#;0} in 100")
        : Invariant($"{1000 * value:+0;-0;0} mm");

    private static string P(double p) => p < 0.0005 ? "< 0.001" : Invariant($"{p:0.000}");

    private static string Millimetres(double? metres) => metres is { } m ? Invariant($"{1000 * m:0}") : "-";

    private static void Table(
        StringBuilder text, IReadOnlyList<ContrastColumn> columns, IReadOnlyList<IReadOnlyList<string>> rows)
    {
        ColumnText.Append(text, columns, rows);
        Line(text, "");
    }

    private static ContrastColumn Name(string name) => new(name, "", IsNumber: false);

    private static ContrastColumn Figure(string name, string unit = "") => new(name, unit, IsNumber: true);

    // Titles and levels come from a user; they must not steer the terminal.
    private static void Line(StringBuilder text, string line)
    {
        foreach (string part in PlainText.Wrapped(line, Width, "", "  ")) text.Append(part).Append('\n');
    }
}
