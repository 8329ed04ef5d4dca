using System.Globalization;
using Longrail.Coaching.Contrasts;
using Longrail.Drawing.Paths;
using Longrail.Drawing.Sheets;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;

namespace Longrail.Drawing.Tests;

/// <summary>A made-up comparison, its ways put together by hand.</summary>
internal static class SyntheticContrast
{
    internal static ContrastDrawing Speeds(int variants, TableSpec? table = null, bool twoThings = false)
    {
        table ??= SyntheticShot.Pool;
        return new ContrastDrawing
        {
            Title = "Straight bank across, three speeds",
            Varied = twoThings ? "stroke.speed and stroke.tip.right" : "stroke.speed",
            Held = "the stick's line",
            VariesTwoThings = twoThings,
            Equipment = SyntheticShot.Equipment(table),
            Names = ["cue", "9", "4"],
            StripeAxes = [null, new Vec3(0.2, 0.9, 0.39), null],
            Radii = [SyntheticShot.Radius, SyntheticShot.Radius, SyntheticShot.Radius],
            Struck = 0,
            Variants = [.. Enumerable.Range(0, variants + 1).Select(k => Variant(table, k, variants, twoThings))],
            Columns =
            [
                new("", "", false), new("stroke.speed", "", false), new("lands on", "diamonds", false),
                new("change", "diamonds", false), new("change", "mm", true), new("of mirror", "diamonds", false),
                new("goes", "", false), new("out", "deg", true), new("speed", "m/s", true), new("side", "b/R", false),
                new("roll", "%", true), new("throw", "deg", false), new("cue ball rests", "along, across", false),
            ],
            Notes = twoThings ? ["* two things changed: what comes out there has no single cause."] : [],
            Target = CushionName.Right,
            TableName = "pool-9ft",
        };
    }

    private static VariantDrawing Variant(TableSpec table, int k, int variants, bool twoThings)
    {
        // Spread evenly on both sides of the base; row 0 is the base.
        double off = k == 0 ? 0 : k - (variants + 1) / 2.0 - 0.25;
        var cue = new HandMadeWay(
            new Vec2(0.62, 0.45), new Vec2(1.9 + 0.2 * off, 0.62 + 0.06 * off), new Vec3(0, 20, -18));
        cue.Slide(0.25).Turn(new Vec2(0.25, 0.2 + 0.05 * off), new Vec3(-10, 60, -15)).Slide(0.3).Roll(1.6);
        Vec2 contact = cue.PositionAt(0.25);
        var nine = new HandMadeWay(new Vec2(1.12, 0.62), Vec2.Zero, Vec3.Zero);
        nine.Wait(0.25).Turn(new Vec2(0.75, 1.1 + 0.02 * off), new Vec3(2, -3, 1)).Slide(0.3);
        nine.Roll(nine.TimeToReachY(table.Width - SyntheticShot.Radius) * 0.97);
        nine.Rubber(0.012, new Vec2(0.6 + 0.06 * off, -0.75), new Vec3(30, 40, 4)).Slide(0.2);
        nine.Roll(-nine.TimeToReachY(0) > 0 ? 5 : nine.TimeToReachY(SyntheticShot.Radius) / 1.02);
        BallTrack track = nine.Track();
        double landing = track.EndPoint.X;
        double change = landing - Base(table);
        string words = k == 0 ? "0" : string.Create(
            CultureInfo.InvariantCulture,
            $"{Math.Abs(change) / table.DiamondAlong:0.00} {(change > 0 ? "longer" : "shorter")}");
        string millimetres = (1000 * change).ToString("+0.0;-0.0;0", CultureInfo.InvariantCulture);
        string label = k == 0 ? "base" : VariantLetter.Of(k - 1);
        bool two = twoThings && k > 0 && k % 2 == 0;
        return new VariantDrawing
        {
            Label = label,
            Mark = k == 0 ? null : VariantMark.Of(k - 1),
            Cells =
            [
                two ? label + " *" : label, string.Create(CultureInfo.InvariantCulture, $"{1.2 + 0.4 * k:0.0} m/s"),
                string.Create(CultureInfo.InvariantCulture, $"right {landing / table.DiamondAlong:0.00}"), words,
                millimetres,
                "0.12 short", "9 stays up", "38.2", "1.05", "0.03 running", "82", "0.8 right", "5.12, 2.40",
            ],
            TwoThingsChanged = two,
            Bank = track,
            Cue = cue.Track(),
            CueMeets = 0.25,
            Starts = [new TablePoint(0.62, 0.45), new TablePoint(1.12, 0.62), new TablePoint(1.9, 0.5)],
            Landing = landing,
            Difference = k == 0 ? "" : words,
        };
    }

    private static double Base(TableSpec table) => _base ??= Variant0(table);

    private static double? _base;

    private static double Variant0(TableSpec table)
    {
        _base = 0;
        return Variant(table, 0, 0, false).Landing!.Value;
    }
}
