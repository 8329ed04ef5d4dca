using System.Globalization;
using Longrail.Coaching.Ways;
using Longrail.Drawing.Paths;
using Longrail.Drawing.Sheets;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots.Readings;

namespace Longrail.Drawing.Tests;

/// <summary>Made-up ways to play a ball, put together by hand.</summary>
internal static class SyntheticWays
{
    internal static WaysDrawing Ways(int count, int more = 0, params string[] notes) => new()
    {
        Title = "Which bank?",
        Asked = "9, then 8",
        Player = "club",
        Equipment = SyntheticShot.Equipment(SyntheticShot.Pool),
        Names = ["cue", "9", "8"],
        StripeAxes = [null, new Vec3(0.2, 0.9, 0.39), null],
        Radii = [SyntheticShot.Radius, SyntheticShot.Radius, SyntheticShot.Radius],
        Starts = [new TablePoint(0.62, 0.45), new TablePoint(1.12, 0.62), new TablePoint(1.9, 0.4)],
        CueBall = 0,
        ObjectBall = 1,
        NextBall = 2,
        Ways = [.. Enumerable.Range(0, count).Select(Way)],
        MoreWays = more,
        Columns =
        [
            new("", "", false), new("plan", "%", true), new("made", "%", false), new("way", "", false),
            new("speed", "m/s", true), new("then 8", "pocket, cut, made", false),
        ],
        Details = count == 0
            ? []
            :
            [
                ("aim", "stick at 18.1 deg, at left 5.20; cut 12.0 deg left (0.79 full)"), ("speed", "2.00 m/s (4.5 mph)"),
                ("tip", "centre"), ("leeway", "aim 0.31 deg left (far jaw), 0.42 deg right (near jaw)"),
                ("", "speed 0.30 m/s slower (too slow), 0.80 m/s faster (near jaw)"), ("", "tip 2.0 mm left (far jaw)"),
                ("", "tip 4.0 mm lower (far jaw)"), ("made", "62 (59 to 65) % of 1000 strokes"), ("kiss", "gap 42 mm"),
            ],
        Reason = count > 1 ? "likelier (48 against 30 %): twice the leeway" : null,
        NotPlayable = ["8 stands in the object ball's way: pot into foot-right"],
        Notes = notes,
        TableName = "pool-9ft",
    };

    private static WayDrawing Way(int index)
    {
        BallTrack cue = Cue().Track();
        BallTrack ball = Ball(0.03 * index).Track();
        bool isFirst = index == 0;
        TablePoint contact = cue.PositionAt(0.25);
        return new WayDrawing
        {
            Mark = VariantMark.Of(index),
            Words = "cross-side bank off left into right-side, natural",
            Cells =
            [
                VariantMark.Of(index).Letter, string.Create(CultureInfo.InvariantCulture, $"{48 - 5 * index}"),
                "62 (59 to 65)", "cross-side bank off left into right-side, natural", "2.00", "foot-right, 12 deg left, 77 %",
            ],
            Odds = string.Create(CultureInfo.InvariantCulture, $"{48 - 5 * index} %"),
            Cue = cue,
            Ball = ball,
            Contact = new GhostBall(0, contact, 1, new TablePoint(1.12, 0.62)),
            Meets = 0.25,
            Fan = isFirst ? [Leg(0.2), Leg(0.6)] : [],
            Kiss = isFirst ? new KissMark(new TablePoint(1.3, 0.7), new TablePoint(1.4, 0.76), "kiss gap 42 mm") : null,
            Rest = new RestRegion(new Vec2(1.5, 0.5), 0.2, 0.08, 0.5, [new Vec2(1.45, 0.5), new Vec2(1.6, 0.55)]),
            Next = isFirst
                ? [new(1.5, 0.5), new(1.85, 0.43), new(1.9, 0.4), new(2.5, 0.04)]
                : [],
            Tip = isFirst
                ? new TipView(
                    new TipReading(15.7, 15.2, 0, 1.6, 2.0, 0, 0, 0, 0, 0.5145, 0, 0),
                    SyntheticShot.Equipment(SyntheticShot.Pool).Cue, SyntheticShot.Radius)
                : null,
        };
    }

    private static HandMadeWay Cue() => new HandMadeWay(new Vec2(0.62, 0.45), new Vec2(1.9, 0.62), new Vec3(0, 20, 0))
        .Slide(0.25).Turn(new Vec2(0.25, 0.2), new Vec3(-10, 60, 0)).Slide(0.3).Roll(1.6);

    private static HandMadeWay Ball(double off)
    {
        var nine = new HandMadeWay(new Vec2(1.12, 0.62), Vec2.Zero, Vec3.Zero);
        nine.Wait(0.25).Turn(new Vec2(0.3 + off, 1.1), new Vec3(2, -3, 1)).Slide(0.3);
        nine.Roll(nine.TimeToReachY(1.27 - SyntheticShot.Radius) * 0.97);
        return nine.Rubber(0.012, new Vec2(0.25 + off, -0.75), new Vec3(30, 40, 4)).Slide(0.2).Roll(1.2);
    }

    private static FanLeg Leg(double x)
    {
        TablePoint[] left = [.. Enumerable.Range(0, 5).Select(k => new TablePoint(1.12 + x * k / 4, 0.62 + 0.1 * k))];
        return new FanLeg(left, [.. left.Select((p, k) => new TablePoint(p.X + 0.01 * k, p.Y))]);
    }
}
