namespace Longrail.Coaching.Charts;

/// <summary>What the equipment of a chart is called, for its caption; the numbers stand in the equipment itself.
/// </summary>
/// <param name="Table">The table's preset, or null.</param>
/// <param name="Cloth">The state of the cloth, or null.</param>
/// <param name="Balls">The state of the balls, or null.</param>
public sealed record EquipmentNames(string? Table = null, string? Cloth = null, string? Balls = null);
