namespace Longrail.Physics.Equipment;

public static partial class EquipmentPresets
{
    /// <summary>The states of balls: polished, clean, dirty.</summary>
    public static IReadOnlyList<BallCondition> BallConditions { get; } =
    [
        // Assumption: half of the clean coefficients at every slip speed (freshly polished and waxed).
        new("polished", new BallFriction(0.5 * 0.009951, 0.5 * 0.108, 1.088)),

        new("clean", CleanFriction),

        // Assumption: twice the clean coefficients at every slip speed (chalk and hand grease of some hours of play).
        // It still stays below the 0.2 with which the trade reckons for a cling, a chalk mark right at the contact, at
        // all but the lowest slip speeds.
        new("dirty", new BallFriction(2.0 * 0.009951, 2.0 * 0.108, 1.088)),
    ];

    // The members below are computed on each call, so that the order in which the partial files are initialised cannot
    // matter.

    // Alciatore, technical proof TP A.28 (2007), fitted to Marlow, The Physics of Pocket Billiards (1995), table 10.
    private static BallFriction CleanFriction => new(0.009951, 0.108, 1.088);

    // 2.25 in, 5.5 to 6 oz (156 to 170 g): WPA. Restitution 0.92 to 0.98: Alciatore, physics FAQ; the middle.
    private static BallSetSpec PoolBalls => new(Inches(2.25), 0.17, 0.95, CleanFriction);

    // 61 to 61.5 mm, 205 to 220 g: from memory of the UMB rules. Restitution: assumption, as pool balls of the same
    // resin.
    private static BallSetSpec CaromBalls => new(0.0615, 0.21, 0.95, CleanFriction);

    // 52.5 mm: snooker rules. 140 to 142 g: from memory. Restitution: assumption, as pool balls of the same resin.
    private static BallSetSpec SnookerBalls => new(0.0525, 0.142, 0.95, CleanFriction);
}
