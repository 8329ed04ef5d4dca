using Longrail.Coaching.Ways.Kisses;
using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Scenes;
using static System.FormattableString;

namespace Longrail.Coaching.Ways.Words;

/// <summary>How one way is played, and how far it may be off: lines of a name and words, for people.</summary>
public static class WayDetails
{
    private const double Degrees = 180 / Math.PI;

    /// <summary>The lines, each with what it is about; a line without a name goes on with the one above.</summary>
    /// <param name="request">The question.</param>
    /// <param name="way">One of its answers.</param>
    public static IReadOnlyList<(string Name, string Words)> Of(WaysRequest request, Way way)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(way);
        EquipmentSpec equipment = request.Scene.Setup.Equipment;
        double radius = request.Scene.Setup.Balls[request.Scene.IndexOf(request.CueBall!)].Radius;
        Stroke stroke = way.Stroke.Stroke;
        double lengths = StrokeWords.TableLengths(stroke.Speed, equipment);
        var lines = new List<(string, string)>
        {
            ("aim", Invariant($"stick at {stroke.Aim * Degrees:0.00} deg, at {StrokeWords.Aim(way.AimPoint)}; ")
                + Hit(way)),
            ("speed", $"{StrokeWords.Speed(stroke.Speed)}, "
                + Invariant($"{lengths:0.0} table lengths of roll, cushions not counted")),
            ("tip", Tip(stroke, radius, equipment.Cue)),
        };
        AddLeeway(lines, stroke, way.Stroke.Leeway);
        lines.Add(("made", Invariant($"{WaysTable.Percent(way.Made)} % of {way.Made.Trials} strokes, ")
            + $"cue ball down in {WaysTable.Percent(way.Scratch)} %"));
        if (way.Kiss is { } kiss)
            lines.Add(("kiss", Kiss(kiss)));
        if (way.RoundTheKiss.Count > 0)
        {
            IEnumerable<string> changes = way.RoundTheKiss.Select(escape => Escape(escape, radius, equipment.Cue));
            lines.Add(("", "clears with " + string.Join("; ", changes)));
        }

        if (way.Rest is { } rest)
            lines.Add(("rests", Rest(rest, equipment.Table)));
        if (way.Next is { } next)
            lines.Add(("next", Next(request.NextBall!, next)));
        return lines;
    }

    private static string Hit(Way way) => Math.Abs(way.Cut) * Degrees < 0.05
        ? "full"
        : Invariant($"cut {StrokeWords.Cut(way.Cut)} ({way.HitFraction:0.00} full)");

    private static string Tip(Stroke stroke, double radius, CueSpec cue)
    {
        string shaft = StrokeWords.Shaft(stroke, radius, cue);
        return shaft == "centre" ? shaft : $"{StrokeWords.TipInRadii(stroke, radius)}; shaft {shaft}";
    }

    private static void AddLeeway(List<(string, string)> lines, Stroke stroke, Leeway leeway)
    {
        lines.Add(("leeway", $"aim {Aim(leeway.AimLeft, "left")}, {Aim(leeway.AimRight, "right")}"));
        lines.Add(("", $"speed {Slower(stroke, leeway.Slower)}, {Faster(stroke, leeway.Faster)}"));
        lines.Add(("", $"tip {Tip(leeway.TipLeft, "left")}, {Tip(leeway.TipRight, "right")}"));
        lines.Add(("", $"tip {Tip(leeway.TipLower, "lower")}, {Tip(leeway.TipHigher, "higher")}"));
    }

    private static string Aim(LeewaySide side, string word) =>
        Side(side, Invariant($"{side.Amount * Degrees:0.00} deg {word}"));

    private static string Tip(LeewaySide side, string word) =>
        Side(side, Invariant($"{1000 * side.Amount:0.0} mm {word}"));

    private static string Slower(Stroke stroke, LeewaySide side) => side.Limit == LeewayLimit.NotReached
        ? Invariant($"down to {stroke.Speed - side.Amount:0.00} m/s: no miss seen")
        : Side(side, Invariant($"{side.Amount:0.00} m/s slower"));

    private static string Faster(Stroke stroke, LeewaySide side) => side.Limit == LeewayLimit.NotReached
        ? Invariant($"up to {stroke.Speed + side.Amount:0.00} m/s: no miss seen")
        : Side(side, Invariant($"{side.Amount:0.00} m/s faster"));

    private static string Side(LeewaySide side, string amount) => side.Limit == LeewayLimit.NotReached
        ? $"up to {amount}: no miss seen"
        : $"{amount} ({WayWords.Of(side)})";

    private static string Kiss(KissSpread kiss)
    {
        string gap = kiss.Gap > 0 ? Invariant($"gap {Gap(kiss.Gap)} mm") : "double kiss as meant";
        return $"{gap}, nine in ten {Gap(kiss.Low)} to {Gap(kiss.High)} mm; "
            + $"double kiss {WaysTable.Percent(kiss.Kisses)} %";
    }

    private static string Escape(KissEscape escape, double radius, CueSpec cue)
    {
        double tips = Math.Abs(StrokeWords.Eighths(escape.Amount, radius, cue) / 8);
        double size = Math.Abs(escape.Amount);
        bool isPlus = escape.Amount > 0;
        string change = escape.Change switch
        {
            KissChange.Cut => Invariant($"the cut {size * Degrees:0.0} deg further {(isPlus ? "left" : "right")}"),
            KissChange.Speed => Invariant($"{size:0.00} m/s {(isPlus ? "faster" : "slower")}"),
            KissChange.Side => Invariant($"the tip {tips:0.00} tip further {(isPlus ? "right" : "left")}"),
            KissChange.Height => Invariant($"the tip {tips:0.00} tip {(isPlus ? "higher" : "lower")}"),
            _ => WayWords.Of(escape.Route),
        };
        return $"{change} (gap {Gap(escape.Gap)} mm)";
    }

    // Under a centimetre a millimetre is much.
    private static string Gap(double metres) => metres < 0.01
        ? Invariant($"{1000 * metres:0.0}")
        : Invariant($"{1000 * metres:0}");

    private static string Rest(RestRegion rest, TableSpec table)
    {
        double along = rest.Mean.X / table.DiamondAlong;
        double across = rest.Mean.Y / table.DiamondAcross;
        return Invariant($"{along:0.00} along, {across:0.00} across; nine in ten within an oval of ")
            + Invariant($"{2 * rest.HalfLength:0.00} x {2 * rest.HalfWidth:0.00} m");
    }

    private static string Next(string ball, NextShot next)
    {
        string shot = next is { Pocket: { } pocket, Cut: { } cut }
            ? $"{ball} into {TableWords.Of(pocket)}, {Cut(cut)} from there on average; "
            : $"{ball}: no pot open from there on average; ";
        return Invariant($"{shot}made {WaysTable.Percent(next.Odds)} %, both balls {100 * next.Plan:0} %");
    }

    private static string Cut(double cut) =>
        Math.Abs(cut) < WayWords.Straight ? "straight" : $"cut {StrokeWords.Cut(cut)}";
}
