using System.Text;
using Longrail.Coaching.Effects;
using Longrail.Scenes;

namespace Longrail.Cli.Text;

/// <summary>An effect budget as text for people: a sentence, a table, and what must be said beside it.</summary>
public static class EffectsText
{
    private const string Gap = "  ";
    private const int Width = 118;

    /// <summary>The text, ending with a line break.</summary>
    /// <param name="budget">The budget.</param>
    /// <param name="unit">The unit of the sentence and of what is shown in one unit only.</param>
    public static string Of(EffectBudget budget, EffectUnit unit)
    {
        var text = new StringBuilder();
        if (budget.Title.Length > 0)
            Line(text, Plain(budget.Title));
        Line(text, $"Measured: {Plain(budget.Names[budget.Ball])}, {Way(budget)}");
        Line(text, $"Mirror: {Plain(EffectTable.PlaceText(budget, budget.MirrorPlace))}; the shot: "
            + Plain(EffectTable.PlaceText(budget, budget.Place)));
        Line(text, "");
        Wrapped(text, Plain(EffectSentence.Of(budget, unit)));
        Line(text, "");
        AppendTable(text, EffectTable.Of(budget, unit));
        foreach (string note in budget.Notes)
            Wrapped(text, Plain(note));
        AppendFoot(text, budget);
        return text.ToString();
    }

    private static string Way(EffectBudget budget)
    {
        string from = budget.Striker is { } striker ? $"hit by {budget.Names[striker]}, " : "";
        string off = budget.Cushions.Count == 0
            ? "straight"
            : "off " + string.Join(", then ", budget.Cushions.Select(TableWords.Of));
        string to = budget.Target.Kind switch
        {
            EffectTargetKind.Ball => $" to {budget.Names[budget.Target.Met!.Value]}",
            EffectTargetKind.Mouth => $" into {TableWords.Of(budget.Target.Pocket!.Value)}",
            _ => $" to the {TableWords.Of(budget.Target.Cushion!.Value)} cushion",
        };
        return Plain(from + off + to);
    }

    private static void AppendTable(StringBuilder text, EffectTable table)
    {
        IReadOnlyList<string>[] rows = [.. table.Causes, .. table.Sums];
        int[] widths =
        [
            .. table.Columns.Select((column, c) =>
                Math.Max(rows.Max(row => row[c].Length), Math.Max(column.Name.Length, column.Unit.Length))),
        ];
        AppendRow(text, table, widths, [.. table.Columns.Select(c => c.Name)]);
        AppendRow(text, table, widths, [.. table.Columns.Select(c => c.Unit)]);
        foreach (IReadOnlyList<string> row in table.Causes)
            AppendRow(text, table, widths, row);
        Line(text, new string('-', widths.Sum() + Gap.Length * (widths.Length - 1)));
        foreach (IReadOnlyList<string> row in table.Sums)
            AppendRow(text, table, widths, row);
        Line(text, "");
    }

    private static void AppendRow(StringBuilder text, EffectTable table, int[] widths, IReadOnlyList<string> cells)
    {
        IEnumerable<string> padded = cells.Select((cell, c) =>
            table.Columns[c].IsNumber ? cell.PadLeft(widths[c]) : cell.PadRight(widths[c]));
        Line(text, string.Join(Gap, padded).TrimEnd());
    }

    private static void AppendFoot(StringBuilder text, EffectBudget budget)
    {
        EffectTarget target = budget.Target;
        string signs = $"+ is {target.PositiveWord}, - is {target.NegativeWord}";
        Line(text, $"{signs}; diamonds are the ball centre's, counted at the nose.");
        Line(text, "Share: what a cause adds, averaged over all orders in which the causes can be switched on.");
        Line(text, "Off alone: how far the shot moves back if only this is switched off. Two causes can need each");
        Line(text, "other, as roll and curve do; both then count in full, and the interplay takes back the excess.");
    }

    private static void Wrapped(StringBuilder text, string sentence)
    {
        var line = new StringBuilder();
        foreach (string word in sentence.Split(' '))
        {
            if (line.Length > 0 && line.Length + 1 + word.Length > Width)
            {
                Line(text, line.ToString());
                line.Clear();
            }

            line.Append(line.Length > 0 ? " " : "").Append(word);
        }

        Line(text, line.ToString());
    }

    private static void Line(StringBuilder text, string line) => text.Append(line).Append('\n');

    // Titles and names come from a user; they must not steer the terminal.
    private static string Plain(string text) => string.Create(text.Length, text, (span, from) =>
    {
        for (int i = 0; i < span.Length; i++)
            span[i] = char.IsControl(from[i]) ? ' ' : from[i];
    });
}
