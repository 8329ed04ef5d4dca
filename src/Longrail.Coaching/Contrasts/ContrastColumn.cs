namespace Longrail.Coaching.Contrasts;

/// <summary>A column of a comparison's table.</summary>
/// <param name="Name">What it shows.</param>
/// <param name="Unit">In which unit; empty for none.</param>
/// <param name="IsNumber">Whether it is set to the right.</param>
public sealed record ContrastColumn(string Name, string Unit, bool IsNumber);
