using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;
using Longrail.TestKit;
using Longrail.TestKit.Reference;
using static Longrail.TestKit.TestEquipment;

namespace Longrail.Physics.Tests;

/// <summary>Short ways to play the few shots that most checks are made of.</summary>
internal static class Plays
{
    /// <summary>A gap so small that nothing changes over it, metres: at 1 m/s on this cloth the speed falls by
    /// 2e-9.</summary>
    internal const double Hair = 1e-9;

    internal static Trace Play(this ShotSetup setup, double maxTime = 1000) =>
        ShotRunner.Run(setup, new ShotOptions(maxTime));

    /// <summary>A cue ball that goes along +x hits a resting ball so that it is cut to the left (positive) or
    /// right.</summary>
    /// <param name="equipment">The equipment.</param>
    /// <param name="speed">Speed, m/s.</param>
    /// <param name="cut">Angle from the way to the line of centres, radians.</param>
    /// <param name="roll">R w / v of the cue ball.</param>
    /// <param name="side">R w_z / v of the cue ball, positive right side.</param>
    internal static ShotSetup Hit(EquipmentSpec equipment, double speed, double cut, double roll, double side)
    {
        Vec2 struck = new(1.2, 0.6), cue = struck - 2 * R * Vec2.FromAngle(cut) - new Vec2(Hair, 0);
        return equipment.With(Moving(cue.X, cue.Y, speed, 0, roll, side), Ball(struck.X, struck.Y));
    }

    /// <summary>The meeting of <see cref="Hit"/>.</summary>
    internal static ShotEvent Meet(EquipmentSpec equipment, double speed, double cut, double roll, double side) =>
        Hit(equipment, speed, cut, roll, side).Play(0.01).Events.First(e => e.Kind == ShotEventKind.BallsMeet);

    /// <summary>Throw of that meeting, degrees, positive towards where the cue ball was going (a plain cut
    /// under-cuts).</summary>
    internal static double Throw(EquipmentSpec equipment, double speed, double cutDegrees, double roll, double side = 0)
    {
        double cut = cutDegrees * Math.PI / 180;
        ShotEvent e = Meet(equipment, speed, cut, roll, side);
        Vec2 line = (e.BeforeB!.Value.Position - e.BeforeA.Position).Normalized();
        Vec2 way = e.AfterB!.Value.Velocity;
        return -Math.Atan2(line.Cross(way), line.Dot(way)) * 180 / Math.PI;
    }

    /// <summary>A ball that goes into a cushion, and the rebound in the rail's frame with speeds over the speed
    /// in.</summary>
    internal static RailMotion Rebound(
        EquipmentSpec equipment,
        CushionName cushion,
        double speed,
        double angleDegrees,
        double roll,
        double side,
        double radius = R)
    {
        ReferenceRail rail = ReferenceRail.Of(equipment.Table).Single(r => r.Name == cushion);
        RailMotion motion = CushionTable.In(angleDegrees, roll, side, radius);
        double sin = (equipment.Cushion.NoseHeight - radius) / radius, reach = radius * Math.Sqrt(1 - sin * sin);
        var into = new Vec2(rail.IntoX, rail.IntoY);
        Vec2 middle = new(equipment.Table.Length / 2, equipment.Table.Width / 2);
        Vec2 place = middle - into * (rail.Depth(middle.X, middle.Y, reach) + Hair);
        var ball = new ReferenceBall { Radius = radius, Mass = M, X = place.X, Y = place.Y };
        rail.Out(Scaled(motion, speed), ball);
        ShotEvent e = equipment.With(new ShotBall(radius, M, ball.State)).Play(0.1).Events.First(
            x => x.Kind == ShotEventKind.Cushion);
        Assert.Equal(cushion, e.Cushion);
        return Scaled(rail.In(ReferenceBall.From(new ShotBall(radius, M, e.AfterA))), 1 / speed);
    }

    internal static RailMotion Scaled(RailMotion m, double s) =>
        new() { Vx = s * m.Vx, Vy = s * m.Vy, Wx = s * m.Wx, Wy = s * m.Wy, Wz = s * m.Wz };

    /// <summary>Velocity once the cloth has brought a ball to rolling: (5 v + 2 q)/7.</summary>
    internal static Vec2 Final(BallState s, double radius = R) =>
        new((5 * s.Velocity.X + 2 * radius * s.Spin.Y) / 7, (5 * s.Velocity.Y - 2 * radius * s.Spin.X) / 7);
}
