using System.Text;
using Longrail.Scenes.Fields;
using Longrail.Scenes.Reading;
using Longrail.Scenes.Units;

namespace Longrail.Scenes.Schemas;

/// <summary>The catalogue of fields as a page for people, in Markdown.</summary>
public static class FieldTable
{
    /// <summary>The page.</summary>
    public static string ToMarkdown()
    {
        var page = new StringBuilder();
        page.Append("# The fields of a scene\n\n");
        page.Append("Made from the catalogue in the code (`SceneFields`); a test keeps it up to date.\n\n");
        page.Append("A bare number is in the unit of the third column. A text carries its own: `50 in`, `2 1/4 in`,\n");
        page.Append("`5 mph`, `2.5 deg`, `1/8 tip`, `0.2 R`, `3.5 diamonds`, `63.5 %`. Every field but `balls` may\n");
        page.Append("be left out.\n\n");
        page.Append("| Field | Meaning | Bare number | Allowed | Default |\n|---|---|---|---|---|\n");
        foreach (FieldInfo field in SceneFields.All)
        {
            string unit = field.Kind?.BareUnit ?? "";
            page.Append($"| `{field.Path}` | {Cell(field.Description)} | {unit} ");
            page.Append($"| {Cell(Allowed(field))} | {Cell(field.Default ?? "")} |\n");
        }

        page.Append("\n## Units\n\n| For | Units |\n|---|---|\n");
        foreach (Dimension dimension in UnitTable.Units.Select(unit => unit.Dimension).Distinct())
        {
            string names = string.Join(
                ", ",
                from unit in UnitTable.Units
                where unit.Dimension == dimension && !unit.Alias
                select $"`{unit.Name}`");
            page.Append($"| {UnitTable.NameOf(dimension)} | {names} |\n");
        }

        return page.ToString();
    }

    private static string Allowed(FieldInfo field)
    {
        if (field.Words is { } words)
            return string.Join(", ", words.Select(word => $"`{word}`"));
        return field is { Kind: { } kind, Range: { } range } ? range.Describe(QuantityReader.UnitOf(kind)) : "text";
    }

    private static string Cell(string text) => text.Replace("|", "\\|", StringComparison.Ordinal);
}
