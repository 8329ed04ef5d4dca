namespace Longrail.Scenes.Units;

/// <summary>A unit that a scene may use.</summary>
/// <param name="Name">How it is written in a scene.</param>
/// <param name="Dimension">What it measures.</param>
/// <param name="Factor">SI units (or radii, diameters, tips, diamonds) in one of it.</param>
/// <param name="Alias">Whether it is only another spelling, accepted but not listed.</param>
public sealed record UnitDefinition(string Name, Dimension Dimension, double Factor, bool Alias = false);
