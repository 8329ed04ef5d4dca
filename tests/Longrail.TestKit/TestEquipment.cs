using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;

namespace Longrail.TestKit;

/// <summary>Equipment for checks, written out here so that a change of the product's presets cannot change what is
/// checked.</summary>
public static class TestEquipment
{
    /// <summary>Ball radius of a pool ball, 2.25 in across, metres.</summary>
    public const double R = 0.028575;

    /// <summary>Mass of a pool ball, 6 oz, kilograms.</summary>
    public const double M = 0.17009713875;

    /// <summary>Metres per second in a mile per hour.</summary>
    public const double Mph = 0.44704;

    /// <summary>A 9-ft table without pockets, ordinary cloth, yielding cushions, ordinary balls.</summary>
    public static EquipmentSpec Plain { get; } = new(
        new TableSpec(2.54, 1.27, null, null),
        new ClothSpec(0.2, 0.01, 10),
        new CushionSpec(CushionLaw.Yielding, 0.95, 0.2, 0.0363, 0.008),
        new BallSetSpec(2 * R, M, 0.95, Marlow),
        new CueSpec(0.54, 0.013, 0.0106, 0.0085, 0.73, 0.6));

    /// <summary>The same with six pockets of usual shape.</summary>
    public static EquipmentSpec Pocketed { get; } = Plain with
    {
        Table = Plain.Table with
        {
            Corner = new PocketSpec(0.1159, 142 * Math.PI / 180, 0.012, 0.04, 0.06),
            Side = new PocketSpec(0.1286, 104 * Math.PI / 180, 0.012, 0.005, 0.06),
        },
    };

    /// <summary>No friction anywhere, nothing lost: cushions of the impulse law with the nose at centre height, so
    /// that a ball goes like a ray of light. Friction of the cloth cannot be zero; 1e-12 bends no path by more than a
    /// rounding error.</summary>
    public static EquipmentSpec Lossless { get; } = Plain with
    {
        Cloth = new ClothSpec(1e-12, 1e-12, 1e-9),
        Cushion = new CushionSpec(CushionLaw.Impulse, 1, 0, R, 0.008),
        BallSet = new BallSetSpec(2 * R, M, 1, new BallFriction(0, 0, 0)),
    };

    /// <summary>Friction between balls as fitted in Alciatore TP A.28 (2007) to Marlow (1995).</summary>
    public static BallFriction Marlow => new(9.951e-3, 0.108, 1.088);

    /// <summary>The cushion of Mathavan, Jackson and Parkin (2010): 0.98, 0.14, nose at 7/5 R.</summary>
    public static CushionSpec Mathavan(double radius) => new(CushionLaw.Impulse, 0.98, 0.14, 1.4 * radius, 0.008);

    /// <summary>The same equipment with another cloth.</summary>
    public static EquipmentSpec WithCloth(this EquipmentSpec equipment, Func<ClothSpec, ClothSpec> change) =>
        equipment with { Cloth = change(equipment.Cloth) };

    /// <summary>The same equipment with other cushions.</summary>
    public static EquipmentSpec WithCushion(this EquipmentSpec equipment, Func<CushionSpec, CushionSpec> change) =>
        equipment with { Cushion = change(equipment.Cushion) };

    /// <summary>The same equipment with other balls.</summary>
    public static EquipmentSpec WithBalls(this EquipmentSpec equipment, Func<BallSetSpec, BallSetSpec> change) =>
        equipment with { BallSet = change(equipment.BallSet) };

    /// <summary>The same equipment with another table.</summary>
    public static EquipmentSpec WithTable(this EquipmentSpec equipment, Func<TableSpec, TableSpec> change) =>
        equipment with { Table = change(equipment.Table) };

    /// <summary>A pool ball.</summary>
    /// <param name="x">Place along the table, metres.</param>
    /// <param name="y">Place across the table, metres.</param>
    /// <param name="velocity">Velocity, m/s.</param>
    /// <param name="spin">Spin, rad/s.</param>
    public static ShotBall Ball(double x, double y, Vec2 velocity = default, Vec3 spin = default) =>
        new(R, M, new BallState(new Vec2(x, y), velocity, spin));

    /// <summary>A pool ball that moves in a direction with a roll ratio and a side.</summary>
    /// <param name="x">Place along the table, metres.</param>
    /// <param name="y">Place across the table, metres.</param>
    /// <param name="speed">Speed, m/s.</param>
    /// <param name="angle">Direction, radians from +x.</param>
    /// <param name="roll">R w / v along the way: 1 rolls, 0 skids without spin.</param>
    /// <param name="side">R w_z / v: positive is right side.</param>
    public static ShotBall Moving(double x, double y, double speed, double angle, double roll = 1, double side = 0)
    {
        var way = Vec2.FromAngle(angle);
        double w = speed / R;
        return Ball(x, y, speed * way, new Vec3(-roll * w * way.Y, roll * w * way.X, side * w));
    }

    /// <summary>A shot with these balls.</summary>
    public static ShotSetup With(this EquipmentSpec equipment, params ShotBall[] balls) => new(equipment, balls);
}
