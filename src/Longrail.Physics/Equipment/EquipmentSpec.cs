namespace Longrail.Physics.Equipment;

/// <summary>Everything a shot is played on and with.</summary>
/// <param name="Table">Bed and pockets.</param>
/// <param name="Cloth">The cloth.</param>
/// <param name="Cushion">The cushions, all alike.</param>
/// <param name="BallSet">The balls.</param>
/// <param name="Cue">The cue.</param>
public sealed record EquipmentSpec(TableSpec Table, ClothSpec Cloth, CushionSpec Cushion, BallSetSpec BallSet, CueSpec Cue);
