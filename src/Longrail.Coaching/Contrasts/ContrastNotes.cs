using Longrail.Physics.Equipment;

namespace Longrail.Coaching.Contrasts;

/// <summary>What must be said beside a comparison's table, wherever that is shown.</summary>
public static class ContrastNotes
{
    /// <summary>The notes, each a whole sentence; the most important first.</summary>
    public static IReadOnlyList<string> Of(Contrast contrast)
    {
        var notes = new List<string>();
        if (contrast.Rows.Any(row => row.TwoThingsChanged))
            notes.Add($"* {Contrast.TwoThingsMark}: what comes out there has no single cause.");
        if (contrast.Rows.Any(row => row.Bank is null))
        {
            string labels = Labels(contrast.Rows.Where(row => row.Bank is null));
            notes.Add($"{labels}: no ball touches a cushion, so there is no bank to read off.");
        }

        if (contrast.Base.Bank is { Target: null })
            notes.Add("The base reaches no second cushion, so no landing can be compared.");

        ContrastRow[] elsewhere = [.. contrast.Rows.Where(row => !IsSameBed(contrast, row))];
        if (elsewhere.Length > 0)
            notes.Add($"{Labels(elsewhere)}: played on another table than the base, which is the one that is drawn.");

        // One caution often holds for several rows.
        notes.AddRange(contrast.Rows
            .SelectMany(row => row.Readings.Shot.Cautions.Select(text => (Row: row, Text: text)))
            .GroupBy(caution => caution.Text)
            .Select(group => $"{Labels(group.Select(caution => caution.Row))}: {group.Key}"));
        return notes;
    }

    private static bool IsSameBed(Contrast contrast, ContrastRow row)
    {
        TableSpec drawn = contrast.Base.Trace.Setup.Equipment.Table;
        TableSpec played = row.Trace.Setup.Equipment.Table;
        return played.Length == drawn.Length && played.Width == drawn.Width
            && played.Corner == drawn.Corner && played.Side == drawn.Side;
    }

    private static string Labels(IEnumerable<ContrastRow> rows) => string.Join(", ", rows.Select(row => row.Label));
}
