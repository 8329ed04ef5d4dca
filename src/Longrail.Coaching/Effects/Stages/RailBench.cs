using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;

namespace Longrail.Coaching.Effects.Stages;

/// <summary>One ball against one long straight cushion: what a rebound gives for any state on arrival, by the engine
/// itself.</summary>
internal sealed class RailBench
{
    // Large enough that nothing else is met while the ball is in the rubber, and within what a table may measure.
    private const double Bed = 6.0;

    // Far longer than any contact; a ball that leans on the cushion for so long does not come off it.
    private static readonly ShotOptions _limits = new(MaxTime: 2.0, MaxEvents: 8);

    private readonly ShotPlayer _player = new();
    private readonly ShotBall[] _balls = new ShotBall[1];
    private readonly ShotSetup _setup;
    private readonly Vec2 _touch;
    private readonly double _radius;
    private readonly double _mass;

    internal RailBench(EquipmentSpec equipment, CushionLaw law, double radius, double mass)
    {
        var bed = new TableSpec(Bed, Bed / 2, null, null, Gravity: equipment.Table.Gravity);
        _setup = new ShotSetup(
            equipment with { Table = bed, Cushion = equipment.Cushion with { Law = law } }, _balls);
        _touch = new Vec2(Bed - TableOutline.Reach(radius, equipment.Cushion.NoseHeight), Bed / 4);
        _radius = radius;
        _mass = mass;
    }

    /// <summary>The rebound of a ball that arrives with a velocity and spin.</summary>
    /// <param name="velocity">Velocity, m/s.</param>
    /// <param name="spin">Spin, rad/s.</param>
    /// <param name="into">Unit vector into the cushion.</param>
    /// <returns>Velocity and spin on leaving, and the way from touch to leaving in place of a position; null if the
    /// ball does not come off.</returns>
    internal BallState? Rebound(Vec2 velocity, Vec3 spin, Vec2 into)
    {
        _balls[0] = new ShotBall(_radius, _mass, new BallState(_touch, Turned(velocity, into), Turned(spin, into)));
        var watch = default(FirstTouch);
        _player.Play(_setup, _limits, ref watch);
        if (_player.EventCount == 0 || _player[0].Kind != ShotEventKind.Cushion)
            return null;
        BallState after = _player[0].AfterA;
        if (!(after.Velocity.X < 0))
            return null;
        return new BallState(
            Back(after.Position - _touch, into), Back(after.Velocity, into), Back(after.Spin, into));
    }

    // The bench's cushion is the foot's: into it is +x.
    private static Vec2 Turned(Vec2 v, Vec2 into) => new(v.Dot(into), v.Dot(into.Left));

    private static Vec2 Back(Vec2 v, Vec2 into) => v.X * into + v.Y * into.Left;

    private static Vec3 Turned(Vec3 v, Vec2 into)
    {
        Vec2 level = Turned(v.Horizontal, into);
        return new Vec3(level.X, level.Y, v.Z);
    }

    private static Vec3 Back(Vec3 v, Vec2 into)
    {
        Vec2 level = Back(v.Horizontal, into);
        return new Vec3(level.X, level.Y, v.Z);
    }

    /// <summary>Ends the play once the first touch is over.</summary>
    private struct FirstTouch : IShotWatch
    {
        private int _seen;

        public bool GoesOn(ShotMoment moment) => ++_seen < 2;
    }
}
