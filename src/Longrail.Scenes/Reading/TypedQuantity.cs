using System.Globalization;
using System.Text;
using System.Text.Json;
using Longrail.Scenes.Fields;
using Longrail.Scenes.Units;

namespace Longrail.Scenes.Reading;

/// <summary>Reads a quantity that stands by itself, as an argument or in a form: a number, or a text with a unit, with
/// the same words about what is wrong as a scene.</summary>
public static class TypedQuantity
{
    /// <summary>The quantity, or null if it is none.</summary>
    /// <param name="text">As typed.</param>
    /// <param name="kind">What it is to be; a bare number counts in the kind's own unit.</param>
    /// <param name="range">What is allowed, in that unit.</param>
    /// <param name="path">What the quantity is called in messages.</param>
    /// <param name="errors">Gets what is wrong.</param>
    public static Quantity? Read(
        string text, QuantityKind kind, NumberRange range, string path, ICollection<SceneError> errors)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(errors);
        var state = new SceneReadState { IsTyped = true };
        string trimmed = text.Trim();
        var json = new Utf8JsonReader(
            double.TryParse(trimmed, NumberStyles.Float, CultureInfo.InvariantCulture, out double number)
                && double.IsFinite(number)
                ? Encoding.UTF8.GetBytes(number.ToString("R", CultureInfo.InvariantCulture))
                : JsonSerializer.SerializeToUtf8Bytes(trimmed));
        json.Read();
        Quantity? quantity = QuantityReader.Read(ref json, kind, range, state);
        foreach (SceneError error in state.Errors([]))
            errors.Add(error with { Path = path });
        return quantity;
    }
}
