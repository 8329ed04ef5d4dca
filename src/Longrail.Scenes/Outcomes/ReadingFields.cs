using Longrail.Physics.Shots.Readings;
using Cushion = Longrail.Scenes.Outcomes.ReadingField<Longrail.Physics.Shots.Readings.CushionReading>;
using Meet = Longrail.Scenes.Outcomes.ReadingField<Longrail.Physics.Shots.Readings.MeetReading>;
using Pocket = Longrail.Scenes.Outcomes.ReadingField<Longrail.Physics.Shots.Readings.PocketReading>;
using Shot = Longrail.Scenes.Outcomes.ReadingField<Longrail.Scenes.Outcomes.NamedShotReading>;
using Tip = Longrail.Scenes.Outcomes.ReadingField<Longrail.Physics.Shots.Readings.TipReading>;

namespace Longrail.Scenes.Outcomes;

/// <summary>The readings that outcomes carry: the writer and the schema follow these lists.</summary>
internal static class ReadingFields
{
    /// <summary>Readings of a stroke.</summary>
    public static ReadingField<TipReading>[] OfTip { get; } =
    [
        Tip.Number("aimDegrees",
            "Direction of the stick, counter-clockwise from head to foot, degrees.",
            r => r.AimDegrees),
        Tip.Number("pathDegrees", "Direction in which the ball leaves, degrees.", r => r.PathDegrees),
        Tip.Number("squirtDegrees", "Path minus stick, degrees, positive to the left.", r => r.SquirtDegrees),
        Tip.Number("cueSpeed", "Speed of the stick, m/s.", r => r.CueSpeed),
        Tip.Number("ballSpeed", "Speed of the ball, m/s.", r => r.BallSpeed),
        Tip.Number("offsetRight", "Contact to the right of centre over the ball's radius (b/R).", r => r.OffsetRight),
        Tip.Number("offsetAbove", "Contact above centre over the ball's radius (b/R).", r => r.OffsetAbove),
        Tip.Number("shaftRightTips", "The same as a shift of the shaft, in widths of the tip.", r => r.ShaftRightTips),
        Tip.Number("shaftAboveTips", "The same upwards, in widths of the tip.", r => r.ShaftAboveTips),
        Tip.Number("miscueLimit", "Largest offset that this tip holds, over the ball's radius.", r => r.MiscueLimit),
        Tip.Number("rollRatio",
            "R w / v as the ball leaves: 1 natural roll, 0 no spin, negative draw.",
            r => r.RollRatio),
        Tip.Number("sideRatio", "R w_z / v as the ball leaves: positive is right side.", r => r.SideRatio),
    ];

    /// <summary>Readings of two balls meeting.</summary>
    public static ReadingField<MeetReading>[] OfMeet { get; } =
    [
        Meet.Number("cutDegrees", "Cut angle, degrees, positive sends the struck ball to the left.", r => r.CutDegrees),
        Meet.Number("hitFraction", "How full the hit is: 1 full, 0.5 half a ball.", r => r.HitFraction),
        Meet.Number("throwDegrees",
            "Impulse on the struck ball against the line of centres, degrees, positive to the left.",
            r => r.ThrowDegrees),
        Meet.Number("closingSpeed", "Closing speed along the line of centres, m/s.", r => r.ClosingSpeed),
        Meet.Number("slipSpeed", "Speed of one surface over the other, m/s.", r => r.SlipSpeed),
        Meet.Flag("gripped", "Whether the surfaces stopped slipping during the contact.", r => r.Gripped),
        Meet.Number("strikerRollRatio", "R w / v of the striker on arrival.", r => r.StrikerRollRatio),
        Meet.Number("strikerSide",
            "The striker's side on arrival as a tip offset b/R, positive right side.",
            r => r.StrikerSide),
        Meet.Number("sideHandedOver", "Change of the struck ball's side as a tip offset b/R, positive right side.",
            r => r.SideHandedOver),
        Meet.Number("struckSpeed", "Speed of the struck ball afterwards, m/s.", r => r.StruckSpeed),
        Meet.Number("strikerSpeed", "Speed of the striker afterwards, m/s.", r => r.StrikerSpeed),
    ];

    /// <summary>Readings of a rebound off a cushion or a jaw.</summary>
    public static ReadingField<CushionReading>[] OfCushion { get; } =
    [
        Cushion.Number("angleInDegrees", "Angle of arrival from the cushion's normal, degrees.", r => r.AngleInDegrees),
        Cushion.Number("angleOutDegrees",
            "Angle on leaving the rubber, degrees; negative is back to the side it came from.",
            r => r.AngleOutDegrees),
        Cushion.Number("angleAfterCurveDegrees", "Angle once the ball rolls, degrees.", r => r.AngleAfterCurveDegrees),
        Cushion.Number("speedIn", "Speed on arrival, m/s.", r => r.SpeedIn),
        Cushion.Number("speedOut", "Speed on leaving the rubber, m/s.", r => r.SpeedOut),
        Cushion.Number("speedAfterCurve", "Speed once the ball rolls, m/s.", r => r.SpeedAfterCurve),
        Cushion.Number("touchDiamonds",
            "Where the centre stands at the touch, in diamonds along this cushion.",
            r => r.TouchDiamonds),
        Cushion.Number("leaveDiamonds", "Where it stands on leaving the rubber, in diamonds.", r => r.LeaveDiamonds),
        Cushion.Text("landingCushion", "The cushion whose line the ball reaches next, or null.", r => r.LandingCushion),
        Cushion.Maybe("landingDiamonds", "Where it reaches that line, in diamonds, or null.", r => r.LandingDiamonds),
        Cushion.Maybe("mirrorLandingDiamonds", "Where a mirror-like rebound would reach it, in diamonds, or null.",
            r => r.MirrorLandingDiamonds),
        Cushion.Maybe("longOfMirrorDiamonds",
            "By how much the rebound is longer than the mirror's, in diamonds; negative is short.",
            r => r.LongOfMirrorDiamonds),
        Cushion.Number("rollRatioIn",
            "R w / v along the way on arrival: 1 rolling, 0 skidding without spin.",
            r => r.RollRatioIn),
        Cushion.Number("sideIn",
            "Side on arrival as a tip offset b/R: positive running, negative reverse.",
            r => r.SideIn),
        Cushion.Number("sideOut", "Side on leaving as a tip offset b/R, counted the same way.", r => r.SideOut),
        Cushion.Number("depthMillimetres", "How deep the ball sank into the rubber, mm.", r => r.DepthMillimetres),
        Cushion.Number("stripeTurnDegrees",
            "How far the ball has turned since its last contact, degrees.",
            r => r.StripeTurnDegrees),
        Cushion.Maybe("stripeOffSlideDegrees",
            "Tilt of the stripe against a pure slide, degrees, or null without a stripe.",
            r => r.StripeOffSlideDegrees),
        Cushion.Maybe("stripeOffRollDegrees",
            "Tilt of the stripe against a pure roll, degrees, or null without a stripe.",
            r => r.StripeOffRollDegrees),
    ];

    /// <summary>Readings of a ball going down.</summary>
    public static ReadingField<PocketReading>[] OfPocket { get; } =
    [
        Pocket.Number("entryAngleDegrees",
            "Way at the mouth against the pocket's axis, degrees, positive when it comes from the right.",
            r => r.EntryAngleDegrees),
        Pocket.Number("entryOffsetMillimetres",
            "Where the centre crosses the mouth line: mm from its middle, positive to the right.",
            r => r.EntryOffsetMillimetres),
        Pocket.Number("marginMillimetres",
            "Clear space to the nearer jaw point at the mouth line, mm; negative needs a jaw.",
            r => r.MarginMillimetres),
        Pocket.Number("speed", "Speed as it drops, m/s.", r => r.Speed),
        Pocket.Count("jawTouches",
            "How often it touched this pocket's jaws since its last other contact.",
            r => r.JawTouches),
    ];

    /// <summary>Readings of the whole shot.</summary>
    public static ReadingField<NamedShotReading>[] OfShot { get; } =
    [
        Shot.Text("struckBall",
            "The ball that moved first (the cue ball), or null.",
            r => r.NameOf(r.Reading.StruckBall)),
        Shot.Text("firstBallHit", "The first other ball that it touched (the object ball), or null.",
            r => r.NameOf(r.Reading.FirstBallHit)),
        Shot.Maybe("kissGapMillimetres",
            "Least clear distance of the two after they part, mm; 0 if they meet again, null if they never met.",
            r => r.Reading.KissGapMillimetres),
        Shot.Maybe("kissGapTime", "When that is, s.", r => r.Reading.KissGapTime),
        Shot.Flag("doubleKiss", "Whether the two met again.", r => r.Reading.DoubleKiss),
        Shot.Texts("cautions", "What an instructor should be warned of.", r => r.Reading.Cautions),
    ];
}
