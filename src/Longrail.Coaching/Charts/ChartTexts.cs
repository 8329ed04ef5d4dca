using System.Globalization;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Scenes;
using Longrail.Scenes.Fields;
using Longrail.Scenes.Reading;
using Longrail.Scenes.Units;

namespace Longrail.Coaching.Charts;

/// <summary>Reads the pieces of a chart's question: words, numbers, places.</summary>
/// <param name="table">The table; null while it is not known, for pieces that need none.</param>
/// <param name="errors">Gets what is wrong.</param>
internal sealed class ChartTexts(TableSpec? table, List<SceneError> errors)
{
    /// <summary>"33x17".</summary>
    internal (int Columns, int Rows)? Grid(string? text)
    {
        if (text is null)
            return null;
        string[] parts = text.Split('x');
        if (parts.Length == 2
            && int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out int columns)
            && int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out int rows)
            && columns > 0 && rows > 0)
        {
            return (columns, rows);
        }

        return Wrong("grid", text, "places along x places across, as in 33x17", (1, 1));
    }

    /// <summary>"1,2 to 3.5,2", in diamonds.</summary>
    internal (Vec2 From, Vec2 To)? Pair(string path, string text)
    {
        string[] ends = text.Split(" to ");
        if (ends.Length == 2)
            return (Place(path, ends[0]), Place(path, ends[1]));
        return Wrong(path, text, "two places, as in \"1,2 to 3.5,2\"", ((Vec2, Vec2)?)null);
    }

    /// <summary>A place in diamonds: a bare number counts them, a length with its unit is turned into them.</summary>
    internal Vec2 Place(string path, string text)
    {
        string[] parts = text.Split(',');
        if (parts.Length != 2)
            return Wrong(path, text, "along and across, as in 2,1.5", Vec2.Zero);
        return new Vec2(
            Coordinate(path, parts[0], table!.DiamondAlong),
            Coordinate(path, parts[1], table!.DiamondAcross));
    }

    private double Coordinate(string path, string text, double diamond)
    {
        if (double.TryParse(text.Trim(), NumberStyles.Float, CultureInfo.InvariantCulture, out double diamonds)
            && double.IsFinite(diamonds))
        {
            return diamonds;
        }

        Quantity place = Quantity(path, text, QuantityKind.Place, NumberRange.Any);
        return place.Unit == RelativeUnit.Diamond ? place.Value : place.Value / diamond;
    }

    /// <summary>A quantity; 0 where it is wrong.</summary>
    internal Quantity Quantity(string path, string text, QuantityKind kind, NumberRange range) =>
        TypedQuantity.Read(text, kind, range, path, errors) ?? default;

    /// <summary>A whole number from 1.</summary>
    internal int Whole(string path, string? text, int standard, int most)
    {
        if (text is null)
            return standard;
        return int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int number)
            && number >= 1 && number <= most
            ? number
            : Wrong(path, text, $"a whole number from 1 to {most}", standard);
    }

    /// <summary>The place of a word among those that are known.</summary>
    internal int Word(string path, string? text, IReadOnlyList<string> words, int standard)
    {
        if (text is null)
            return standard;
        int index = words.ToList().IndexOf(text);
        if (index >= 0)
            return index;
        string? near = NearestWord.Of(text, words);
        errors.Add(new SceneError(
            path, $"\"{text}\" is not known here", string.Join(", ", words), near is null ? null : $"\"{near}\""));
        return standard;
    }

    /// <summary>Notes what is wrong, and goes on with something that is not.</summary>
    internal T Wrong<T>(string path, string text, string allowed, T standard)
    {
        errors.Add(new SceneError(path, $"\"{text}\"", allowed));
        return standard;
    }
}
