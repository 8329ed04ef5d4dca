using System.Globalization;
using Longrail.Physics.Shots;
using Longrail.Physics.Shots.Readings;
using Longrail.Scenes;
using static System.FormattableString;

namespace Longrail.Cli.Text;

/// <summary>An event of a shot in words.</summary>
internal static class EventPhrases
{
    // Exact: 0.44704 m/s in a mile per hour.
    private const double MilePerHour = 0.44704;

    // What rounds to nothing is left out.
    private const double NoAngle = 0.005;
    private const double NoCut = 0.05;
    private const double NoOffset = 0.0005;

    /// <summary>The phrases that tell an event, in order.</summary>
    public static List<string> Of(ShotEvent e, object? reading, IReadOnlyList<string> ids) => e.Kind switch
    {
        ShotEventKind.Tip => Tip(reading as TipReading, e),
        ShotEventKind.SlideEnds => [Invariant($"rolls, {e.AfterA.Velocity.Length:0.00} m/s")],
        ShotEventKind.Stops => [e.AfterA.Spin.Z == 0 ? "stops" : "stops, still turning on the spot"],
        ShotEventKind.BallsMeet => Meet(reading as MeetReading, ids[e.BallA], ids[e.BallB!.Value]),
        ShotEventKind.Cushion => Cushion(TableWords.Of(e.Cushion!.Value), reading as CushionReading),
        ShotEventKind.Jaw => Jaw(JawName(e), reading as CushionReading),
        _ => Pocketed(e, reading as PocketReading),
    };

    private static List<string> Tip(TipReading? tip, ShotEvent e)
    {
        if (tip is null)
            return [$"struck, {Speed(e.AfterA.Velocity.Length)}"];
        var phrases = new List<string>
        {
            $"struck, {Speed(tip.BallSpeed)}",
            Invariant($"stick at {tip.AimDegrees:0.00} deg"),
        };
        if (Math.Abs(tip.SquirtDegrees) >= NoAngle)
            phrases.Add(Invariant($"squirt {Sided(tip.SquirtDegrees, "0.00")}"));
        if (Math.Abs(tip.OffsetRight) >= NoOffset)
            phrases.Add(Offset(tip.OffsetRight, tip.ShaftRightTips, "right", "left"));
        if (Math.Abs(tip.OffsetAbove) >= NoOffset)
            phrases.Add(Offset(tip.OffsetAbove, tip.ShaftAboveTips, "above", "below"));

        phrases.Add(Invariant($"cue at {tip.CueSpeed:0.00} m/s"));
        return phrases;
    }

    private static List<string> Meet(MeetReading? meet, string striker, string struck)
    {
        var phrases = new List<string> { $"meets {struck}" };
        if (meet is null)
            return phrases;
        phrases.Add(Math.Abs(meet.CutDegrees) < NoCut
            ? "full"
            : Invariant($"cut {Sided(meet.CutDegrees, "0.0")} ({meet.HitFraction:0.00} full)"));
        if (Math.Abs(meet.ThrowDegrees) >= NoAngle)
            phrases.Add($"throw {Sided(meet.ThrowDegrees, "0.00")}");
        if (Math.Abs(meet.SideHandedOver) >= NoOffset)
        {
            string side = meet.SideHandedOver > 0 ? "right" : "left";
            phrases.Add(Invariant($"hands over {Math.Abs(meet.SideHandedOver):0.000} R of {side} side"));
        }

        phrases.Add(Invariant($"{struck} leaves at {meet.StruckSpeed:0.00} m/s"));
        phrases.Add(Invariant($"{striker} at {meet.StrikerSpeed:0.00} m/s"));
        return phrases;
    }

    // Where a ball lands off a jaw tells nobody anything.
    private static List<string> Jaw(string name, CushionReading? jaw) => jaw is null
        ? [name]
        :
        [
            name,
            Invariant($"in {jaw.AngleInDegrees:0.0} deg, out {jaw.AngleOutDegrees:0.0}"),
            Invariant($"{jaw.SpeedIn:0.00} to {jaw.SpeedOut:0.00} m/s"),
        ];

    private static List<string> Cushion(string name, CushionReading? cushion)
    {
        if (cushion is null)
            return [$"{name} cushion"];
        var phrases = new List<string>
        {
            Invariant($"{name} cushion at {cushion.TouchDiamonds:0.00}"),
            Invariant($"in {cushion.AngleInDegrees:0.0} deg, out {cushion.AngleOutDegrees:0.0}"),
            Invariant($"after the curve {cushion.AngleAfterCurveDegrees:0.0}"),
            Invariant($"{cushion.SpeedIn:0.00} to {cushion.SpeedOut:0.00} m/s"),
            Invariant($"roll {cushion.RollRatioIn:0.00}"),
        };
        if (Math.Abs(cushion.SideIn) >= NoOffset)
        {
            string side = cushion.SideIn > 0 ? "running" : "reverse";
            phrases.Add(Invariant($"{side} side {Math.Abs(cushion.SideIn):0.000} R"));
        }

        if (cushion.LandingCushion is { } landing && cushion.LandingDiamonds is { } diamonds)
            phrases.Add(Invariant($"lands on {landing} at {diamonds:0.00}"));
        if (cushion.LongOfMirrorDiamonds is { } longer)
            phrases.Add(Invariant($"{Math.Abs(longer):0.00} diamond {(longer >= 0 ? "long" : "short")} of the mirror"));
        if (cushion.StripeOffSlideDegrees is { } slide && cushion.StripeOffRollDegrees is { } roll)
            phrases.Add(Invariant($"stripe {slide:0} deg off a slide's, {roll:0} deg off a roll's"));
        return phrases;
    }

    private static List<string> Pocketed(ShotEvent e, PocketReading? pocket)
    {
        var phrases = new List<string> { $"drops in {TableWords.Of(e.Pocket!.Value)}" };
        if (pocket is null)
            return phrases;
        phrases.Add(Invariant($"{Math.Abs(pocket.EntryAngleDegrees):0.0} deg off the pocket's axis"));
        phrases.Add(pocket.MarginMillimetres >= 0
            ? Invariant($"{pocket.MarginMillimetres:0.0} mm clear of the nearer jaw")
            : Invariant($"{-pocket.MarginMillimetres:0.0} mm into the nearer jaw"));
        if (pocket.JawTouches > 0)
            phrases.Add(pocket.JawTouches == 1 ? "off a jaw" : $"off the jaws {pocket.JawTouches} times");
        phrases.Add(Invariant($"{pocket.Speed:0.00} m/s"));
        return phrases;
    }

    private static string JawName(ShotEvent e) => e.Cushion is { } cushion
        ? $"jaw of {TableWords.Of(e.Pocket!.Value)} on the {TableWords.Of(cushion)} cushion"
        : $"jaw of {TableWords.Of(e.Pocket!.Value)}";

    private static string Speed(double speed) => Invariant($"{speed:0.00} m/s ({speed / MilePerHour:0.0} mph)");

    private static string Offset(double radii, double shaftTips, string positive, string negative)
    {
        string where = radii > 0 ? positive : negative;
        return Invariant($"tip {Math.Abs(radii):0.000} R {where} (shaft {Math.Abs(shaftTips):0.000} tip)");
    }

    private static string Sided(double degrees, string format)
    {
        string amount = Math.Abs(degrees).ToString(format, CultureInfo.InvariantCulture);
        return $"{amount} deg {(degrees > 0 ? "left" : "right")}";
    }
}
