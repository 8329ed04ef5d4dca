using Longrail.Drawing;
using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots;
using Longrail.Scenes.Outcomes;

namespace Longrail.Workbench.Tables;

/// <summary>Where the things to grab lie on the table, and what a place that they are dragged to says in the scene's
/// fields.</summary>
internal static class TableHandles
{
    /// <summary>The handle of the stick's line.</summary>
    public const string Aim = "aim";

    /// <summary>The handle of the ghost ball.</summary>
    public const string Contact = "contact";

    // How far from the cue ball the stick's line is grabbed, metres.
    private const double AimReach = 0.34;
    private const double Outside = 0.12;

    /// <summary>The handle of a ball.</summary>
    public static string Ball(string id) => "ball:" + id;

    /// <summary>The ball of a handle, or null.</summary>
    public static string? BallOf(string handle) =>
        handle.StartsWith("ball:", StringComparison.Ordinal) ? handle["ball:".Length..] : null;

    /// <summary>Where the stick's line is grabbed: behind the cue ball, or before it where the page ends.</summary>
    public static Vec2 AimGrip(Outcome outcome, double aim, int cueBall)
    {
        Vec2 ball = outcome.Trace.Setup.Balls[cueBall].Start.Position;
        Vec2 back = ball - AimReach * Vec2.FromAngle(aim);
        return IsInSight(back, outcome.Trace.Setup.Equipment.Table) ? back : ball + AimReach * Vec2.FromAngle(aim);
    }

    /// <summary>The aim for a place that its grip is dragged to.</summary>
    public static (string, string) AimEdit(Outcome outcome, double aim, int cueBall, TablePoint to)
    {
        Vec2 ball = outcome.Trace.Setup.Balls[cueBall].Start.Position;
        Vec2 back = ball - AimReach * Vec2.FromAngle(aim);
        Vec2 line = IsInSight(back, outcome.Trace.Setup.Equipment.Table) ? ball - to.ToVec2() : to.ToVec2() - ball;
        return ("stroke.aim", Degrees(line.Angle));
    }

    /// <summary>The struck ball and the ball it meets first, where they touch; null if it meets none.</summary>
    public static ShotEvent? Meeting(Outcome outcome) => outcome.Trace.Events.FirstOrDefault(
        e => e.Kind == ShotEventKind.BallsMeet && e.BallA == outcome.Readings.Shot.StruckBall);

    /// <summary>The cut for a place that the ghost ball is dragged to: the ghost rolls round the object ball to the
    /// side where the pointer is.</summary>
    public static (string, string)? ContactEdit(Outcome outcome, int cueBall, int objectBall, TablePoint to)
    {
        ShotBall cue = outcome.Trace.Setup.Balls[cueBall];
        ShotBall target = outcome.Trace.Setup.Balls[objectBall];
        Vec2 away = to.ToVec2() - target.Start.Position;
        if (away.Length < 1e-6)
            return null;
        Vec2 ghost = target.Start.Position + BallContact.Reach(cue.Radius, target.Radius) * away.Normalized();
        Vec2 path = ghost - cue.Start.Position;
        double cut = Math.IEEERemainder((-away).Angle - path.Angle, 2 * Math.PI);
        if (Math.Abs(cut) >= 0.495 * Math.PI)
            return null;
        return ("stroke.aim", CutAim(outcome.Scene.BallIds[objectBall], cut));
    }

    /// <summary>An aim that cuts a ball, as JSON.</summary>
    public static string CutAim(string id, double cut) =>
        $"{{\"at\":{System.Text.Json.JsonSerializer.Serialize(id)},\"cut\":\"{Degrees(cut)}\"}}";

    /// <summary>The fields of a ball for a place that it is dragged to, with what it snaps to.</summary>
    public static (string, string)[] BallEdit(Outcome outcome, string id, TablePoint to, bool snaps)
    {
        int index = outcome.Scene.IndexOf(id);
        string ball = $"balls[{index}]";
        EquipmentSpec equipment = outcome.Trace.Setup.Equipment;
        TableSpec table = equipment.Table;
        double radius = outcome.Trace.Setup.Balls[index].Radius;
        double reach = TableOutline.Reach(radius, equipment.Cushion.NoseHeight);
        Vec2? spot = snaps ? Spot(to, table) : null;
        if (spot is { } at)
            return [($"{ball}.x", Shown.Exact(at.X)), ($"{ball}.y", Shown.Exact(at.Y))];
        (string, string) x = Along(ball, to.X, reach, table, snaps);
        (string, string) y = Across(ball, to.Y, reach, table, snaps);
        bool frozenAlong = IsFreezing(x);
        // A ball is frozen to one cushion at most: in a corner the other coordinate says that it touches there too.
        if (frozenAlong && IsFreezing(y))
            y = ($"{ball}.y", Shown.Exact(Math.Clamp(to.Y, reach, table.Width - reach)));
        // The word last: a number takes back a freezing to the cushions that it runs between.
        return frozenAlong ? [y, x] : [x, y];
    }

    private static bool IsFreezing((string Path, string Value) edit) =>
        edit.Path.EndsWith(".frozenTo", StringComparison.Ordinal);

    private static (string, string) Along(string ball, double x, double reach, TableSpec table, bool snaps)
    {
        if (snaps && x < reach + BenchView.SnapReach)
            return ($"{ball}.frozenTo", "head");
        if (snaps && x > table.Length - reach - BenchView.SnapReach)
            return ($"{ball}.frozenTo", "foot");
        double diamond = Math.Round(x / table.DiamondAlong * 2) / 2;
        if (snaps && Math.Abs(diamond * table.DiamondAlong - x) < BenchView.SnapReach)
            return ($"{ball}.along", Shown.Exact(diamond));
        return ($"{ball}.x", Shown.Exact(Math.Round(Math.Clamp(x, reach, table.Length - reach), 4)));
    }

    private static (string, string) Across(string ball, double y, double reach, TableSpec table, bool snaps)
    {
        if (snaps && y < reach + BenchView.SnapReach)
            return ($"{ball}.frozenTo", "right");
        if (snaps && y > table.Width - reach - BenchView.SnapReach)
            return ($"{ball}.frozenTo", "left");
        double diamond = Math.Round(y / table.DiamondAcross * 2) / 2;
        if (snaps && Math.Abs(diamond * table.DiamondAcross - y) < BenchView.SnapReach)
            return ($"{ball}.across", Shown.Exact(diamond));
        return ($"{ball}.y", Shown.Exact(Math.Round(Math.Clamp(y, reach, table.Width - reach), 4)));
    }

    // Head spot, centre spot, foot spot: on the long axis, a quarter, a half and three quarters of the way.
    private static Vec2? Spot(TablePoint to, TableSpec table)
    {
        for (int k = 1; k <= 3; k++)
        {
            var spot = new Vec2(0.25 * k * table.Length, 0.5 * table.Width);
            if (spot.DistanceTo(to.ToVec2()) < BenchView.SnapReach)
                return spot;
        }

        return null;
    }

    private static bool IsInSight(Vec2 at, TableSpec table) =>
        at.X > -Outside && at.X < table.Length + Outside && at.Y > -Outside && at.Y < table.Width + Outside;

    private static string Degrees(double radians) => Shown.Number(radians * (180 / Math.PI), "0.###") + " deg";
}
