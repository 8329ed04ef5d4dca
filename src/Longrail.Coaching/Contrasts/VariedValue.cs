namespace Longrail.Coaching.Contrasts;

/// <summary>The value that a varied field has in one row of a comparison.</summary>
/// <param name="Path">The field.</param>
/// <param name="Text">Its value as it was asked for; for the base, as the scene has it.</param>
/// <param name="IsChanged">Whether it differs from the base.</param>
public sealed record VariedValue(string Path, string Text, bool IsChanged);
