namespace Longrail.Physics.Equipment;

public static partial class EquipmentPresets
{
    /// <summary>The states of a cloth: new, played-in, worn, damp.</summary>
    /// <remarks>All factors are assumptions. On the pool cloth they keep within the ranges of Alciatore's physics FAQ:
    /// sliding 0.15 to 0.4, rolling 0.005 to 0.015, spin decay 5 to 15 rad/s^2.</remarks>
    public static IReadOnlyList<ClothCondition> ClothConditions { get; } =
    [
        new("new", Sliding: 0.8, Rolling: 0.8, Spin: 0.75, CushionFriction: 0.8),
        new("played-in", Sliding: 1.0, Rolling: 1.0, Spin: 1.0, CushionFriction: 1.0),
        new("worn", Sliding: 1.25, Rolling: 1.15, Spin: 1.2, CushionFriction: 1.15),
        new("damp", Sliding: 1.2, Rolling: 1.4, Spin: 1.3, CushionFriction: 1.3),
    ];

    // Typical values of Alciatore's physics FAQ: sliding 0.2, rolling 0.01, spin decay 10 rad/s^2.
    private static ClothSpec PoolCloth => new(0.2, 0.01, 10.0);

    // Assumption: a fine, heated cloth near the fast end of the same ranges; sliding and spin as on a pool table.
    private static ClothSpec CaromCloth => new(0.2, 0.007, 10.0);

    // Sliding 0.212: Mathavan, Jackson and Parkin, Proc. IMechE C 224 (2010), who took it from their measurements of
    // 2009; rolling 0.0127: Am. J. Phys. 77, 788 (2009); both from memory. Spin decay: assumption, as on a pool table.
    private static ClothSpec SnookerCloth => new(0.212, 0.0127, 10.0);
}
