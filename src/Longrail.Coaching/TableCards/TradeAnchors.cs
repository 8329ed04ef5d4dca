using System.Globalization;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;
using Longrail.Physics.Shots.Readings;

namespace Longrail.Coaching.TableCards;

/// <summary>The trade's facts that the default cushion is fitted to.</summary>
/// <remarks>
/// They are facts about a nine-foot pool table that plays neither short nor long. All shots are run on a table without
/// pockets, twice as long where the trade's line would end in a corner, so that nothing but the cushion and the cloth
/// decides.
/// </remarks>
public static class TradeAnchors
{
    /// <summary>A quarter of a diamond: what a player would call the same place.</summary>
    public const double QuarterDiamond = 0.25;

    /// <summary>Rolling speed of a kick at medium pace, m/s (the middle of 2 to 4 mph; Alciatore, typical
    /// speeds).</summary>
    private const double MediumSpeed = 1.4;

    /// <summary>Speed of a fast bank as the object ball leaves the cue ball, m/s (9 mph, power; Alciatore, typical
    /// speeds).</summary>
    private const double FastSpeed = 4.0;

    /// <summary>Speed of a three-cushion track, m/s.</summary>
    private const double TrackSpeed = 2.0;

    /// <summary>All anchors for a set of equipment.</summary>
    /// <param name="equipment">Cloth, cushion and balls; the table's size and pockets are replaced.</param>
    public static IReadOnlyList<Anchor> For(EquipmentSpec equipment)
    {
        ArgumentNullException.ThrowIfNull(equipment);
        TableSpec nineFoot = new(2.54, 1.27, null, null);
        EquipmentSpec plain = equipment with { Table = nineFoot };
        EquipmentSpec longTable = equipment with { Table = nineFoot with { Length = 5.08 } };
        var anchors = new List<Anchor>();
        // From rail to rail a nine-foot table has room for 41 degrees; 50 is played from half way across.
        foreach ((double degrees, double fromRail) in new[] { (20.0, 0.0), (30.0, 0.0), (40.0, 0.0), (50.0, 0.5) })
            anchors.Add(RollingKick(longTable, degrees, fromRail));
        foreach (double x in new[] { 1.0, 1.5, 2.0, 2.5, 3.0 }) anchors.Add(FastBank(plain, x));
        anchors.Add(StraightIn(plain));
        foreach ((double origin, double first) in new[] { (5.0, 2.0), (4.5, 2.0) })
            anchors.Add(CornerFive(plain, origin, first));
        return anchors;
    }

    /// <summary>Root mean square of the residuals that are in diamonds.</summary>
    /// <param name="anchors">The anchors.</param>
    public static double RootMeanSquare(IReadOnlyList<Anchor> anchors)
    {
        double[] squares = [.. anchors.Where(a => a.Unit == "diamond").Select(a => a.Residual * a.Residual)];
        return Math.Sqrt(squares.Average());
    }

    /// <summary>A natural-roll kick aimed through the sight half way to its target arrives at the matching
    /// diamond.</summary>
    /// <remarks>From the near rail the ball lies on the line of two sights. From half way across the same line is
    /// counted from where the ball lies, as a player does who measures equal distances: on to the sight beyond the
    /// rail, and as far again on the way back.</remarks>
    private static Anchor RollingKick(EquipmentSpec equipment, double degrees, double fromRail)
    {
        TableSpec table = equipment.Table;
        double radius = equipment.BallSet.Diameter / 2;
        double reach = TableOutline.Reach(radius, equipment.Cushion.NoseHeight);
        double tangent = Math.Tan(degrees * Math.PI / 180);
        double startY = fromRail == 0 ? -table.SightSetback : fromRail * table.Width;
        double toSight = table.Width + table.SightSetback - startY;
        Vec2 direction = new Vec2(tangent, 1).Normalized();
        double clear = Math.Max(startY, reach + 0.05);
        // Counted from a place clear of the head cushion.
        const double origin = 0.3;
        var start = new Vec2(origin + (clear - startY) * tangent, clear);
        Trace trace = Run(equipment, FreeMotion.Rolling(start, MediumSpeed * direction, 0, radius));
        // From the rail the target is the rail: the way is drawn on from the touch line to the nose line.
        BallState back = OnWayBack(trace, fromRail == 0 ? null : startY);
        double beyond = fromRail == 0 ? reach * back.Velocity.X / -back.Velocity.Y : 0;
        double arrives = (back.Position.X + beyond - origin) / table.DiamondAcross;
        string where = fromRail == 0 ? "from the rail" : "from half way across";
        return new Anchor(
            string.Create(CultureInfo.InvariantCulture, $"rolling kick through the diamond, {degrees:0} degrees, {where}"),
            "through-diamond kick on a neutral table (Alciatore, bank and kick columns; common practice)",
            2 * toSight * tangent / table.DiamondAcross, arrives, "diamond", QuarterDiamond);
    }

    /// <summary>A ball that comes back from the left rail, as it touches the next rail or crosses a line along the
    /// table before that.</summary>
    private static BallState OnWayBack(Trace trace, double? line)
    {
        ShotEvent[] rails = [.. trace.Events.Where(e => e.Kind == ShotEventKind.Cushion).Take(2)];
        double low = rails[0].Time + rails[0].Duration;
        double high = rails.Length > 1 ? rails[1].Time : trace.Duration;
        if (line is not { } y) return rails.Length > 1 ? rails[1].BeforeA : trace.StateAt(0, high);
        for (int i = 0; i < 60; i++)
        {
            double middle = 0.5 * (low + high);
            if (trace.StateAt(0, middle).Position.Y > y) low = middle;
            else high = middle;
        }

        return trace.StateAt(0, high);
    }

    /// <summary>A fast bank from half way across, struck without spin: from 2 x + 1/3 diamonds off the target it is hit
    /// to x.</summary>
    private static Anchor FastBank(EquipmentSpec equipment, double x)
    {
        TableSpec table = equipment.Table;
        double radius = equipment.BallSet.Diameter / 2;
        double reach = TableOutline.Reach(radius, equipment.Cushion.NoseHeight);
        double across = table.Width - 2 * reach;
        Vec2 direction = new Vec2((x + 1.0 / 3) * table.DiamondAlong, across).Normalized();
        var touch = new Vec2(1.2, table.Width - reach);
        Vec2 start = touch - 0.5 * across / direction.Y * direction;
        CushionReading rebound = FirstRebound(equipment, new BallState(start, FastSpeed * direction, Vec3.Zero));
        return new Anchor(
            string.Create(CultureInfo.InvariantCulture, $"fast bank, hit {x:0.#} diamonds from the target"),
            "fast-bank rule 2x + 1/3 (Alciatore, Billiards Digest): 1/6 diamond short of the mirror",
            x, rebound.LandingDiamonds!.Value - rebound.TouchDiamonds, "diamond", QuarterDiamond);
    }

    /// <summary>Straight in and rolling, a ball keeps about half its speed once it rolls again.</summary>
    private static Anchor StraightIn(EquipmentSpec equipment)
    {
        double radius = equipment.BallSet.Diameter / 2;
        double reach = TableOutline.Reach(radius, equipment.Cushion.NoseHeight);
        var start = new Vec2(1.0, equipment.Table.Width - reach - 0.001);
        CushionReading rebound = FirstRebound(equipment, FreeMotion.Rolling(start, new Vec2(0, MediumSpeed), 0, radius));
        return new Anchor(
            "speed kept straight in, after rolling again", "\"typically loses about half its speed\" (Alciatore); band 0.50 to 0.62",
            0.56, rebound.SpeedAfterCurve / rebound.SpeedIn, "of the speed in", 0.06);
    }

    /// <summary>Three cushions, long rail first: third rail = origin - first rail, counted from the far end.</summary>
    private static Anchor CornerFive(EquipmentSpec equipment, double origin, double first)
    {
        TableSpec table = equipment.Table;
        double diamond = table.DiamondAlong;
        double radius = equipment.BallSet.Diameter / 2;
        double reach = TableOutline.Reach(radius, equipment.Cushion.NoseHeight);
        var from = new Vec2(2 * (5 - origin) * diamond, -table.SightSetback);
        var through = new Vec2((8 - first) * diamond, table.Width + table.SightSetback);
        Vec2 direction = (through - from).Normalized();
        // On the line, clear of the near rail and of the head cushion.
        double clear = Math.Max((reach + 0.02 - from.Y) / direction.Y, (reach + 0.02 - from.X) / direction.X);
        Trace trace = Run(equipment, FreeMotion.Rolling(from + clear * direction, TrackSpeed * direction, 0, radius));
        ShotEvent? third = trace.Events.Where(e => e.Kind == ShotEventKind.Cushion).Skip(2).FirstOrDefault();
        double arrives = third is { Cushion: CushionName.Right }
            ? 8 - third.BeforeA.Position.X / diamond
            : double.NaN;
        return new Anchor(
            string.Create(CultureInfo.InvariantCulture, $"three cushions, {origin:0.#} through {first:0.#}"),
            "corner-five: third = origin - first (Alciatore TP 7.2; Jewett)", origin - first, arrives, "diamond", QuarterDiamond);
    }

    private static Trace Run(EquipmentSpec equipment, BallState start) =>
        ShotRunner.Run(new ShotSetup(equipment, [new ShotBall(equipment.BallSet.Diameter / 2, equipment.BallSet.Mass, start)]));

    private static CushionReading FirstRebound(EquipmentSpec equipment, BallState start)
    {
        Trace trace = Run(equipment, start);
        IReadOnlyList<object?> readings = TraceReadings.Of(trace).Events;
        return readings.OfType<CushionReading>().First();
    }
}
