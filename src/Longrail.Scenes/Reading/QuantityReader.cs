using System.Text;
using System.Text.Json;
using Longrail.Scenes.Fields;
using Longrail.Scenes.Units;

namespace Longrail.Scenes.Reading;

/// <summary>Reads a quantity from a JSON number or text and says what is wrong with it.</summary>
internal static class QuantityReader
{
    /// <summary>The quantity at the reader's current token, or null if it is not one; the state then knows
    /// why.</summary>
    public static Quantity? Read(ref Utf8JsonReader json, QuantityKind kind, NumberRange range, SceneReadState state)
    {
        long offset = json.TokenStartIndex;
        Quantity quantity;
        switch (json.TokenType)
        {
            case JsonTokenType.Number:
                if (!json.TryGetDouble(out double number) || !double.IsFinite(number))
                {
                    state.Add(offset, "the number is too large to be finite", range.Describe(UnitOf(kind)));
                    return null;
                }

                quantity = new Quantity(number, kind.Bare);
                break;
            case JsonTokenType.String:
                if (!TryReadText(ref json, kind, range, state, out quantity))
                    return null;
                break;
            default:
                string found = SceneReadState.KindOf(ref json);
                json.Skip();
                state.Add(offset, $"{found} where {Wanted(kind)} is wanted", Forms(kind));
                return null;
        }

        // A quantity in terms of something else is checked when that is known.
        if (quantity.Unit == kind.Bare && !range.Contains(quantity.Value))
        {
            state.Add(offset, $"{SceneReadState.KindOf(ref json)} is out of range", range.Describe(UnitOf(kind)));
            return null;
        }

        return quantity;
    }

    /// <summary>The unit of a bare number for messages; empty for a plain number.</summary>
    public static string UnitOf(QuantityKind kind) => kind.IsPlainNumber ? "" : kind.BareUnit;

    private static bool TryReadText(
        ref Utf8JsonReader json, QuantityKind kind, NumberRange range, SceneReadState state, out Quantity quantity)
    {
        ReadOnlySpan<byte> text = json.ValueIsEscaped
            ? Encoding.UTF8.GetBytes(SceneReadState.TextOf(ref json))
            : json.ValueSpan;
        QuantityTextProblem problem = QuantityText.Parse(text, kind, out quantity);
        if (problem == QuantityTextProblem.None)
            return true;

        string shown = SceneReadState.Shorten(Encoding.UTF8.GetString(text));
        string unit = QuantityText.UnitPart(text);
        (string what, string allowed, string? suggestion) = problem switch
        {
            QuantityTextProblem.NoUnit =>
                ($"\"{shown}\" has no unit", Forms(kind), $"{shown} without quotes ({kind.BareUnit})"),
            QuantityTextProblem.UnknownUnit =>
                ($"\"{SceneReadState.Shorten(unit)}\" is no unit known here", Forms(kind),
                    Quote(NearestWord.Of(unit, kind.UnitNames()))),
            QuantityTextProblem.WrongUnit =>
                ($"\"{shown}\" is {WhatMeasures(unit)}, not {Wanted(kind)}", Forms(kind), null),
            QuantityTextProblem.UnknownWord =>
                ($"\"{SceneReadState.Shorten(unit)}\" is no unit known here", Forms(kind), null),
            QuantityTextProblem.NotFinite =>
                ($"\"{shown}\" is not a finite number", range.Describe(UnitOf(kind)), null),
            _ => ($"\"{shown}\" does not begin with a number", Forms(kind), (string?)null),
        };
        state.Add(json.TokenStartIndex, what, allowed, suggestion);
        return false;
    }

    private static string Wanted(QuantityKind kind) =>
        ("aeiou".Contains(kind.Name[0], StringComparison.Ordinal) ? "an " : "a ") + kind.Name;

    private static string Forms(QuantityKind kind)
    {
        string units = string.Join(", ", kind.UnitNames());
        if (kind.IsPlainNumber)
            return $"a plain number, or a text with {units}";
        string direction = kind == QuantityKind.CutAngle ? ", then \"left\" or \"right\"" : "";
        return $"a number ({kind.BareUnit}), or a text with one of the units {units}{direction}";
    }

    private static string WhatMeasures(string unit) =>
        UnitTable.NameOf(UnitTable.Find(Encoding.UTF8.GetBytes(unit))!.Dimension);

    private static string? Quote(string? word) => word is null ? null : $"\"{word}\"";
}
