using CsCheck;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;

namespace Longrail.TestKit;

/// <summary>Random but legal equipment, balls and shots.</summary>
public static class SceneGen
{
    private const double R = TestEquipment.R;

    /// <summary>Speeds from 1 mm/s to 15 m/s, as many slow ones as fast ones (uniform in the logarithm).</summary>
    public static Gen<double> Speed { get; } = Gen.Double[Math.Log(1e-3), Math.Log(15)].Select(Math.Exp);

    /// <summary>A direction.</summary>
    public static Gen<double> Angle { get; } = Gen.Double[-Math.PI, Math.PI];

    /// <summary>A velocity and spin: anything from full draw to overspin, up to full side either way.</summary>
    public static Gen<(Vec2 Velocity, Vec3 Spin)> Motion { get; } =
        from speed in Speed
        from angle in Angle
        from roll in Gen.OneOf(Gen.Const(0.0), Gen.Const(1.0), Gen.Double[-1.25, 1.25])
        from side in Gen.OneOf(Gen.Const(0.0), Gen.Double[-1.25, 1.25])
        from across in Gen.OneOf(Gen.Const(0.0), Gen.Double[-0.5, 0.5])
        let way = Vec2.FromAngle(angle)
        let spin = speed / R * (roll * way.Left + across * way)
        select (speed * way, new Vec3(spin.X, spin.Y, side * speed / R));

    /// <summary>Cushions of both laws.</summary>
    public static Gen<CushionSpec> Cushion { get; } =
        from law in Gen.OneOf(Gen.Const(CushionLaw.Yielding), Gen.Const(CushionLaw.Impulse))
        from restitution in Gen.Double[0.6, 1.0]
        from friction in Gen.OneOf(Gen.Const(0.0), Gen.Double[0.05, 0.35])
        from nose in Gen.Double[1.1, 1.4]
        from time in Gen.Double[0.002, 0.012]
        select new CushionSpec(law, restitution, friction, nose * R, time);

    /// <summary>Cloth, cushions and balls of any sensible kind on a 9-ft table with or without pockets.</summary>
    public static Gen<EquipmentSpec> Equipment { get; } =
        from pockets in Gen.Bool
        from cushion in Cushion
        from sliding in Gen.Double[0.1, 0.4]
        from rolling in Gen.Double[0.004, 0.02]
        from decay in Gen.Double[5, 15]
        from restitution in Gen.Double[0.85, 1.0]
        from dirt in Gen.OneOf(Gen.Const(0.0), Gen.Double[0.3, 3])
        let plain = pockets ? TestEquipment.Pocketed : TestEquipment.Plain
        let friction = new BallFriction(dirt * 9.951e-3, dirt * 0.108, 1.088)
        select plain with
        {
            Cushion = cushion,
            Cloth = new ClothSpec(sliding, rolling, decay),
            BallSet = plain.BallSet with { Restitution = restitution, Friction = friction },
        };

    /// <summary>Balls anywhere on the table, not touching, one or more of them moving.</summary>
    /// <param name="fewest">Fewest balls.</param>
    /// <param name="most">Most balls, up to 16.</param>
    public static Gen<ShotBall[]> Scattered(int fewest, int most) =>
        from count in Gen.Int[fewest, most]
        from cells in Gen.Shuffle(Enumerable.Range(0, 32).ToArray(), count)
        from jitter in Gen.Double[-1, 1].Array[2 * count]
        from moving in Gen.Int[1, count]
        from motions in Motion.Array[moving]
        select Place(cells, jitter, motions);

    /// <summary>A cue ball sent into balls frozen to one another: a full rack, a row, a pair, or a pair against a
    /// cushion.</summary>
    public static Gen<ShotBall[]> Frozen { get; } =
        from kind in Gen.Int[0, 3]
        from speed in Speed
        from turn in Angle
        from off in Gen.OneOf(Gen.Const(0.0), Gen.Double[-1.9, 1.9])
        from roll in Gen.Double[-1, 1]
        select Into(Cluster(kind, turn), speed, off * R, roll);

    /// <summary>A ball that passes another so close that it touches by next to nothing, or misses by it.</summary>
    public static Gen<ShotBall[]> Grazing { get; } =
        from speed in Speed
        from angle in Angle
        from power in Gen.Double[-15, -3]
        from misses in Gen.Bool
        from roll in Gen.Double[-1, 1]
        let way = Vec2.FromAngle(angle)
        let off = 2 * R + (misses ? 1 : -1) * R * Math.Pow(10, power)
        let start = new Vec2(1.27, 0.635)
        let other = start + 0.3 * way + off * way.Left
        select new[]
        {
            TestEquipment.Moving(start.X, start.Y, speed, angle, roll),
            TestEquipment.Ball(other.X, other.Y),
        };

    /// <summary>Any of these on any equipment.</summary>
    public static Gen<ShotSetup> Shot { get; } =
        from equipment in Equipment
        from balls in Gen.OneOf(Scattered(1, 2), Scattered(3, 16), Frozen, Grazing)
        select Fitted(equipment, balls);

    /// <summary>One or two balls: few enough contacts that rounding does not grow beyond bounds.</summary>
    public static Gen<ShotSetup> SmallShot { get; } =
        from equipment in Equipment
        from balls in Scattered(1, 2)
        select Fitted(equipment, balls);

    /// <summary>The same on a table without pockets.</summary>
    public static Gen<ShotSetup> SmallPlainShot { get; } =
        SmallShot.Select(shot => shot with { Equipment = shot.Equipment with { Table = TestEquipment.Plain.Table } });

    private static ShotBall[] Place(int[] cells, double[] jitter, (Vec2 Velocity, Vec3 Spin)[] motions)
    {
        const double cell = 0.3175, play = cell / 2 - 1.5 * R;
        return [.. cells.Select((c, i) =>
        {
            var place = new Vec2(
                (c % 8 + 0.5) * cell + play * jitter[2 * i], (c / 8 + 0.5) * cell + play * jitter[2 * i + 1]);
            (Vec2 velocity, Vec3 spin) = i < motions.Length ? motions[i] : (Vec2.Zero, Vec3.Zero);
            return new ShotBall(R, TestEquipment.M, new BallState(place, velocity, spin));
        })];
    }

    private static List<Vec2> Cluster(int kind, double turn)
    {
        // Touching to one part in a million million, so that rounding never makes an overlap of it.
        const double d = 2 * R * (1 + 1e-12);
        List<Vec2> places = [];
        switch (kind)
        {
            case 0:
                for (int row = 0; row < 5; row++)
                    for (int i = 0; i <= row; i++)
                        places.Add(new Vec2(1.8 + row * d * Math.Sqrt(0.75), 0.635 + (i - row / 2.0) * d));
                break;
            case 1:
                for (int i = 0; i < 5; i++) places.Add(new Vec2(1.5, 0.635) + i * d * Vec2.FromAngle(turn / 8));
                break;
            case 2:
                places.Add(new Vec2(1.5, 0.635));
                places.Add(places[0] + d * Vec2.FromAngle(turn));
                break;
            default:
                // Against the left cushion: the first ball stands at the touch line, whatever the nose's height makes
                // that.
                places.Add(new Vec2(1.5, double.NaN));
                places.Add(new Vec2(1.5 + d, double.NaN));
                break;
        }

        return places;
    }

    private static ShotBall[] Into(List<Vec2> places, double speed, double off, double roll)
    {
        Vec2 target = double.IsNaN(places[0].Y) ? new Vec2(places[0].X, 1.27 - R) : places[0];
        var start = new Vec2(0.7, 0.5);
        Vec2 way = (target - start).Normalized();
        start += off * way.Left;
        return
        [
            TestEquipment.Moving(start.X, start.Y, speed, way.Angle, roll),
            .. places.Select(p => TestEquipment.Ball(p.X, p.Y)),
        ];
    }

    /// <summary>Sets the balls that stand against the left cushion at the line where they touch it.</summary>
    private static ShotSetup Fitted(EquipmentSpec equipment, ShotBall[] balls)
    {
        double sin = (equipment.Cushion.NoseHeight - R) / R;
        double line = equipment.Table.Width - R * Math.Sqrt(1 - sin * sin);
        return new ShotSetup(equipment, [.. balls.Select(b => double.IsNaN(b.Start.Position.Y)
            ? b with { Start = b.Start with { Position = new Vec2(b.Start.Position.X, line) } }
            : b)]);
    }
}
