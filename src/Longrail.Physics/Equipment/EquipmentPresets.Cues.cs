namespace Longrail.Physics.Equipment;

public static partial class EquipmentPresets
{
    /// <summary>The cues: ordinary, low-deflection.</summary>
    /// <remarks>They differ in the effective mass of the shaft's end only, so that a comparison of the two shows that
    /// and nothing else. Squirt follows the ratio of ball mass to end mass: about 20 for an ordinary shaft, 30 and more
    /// for a low-deflection one, which puts the pivot 11 to 12 in and 15.5 to 17 in behind the tip (trade figures, from
    /// memory: 8 to 20 in, low deflection from 14 in).</remarks>
    public static IReadOnlyList<CuePreset> Cues { get; } =
    [
        new("ordinary", OrdinaryCue),
        new("low-deflection", OrdinaryCue with { EndMass = 0.17 / 30.0 }),
    ];

    private static CueSpec OrdinaryCue => new(
        Mass: 0.54,             // 19 oz, a usual weight (from memory); WPA: at most 25 oz
        TipDiameter: 0.013,     // usual (from memory); WPA: at most 14 mm
        TipRadius: 0.0106,      // the curve of a US five-cent coin, 10.605 mm, a shape in common use (from memory)
        EndMass: 0.0085,        // assumption: a twentieth of a 170 g ball, see remarks
        TipRestitution: 0.73,   // leather 0.71 to 0.75: Alciatore
        TipFriction: 0.6);      // chalked leather: Alciatore; it gives a miscue at 0.514 R
}
