namespace Longrail.Workbench.Words;

/// <summary>The origins of the numbers on the page. The formulas and their sources stand at length in docs/physics.md
/// and docs/sources.md.</summary>
internal static class Origins
{
    private const string OffThePath = "Read off the computed path; see docs/physics.md, \"What do the readings mean?\"";
    private const string CushionSource =
        "S. Mathavan, M. R. Jackson, R. M. Parkin, Proc. IMechE C 224, 1863 (2010), "
        + "with sticking put in; docs/physics.md";

    public static Origin BallSpeed { get; } = new(
        "Speed of the ball's centre as it leaves the tip.",
        "v = V (1 + e) / (1 + m/M + 5/2 (b/R)²)",
            "Rigid-body derivation; docs/physics.md, \"What does the tip give the ball?\"");

    public static Origin StickSpeed { get; } = new(
        "How fast the stick has to move for that ball speed.",
        "V = v (1 + m/M + 5/2 (b/R)²) / (1 + e)", "Rigid-body derivation; docs/physics.md");

    public static Origin Squirt { get; } = new(
        "How far the ball leaves to the side of the stick's line: the end of the shaft is pushed aside. "
        + "It does not depend on speed.",
        "tan(squirt) = 5/2 (b/R) √(1 − (b/R)²) / (1 + m/mₑ + 5/2 (1 − (b/R)²))",
        "R. Cross, Am. J. Phys. 76, 205 (2008); form as in D. G. Alciatore, TP A.31");

    public static Origin TipRoll { get; } = new(
        "How much of a natural roll the tip gives: 100 % rolls at once, 0 skids without spin, negative is draw.",
        "R ω / v = 5/2 b/R (b above the centre)", "Rigid-body derivation; docs/physics.md");

    public static Origin Cut { get; } = new(
        "Angle between the cue ball's path and the line of centres at the touch.",
        "angle from the striker's velocity to the line of centres", OffThePath);

    public static Origin Fullness { get; } = new(
        "How much of the object ball the cue ball covers: 100 % is full, 50 % half a ball.", "1 − sin(cut)",
            OffThePath);

    public static Origin Throw { get; } = new(
        "How far friction between the balls turns the object ball off the line of centres.",
        "atan(F / J), J = (1 + e) v cos(cut) m/2, F = min(µ(slip) J, m slip / 7)",
        "R. E. Wallace, M. C. Schroeder, Am. J. Phys. 56, 815 (1988); "
        + "µ(slip) from W. C. Marlow's measurements, fitted by D. G. Alciatore, TP A.28");

    public static Origin HandedOver { get; } = new(
        "Side that the object ball takes over, as the tip offset that would give it. Right side arrives as left.",
        "Δ(2/5 R ω_z / v)", "The same friction impulse turns both balls; docs/physics.md");

    public static Origin Leaves { get; } = new("Speed of the object ball as the balls part.",
        "from J and F, momentum kept", OffThePath);

    public static Origin Touch { get; } = new(
        "Where the ball's centre stands along the cushion as it touches.",
        "centre at the touch over the length of a diamond, numbered as chosen under Units", OffThePath);

    public static Origin AngleIn { get; } = new(
        "Angle of arrival from the cushion's normal; 0 is straight in.", "angle of the velocity against the normal",
            OffThePath);

    public static Origin AngleOut { get; } = new(
        "Angle as the ball leaves the rubber. The nose takes most of the roll, so it is shorter than the angle in.",
        "push N along the tilted normal, friction at nose and bed, integrated over the contact", CushionSource);

    public static Origin AngleAfter { get; } = new(
        "Angle once the ball rolls again: the roll that is left bends the path long.",
        "direction of (5 v + 2 q) / 7, q = the velocity at which it would roll with its spin",
        "G. G. Coriolis (1835); docs/physics.md, \"When does a skid end?\"");

    public static Origin CushionSpeed { get; } = new(
        "Speed on arrival and on leaving the rubber.",
            "as the angle out; e² is the part of the work that the cushion gives back", CushionSource);

    public static Origin CushionRoll { get; } = new(
        "How much the ball rolls as it arrives: 100 % rolls, 0 skids. "
        + "A harder stroke arrives skidding and comes off shorter.",
        "R ω / v along the way", OffThePath);

    public static Origin Side { get; } = new(
        "Side on arrival as a tip offset; running carries the ball along its way, reverse the other way.",
        "2/5 R ω_z / v", OffThePath);

    public static Origin Lands { get; } = new(
        "Where the centre next reaches a cushion's line, pocket mouths included.",
            "path after the rebound, carried on to the line", OffThePath);

    public static Origin Mirror { get; } = new(
        "How much longer or shorter than a mirror-like rebound from the same touch.",
            "landing − mirror landing, along that cushion", OffThePath);

    public static Origin Entry { get; } = new(
        "Way at the pocket's mouth against its axis.", "angle of the velocity against the axis", OffThePath);

    public static Origin Margin { get; } = new(
        "Clear space to the nearer jaw at the mouth line; negative needs a jaw.",
            "mouth/2 − |offset| − R, square to the way", OffThePath);

    public static Origin PocketSpeed { get; } = new("Speed as the ball drops.", "v at the drop edge", OffThePath);
}
