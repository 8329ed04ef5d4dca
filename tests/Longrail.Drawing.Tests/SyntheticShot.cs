using Longrail.Drawing.Paths;
using Longrail.Drawing.Sheets;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots.Readings;

namespace Longrail.Drawing.Tests;

/// <summary>A made-up shot, its ways put together by hand, so that pictures can be tested without the engine.</summary>
internal static class SyntheticShot
{
    internal const double Radius = 0.028575;

    internal static TableSpec Pool { get; } = new(
        2.54, 1.27,
        new PocketSpec(0.1175, 142 * Math.PI / 180, 0.006, 0.045, 0.06),
        new PocketSpec(0.13, 104 * Math.PI / 180, 0.006, 0.012, 0.06));

    internal static TableSpec Carom { get; } = new(2.84, 1.42, null, null);

    internal static EquipmentSpec Equipment(TableSpec table) => new(
        table, new ClothSpec(0.2, 0.01, 10), new CushionSpec(CushionLaw.Yielding, 0.95, 0.2, 0.0363, 0.008),
        new BallSetSpec(2 * Radius, 0.17, 0.95, new BallFriction(0.009951, 0.108, 1.088)),
        new CueSpec(0.54, 0.013, 0.0106, 0.0085, 0.73, 0.6));

    internal static ShotDrawing StraightBank(
        TableSpec? table = null, string title = "Straight bank, firm, an eighth of right side")
    {
        table ??= Pool;
        var cue = new HandMadeWay(new Vec2(0.62, 0.30), new Vec2(2.2, 0.62), new Vec3(0, 20, -18));
        cue.Slide(0.44).Turn(new Vec2(0.25, 0.3), new Vec3(-10, 60, -15)).Slide(0.3).Roll(1.6);
        Vec2 contact = cue.PositionAt(0.44);
        Vec2 objectAt = contact + Vec2.FromAngle(0.35) * 2 * Radius;
        var nine = new HandMadeWay(objectAt, new Vec2(0, 0), Vec3.Zero);
        nine.Wait(0.44).Turn(new Vec2(1.5, 0.9), new Vec3(2, -3, 1)).Slide(0.35);
        nine.Roll(nine.TimeToReachY(table.Width - Radius)).Rubber(
            0.012, new Vec2(1.1, -0.75), new Vec3(30, 40, 4)).Slide(0.2).Roll(3.0);
        var still = new HandMadeWay(new Vec2(1.9, 0.5), Vec2.Zero, Vec3.Zero);
        BallTrack[] tracks = [cue.Track(), nine.Track(), still.Track()];
        double cushionTime = nine.RubberTime;
        TablePoint landing = TablePoint.From(nine.PositionAt(cushionTime));
        return new ShotDrawing
        {
            Title = title,
            Equipment = Equipment(table),
            Tracks = tracks,
            Names = ["cue", "9", "4"],
            StripeAxes = [null, new Vec3(0.2, 0.9, 0.39), null],
            Struck = 0,
            Ghost = new GhostBall(0, TablePoint.From(contact), 1, TablePoint.From(objectAt)),
            Tip = new TipView(
                new TipReading(15.7, 15.2, -0.51, 1.6, 2.29, 0.0415, 0, 0.125, 0, 0.5145, 0.25, 0.1),
                Equipment(table).Cue, Radius),
            Key =
            [
                new KeyRow(1, 0, TablePoint.From(new Vec2(0.62, 0.30)), new SvgPoint(-1, 0.2), "tip on cue",
                    "ball 2.29 m/s, stick 1.60 m/s; squirt 0.51° right; spin 25 % of roll"),
                new KeyRow(2, 0.44, TablePoint.From(contact), new SvgPoint(0, -1), "cue meets 9",
                    "cut 3.1° left (hit 95 %), throw 0.8° right; leaves at 1.75 m/s"),
                new KeyRow(3, cushionTime, landing, new SvgPoint(0, -1), "9, left cushion",
                    "at 5.12: in 31.2°, out 36.0°, curving to 41.1°; 1.31 to 0.98 m/s; 0.031 R running; "
                    + "lands right 6.21, 0.18 short"),
            ],
            TableName = "pool-9ft",
        };
    }
}
