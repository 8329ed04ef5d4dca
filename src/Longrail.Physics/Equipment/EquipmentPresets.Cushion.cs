namespace Longrail.Physics.Equipment;

public static partial class EquipmentPresets
{
    /// <summary>The cushions of a scene that says nothing about them.</summary>
    /// <param name="noseHeight">Height of the nose above the bed, metres; each table preset has its own.</param>
    public static CushionSpec Cushion(double noseHeight) => new(
        // The one place where the default cushion is set. Restitution and friction come from the fit to the trade's
        // anchors in tools/Longrail.DefaultsFit (0.899 and 0.162, rounded); the contact time is an assumption ("several
        // milliseconds").
        Law: CushionLaw.Yielding,
        Restitution: 0.90,
        Friction: 0.16,
        NoseHeight: noseHeight,
        ContactTime: 0.008);
}
