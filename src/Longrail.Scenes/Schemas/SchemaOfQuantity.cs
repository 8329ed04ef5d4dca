using System.Text.Json;
using System.Text.RegularExpressions;
using Longrail.Scenes.Fields;
using Longrail.Scenes.Units;

namespace Longrail.Scenes.Schemas;

/// <summary>The part of a JSON Schema that describes one quantity: a number within its range, or a text with a
/// unit.</summary>
internal static class SchemaOfQuantity
{
    /// <summary>Writes it into an open object.</summary>
    public static void Write(Utf8JsonWriter json, QuantityKind kind, NumberRange range)
    {
        json.WriteStartArray("anyOf");
        json.WriteStartObject();
        json.WriteString("type", "number");
        json.WriteString("title", kind.IsPlainNumber ? "a plain number" : $"in {kind.BareUnit}");
        if (double.IsFinite(range.Least))
            json.WriteNumber(range.WithoutLeast ? "exclusiveMinimum" : "minimum", range.Least);
        if (double.IsFinite(range.Most))
            json.WriteNumber(range.WithoutMost ? "exclusiveMaximum" : "maximum", range.Most);
        json.WriteEndObject();
        json.WriteStartObject();
        json.WriteString("type", "string");
        string units = $"with one of the units {string.Join(", ", kind.UnitNames())}";
        json.WriteString("title", kind.IsPlainNumber ? "a text" : units);
        json.WriteString("pattern", Pattern(kind));
        json.WriteEndObject();
        json.WriteEndArray();
    }

    private static string Pattern(QuantityKind kind)
    {
        const string Decimal = @"(\d+\.?\d*|\.\d+)([eE][-+]?\d+)?";
        string units = string.Join("|", kind.UnitSpellings().Select(EscapeForEcmaScript));
        string unit = kind.IsPlainNumber ? $"({units})?" : $"({units})";
        string direction = kind == QuantityKind.CutAngle ? "( +(left|right))?" : "";
        return $@"^\s*[-+]?{Decimal}(/\d+| +\d+/\d+)?\s*{unit}{direction}\s*$";
    }

    // The characters that JSON Schema's dialect wants escaped; Regex.Escape would also escape harmless ones.
    private static string EscapeForEcmaScript(string unit) =>
        Regex.Replace(unit, @"[\^$]", @"\$0", RegexOptions.CultureInvariant);
}
