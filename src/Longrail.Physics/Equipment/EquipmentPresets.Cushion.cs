namespace Longrail.Physics.Equipment;

public static partial class EquipmentPresets
{
    /// <summary>The cushions of a scene that says nothing about them.</summary>
    /// <param name="noseHeight">Height of the nose above the bed, metres; each table preset has its own.</param>
    public static CushionSpec Cushion(double noseHeight) => new(
        // The one place where the default cushion is set.
        Law: CushionLaw.Yielding,
        Restitution: 0.95,
        Friction: 0.2,
        NoseHeight: noseHeight,
        ContactTime: 0.008);
}
