namespace Longrail.Physics.Equipment;

/// <summary>A named table together with what usually lies on it.</summary>
/// <param name="Name">The name by which a scene asks for it.</param>
/// <param name="Table">Bed and pockets.</param>
/// <param name="Cloth">The cloth as played in; a <see cref="ClothCondition"/> changes it.</param>
/// <param name="BallSet">The balls that belong to the game, clean; a <see cref="BallCondition"/> changes their
/// friction.</param>
/// <param name="NoseHeight">Height of the cushions' nose above the bed, metres.</param>
public sealed record TablePreset(string Name, TableSpec Table, ClothSpec Cloth, BallSetSpec BallSet, double NoseHeight);
