namespace Longrail.Physics.Equipment;

public static partial class EquipmentPresets
{
    // Horizontal cut angles 142 and 104 degrees (each +-1): WPA.
    private const double CornerCut = 142.0 * Math.PI / 180.0;
    private const double SideCut = 104.0 * Math.PI / 180.0;

    // Sights stand 3 11/16 in behind the nose: WPA.
    private const double PoolSightSetback = 0.0936625;

    // Nose height 62.5 to 64.5 % of the ball's diameter: WPA; the middle.
    private const double PoolNoseHeight = 0.635 * 0.05715;

    /// <summary>The tables: pool-7ft, pool-8ft, pool-9ft, carom-10ft, snooker-12ft.</summary>
    public static IReadOnlyList<TablePreset> Tables { get; } =
    [
        // 78 x 39 in: from memory, the common size. Pockets: the middle of the older, wider BCA specification
        // (corner 4 7/8 to 5 1/8 in, side 5 3/8 to 5 5/8 in).
        Pool("pool-7ft", 78.0, 39.0, corner: 5.0, side: 5.5),

        // 92 x 46 in: WPA. Pockets as on the 9-ft table.
        Pool("pool-8ft", 92.0, 46.0, corner: 4.5625, side: 5.0625),

        // 100 x 50 in: WPA. Mouths: the middle of corner 4.5 to 4.625 in and side 5 to 5.125 in: WPA.
        Pool("pool-9ft", 100.0, 50.0, corner: 4.5625, side: 5.0625),

        // 2.84 x 1.42 m, nose 37 mm high, no pockets: UMB. Sights: from memory, as on a pool table.
        new("carom-10ft", new TableSpec(2.84, 1.42, null, null, PoolSightSetback), CaromCloth, CaromBalls, 0.037),

        // 3569 x 1778 mm: snooker rules. The rules refer pockets to templates without numbers: mouths of 3.5 and 4 in
        // at the points and the rounder jaws are from memory and an assumption. Nose at 7/5 of the ball's radius: the
        // height that Mathavan, Jackson and Parkin (2010) use. Snooker tables carry no sights; a setback of nothing
        // puts them on the nose.
        new(
            "snooker-12ft",
            new TableSpec(
                3.569,
                1.778,
                new PocketSpec(Inches(3.5), CornerCut, 0.02, Inches(1.0), Inches(1.75)),
                new PocketSpec(Inches(4.0), SideCut, 0.02, 0.0, Inches(2.0)),
                SightSetback: 0.0),
            SnookerCloth,
            SnookerBalls,
            0.7 * 0.0525),
    ];

    // All in inches.
    private static TablePreset Pool(string name, double length, double width, double corner, double side) => new(
        name,
        new TableSpec(
            Inches(length),
            Inches(width),
            PoolPocket(corner, CornerCut, shelf: 1.625),
            PoolPocket(side, SideCut, shelf: 0.1875),
            PoolSightSetback),
        PoolCloth,
        PoolBalls,
        PoolNoseHeight);

    // Shelf 1 to 2 1/4 in at a corner, 0 to 3/8 in at a side: from memory, near the middle. Rounding of the jaw 3 mm:
    // assumption (rubber facing 1/16 to 1/4 in thick under the cloth: WPA). Drop edge: assumption, a circle as wide as
    // the mouth.
    private static PocketSpec PoolPocket(double mouthInches, double cutAngle, double shelf) =>
        new(Inches(mouthInches), cutAngle, 0.003, Inches(shelf), Inches(0.5 * mouthInches));
}
