using System.Globalization;
using Longrail.Physics.Equipment;
using Longrail.Physics.Shots;
using Longrail.Physics.Shots.Readings;

namespace Longrail.Drawing.Sheets;

/// <summary>Says in the trade's words what happened and what was read off.</summary>
internal static class EventWords
{
    /// <summary>"cue meets 9", "9, right cushion", "9 in left-side".</summary>
    internal static string What(ShotEvent e, IReadOnlyList<string> names) => e.Kind switch
    {
        ShotEventKind.Tip => $"tip on {names[e.BallA]}",
        ShotEventKind.BallsMeet => $"{names[e.BallA]} meets {names[e.BallB!.Value]}",
        ShotEventKind.Cushion => $"{names[e.BallA]}, {Name(e.Cushion)} cushion",
        ShotEventKind.Jaw => $"{names[e.BallA]}, jaw of {Name(e.Pocket)}",
        ShotEventKind.Pocketed => $"{names[e.BallA]} in {Name(e.Pocket)}",
        ShotEventKind.SlideEnds => $"{names[e.BallA]} rolls",
        _ => $"{names[e.BallA]} stops",
    };

    /// <summary>The reading of an event in one line; empty if there is none.</summary>
    internal static string Reading(object? reading) => reading switch
    {
        TipReading tip => Tip(tip),
        MeetReading meet => Meet(meet),
        CushionReading cushion => Cushion(cushion),
        PocketReading pocket =>
            Text($"at {pocket.Speed:0.00} m/s, {Math.Abs(pocket.EntryAngleDegrees):0.0}° off the axis, ")
            + (pocket.JawTouches > 0 ? "off the jaw" : Text($"{pocket.MarginMillimetres:0} mm clear of the jaw")),
        _ => "",
    };

    /// <summary>What is to be said about the shot as a whole, each one line.</summary>
    internal static IEnumerable<string> Notes(Trace trace, ShotReading shot)
    {
        if (shot.DoubleKiss)
            yield return "Double kiss: cue ball and object ball meet again.";
        else if (shot.KissGapMillimetres is { } gap)
            yield return gap < 10
                ? Text($"Kiss gap {gap:0.0} mm at {shot.KissGapTime:0.00} s.")
                : Text($"Kiss gap {gap:0} mm at {shot.KissGapTime:0.00} s.");
        if (trace.Ended == StopReason.TimeLimit)
            yield return Text($"Followed for {trace.Duration:0.##} s only.");
        else if (trace.Ended != StopReason.AtRest)
            yield return Text($"Not followed beyond {trace.Duration:0.00} s: too many events.");
        foreach (string caution in shot.Cautions)
            yield return $"Caution: {caution}";
    }

    /// <summary>A pocket's name as in scene files: "left-side".</summary>
    internal static string Name(PocketName? pocket) => pocket switch
    {
        PocketName.HeadRight => "head-right",
        PocketName.HeadLeft => "head-left",
        PocketName.RightSide => "right-side",
        PocketName.LeftSide => "left-side",
        PocketName.FootRight => "foot-right",
        PocketName.FootLeft => "foot-left",
        _ => "?",
    };

    /// <summary>A cushion's name as in scene files: "left".</summary>
    internal static string Name(CushionName? cushion) => cushion switch
    {
        CushionName.Head => "head",
        CushionName.Foot => "foot",
        CushionName.Left => "left",
        CushionName.Right => "right",
        _ => "?",
    };

    private static string Tip(TipReading tip)
    {
        string squirt = Math.Abs(tip.SquirtDegrees) < 0.005 ? "no squirt" : $"squirt {Degrees(tip.SquirtDegrees, 2)}";
        return Text($"ball {tip.BallSpeed:0.00} m/s, stick {tip.CueSpeed:0.00} m/s; {squirt}; ")
            + $"spin {Part(tip.RollRatio)} of roll";
    }

    private static string Meet(MeetReading meet)
    {
        string cut = Math.Abs(meet.CutDegrees) < 0.05 ? "full" : $"cut {Degrees(meet.CutDegrees, 1)}";
        string hand = meet.SideHandedOver > 0 ? "right" : "left";
        string side = Math.Abs(meet.SideHandedOver) < 0.0005
            ? ""
            : Text($"; side handed over {Math.Abs(meet.SideHandedOver):0.000} R {hand}");
        return Text($"{cut} (hit {100 * meet.HitFraction:0} %), throw {Degrees(meet.ThrowDegrees, 1)}; ")
            + Text($"leaves at {meet.StruckSpeed:0.00} m/s") + side;
    }

    private static string Cushion(CushionReading c)
    {
        string side = Math.Abs(c.SideIn) < 0.0005
            ? "no side"
            : Text($"{Math.Abs(c.SideIn):0.000} R {(c.SideIn > 0 ? "running" : "reverse")}");
        string landing = c.LandingCushion is null || c.LandingDiamonds is null
            ? ""
            : Text($"; lands {c.LandingCushion} {c.LandingDiamonds:0.00}{Long(c.LongOfMirrorDiamonds)}");
        return Text($"at {c.TouchDiamonds:0.00}: in {c.AngleInDegrees:0.0}°, out {c.AngleOutDegrees:0.0}°, ")
            + Text($"curving to {c.AngleAfterCurveDegrees:0.0}°; {c.SpeedIn:0.00} to {c.SpeedOut:0.00} m/s; {side}{landing}");
    }

    // Of the mirror line; the legend says so once.
    private static string Long(double? diamonds) => diamonds switch
    {
        null => "",
        >= 0.005 => Text($", {diamonds:0.00} long"),
        <= -0.005 => Text($", {-diamonds:0.00} short"),
        _ => ", as the mirror",
    };

    private static string Degrees(double degrees, int digits)
    {
        double size = Math.Round(Math.Abs(degrees), digits);
        string number = size.ToString("F" + digits, CultureInfo.InvariantCulture);
        return size == 0 ? $"{number}°" : $"{number}° {(degrees > 0 ? "left" : "right")}";
    }

    private static string Part(double ratio) =>
        Text($"{100 * ratio:0} %").Replace("-0 %", "0 %", StringComparison.Ordinal);

    private static string Text(FormattableString text) => FormattableString.Invariant(text);
}
