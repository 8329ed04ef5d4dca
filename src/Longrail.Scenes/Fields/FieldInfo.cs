using Longrail.Scenes.Units;

namespace Longrail.Scenes.Fields;

/// <summary>A line of the catalogue of fields.</summary>
/// <param name="Path">The path, as in "stroke.tip.right" or "balls[].x".</param>
/// <param name="Kind">What it holds, if it is a quantity; otherwise null.</param>
/// <param name="Range">Its legal range, if it is a quantity; otherwise null.</param>
/// <param name="Words">The words that it may hold, if it holds one of several; otherwise null.</param>
/// <param name="Default">What stands for it when it is left out, or null.</param>
/// <param name="Description">What it means, in one line.</param>
public sealed record FieldInfo(
    string Path,
    QuantityKind? Kind,
    NumberRange? Range,
    IReadOnlyList<string>? Words,
    string? Default,
    string Description);
