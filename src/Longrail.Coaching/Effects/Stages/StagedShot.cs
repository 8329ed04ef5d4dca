using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;

namespace Longrail.Coaching.Effects.Stages;

/// <summary>A shot played stage by stage with any of its causes on or off: to the hit, the hit, each way to a cushion,
/// each rebound, the way to the target.</summary>
/// <remarks>
/// Cushions are lines without ends and come in the order of the real shot; jaws, pockets and other balls are left out.
/// With all causes on this is the real shot as far as none of those takes part; with all off it is geometry.
/// </remarks>
internal sealed class StagedShot
{
    private readonly ShotChain _chain;
    private readonly EquipmentSpec _equipment;
    private readonly ShotBall _ball;
    private readonly FreeWay _way;
    private readonly RailBench[] _benches;
    private readonly (BallState Striker, BallState Struck)?[] _meetings = new (BallState, BallState)?[2];
    private readonly bool[] _met = new bool[2];

    internal StagedShot(ShotChain chain)
    {
        _chain = chain;
        _equipment = chain.Trace.Setup.Equipment;
        _ball = chain.Trace.Setup.Balls[chain.Ball];
        _way = new FreeWay(_ball.Radius, _equipment.Cloth, _equipment.Table.Gravity);
        _benches = [.. chain.Cushions.Select(c => new RailBench(_equipment, c.Law, _ball.Radius, _ball.Mass))];
    }

    /// <summary>Where the ball crosses a line after its last cushion, straight on if it stops before; null if it does
    /// not come so far.</summary>
    internal Vec2? Arrival(Switches on, StraightLine target) => Arrival(on, target, null);

    /// <summary>The corners of the ways with some causes on.</summary>
    /// <returns>Null if the ball does not come to the target.</returns>
    internal EffectPath? Path(Switches on, StraightLine target)
    {
        var touches = new List<Vec2>();
        Vec2? arrival = Arrival(on, target, touches);
        Vec2[] striker = _chain.Hit is not null && Meeting(on) is { } meeting
            ? [_chain.Trace.Setup.Balls[_chain.Striker!.Value].Start.Position, meeting.Striker.Position]
            : [];
        return arrival is { } end ? new EffectPath(striker, [.. touches, end]) : null;
    }

    private Vec2? Arrival(Switches on, StraightLine target, List<Vec2>? corners)
    {
        if (SetOut(on) is not { } state)
            return null;
        corners?.Add(state.Position);
        for (int k = 0; k < _benches.Length; k++)
        {
            StraightLine line = _chain.Cushions[k].TouchLine;
            double speed = state.Velocity.Length;
            if (_way.To(line, state) is not { } arrived)
                return null;
            if (!on.Has(EffectKind.Speed, k))
                arrived = Unslowed(arrived, speed);
            corners?.Add(arrived.Position);
            if (SwitchedRebound.Of(_benches[k], arrived, line.Across, _ball.Radius, on, k) is not { } left)
                return null;
            state = left;
        }

        return _way.Arrival(target, state);
    }

    // As fast as it set out, rolling to the same part. Its side stays what is left of it: how much side there is
    // belongs to the side, how much it does at a speed belongs to the speed.
    private static BallState Unslowed(in BallState arrived, double speed)
    {
        double faster = speed / arrived.Velocity.Length;
        Vec3 spin = faster * arrived.Spin;
        return new BallState(arrived.Position, faster * arrived.Velocity, spin with { Z = arrived.Spin.Z });
    }

    /// <summary>The measured ball as it sets out: from the tip, or from the hit.</summary>
    private BallState? SetOut(Switches on)
    {
        if (_chain.Hit is not { } hit)
        {
            BallState start = Launched(_chain.Ball, on.Has(EffectKind.SquirtAndSwerve));
            return on.Has(EffectKind.Side) ? start : start with { Spin = start.Spin with { Z = 0 } };
        }

        if (Meeting(on) is not { } meeting)
            return null;
        BallFriction friction = on.Has(EffectKind.BallCondition)
            ? _equipment.BallSet.Friction
            : CleanBalls;
        ShotBall striker = _chain.Trace.Setup.Balls[_chain.Striker!.Value];
        return SwitchedHit.Of(
            meeting.Striker, striker, meeting.Struck, _ball, _equipment.BallSet.Restitution, friction, on);
    }

    /// <summary>The friction of clean balls, which is what an odd condition is compared with.</summary>
    internal static BallFriction CleanBalls { get; } =
        EquipmentPresets.BallConditions.First(condition => condition.Name == "clean").Friction;

    private (BallState Striker, BallState Struck)? Meeting(Switches on)
    {
        bool squirts = on.Has(EffectKind.SquirtAndSwerve) || !_chain.SetsOutFree;
        int index = squirts ? 1 : 0;
        if (!_met[index])
        {
            _meetings[index] = squirts ? AsPlayed() : WithoutSquirt();
            _met[index] = true;
        }

        return _meetings[index];
    }

    private (BallState Striker, BallState Struck) AsPlayed()
    {
        ShotEvent hit = _chain.Trace.Events[_chain.Hit!.Value];
        return hit.BallB == _chain.Ball
            ? (hit.BeforeA, hit.BeforeB!.Value)
            : (hit.BeforeB!.Value, hit.BeforeA);
    }

    /// <summary>Plays the striker along the stick into the measured ball, the two alone on the table.</summary>
    private (BallState Striker, BallState Struck)? WithoutSquirt()
    {
        int striker = _chain.Striker!.Value;
        ShotBall launched = _chain.Trace.Setup.Balls[striker] with { Start = Launched(striker, squirts: false) };
        var player = new ShotPlayer();
        var watch = default(FirstContact);
        player.Play(new ShotSetup(_equipment, [launched, _ball]), ShotOptions.Default, ref watch);
        if (watch.At < 0 || player[watch.At] is not { Kind: ShotEventKind.BallsMeet } meets)
            return null;
        return meets.BallA == 0 ? (meets.BeforeA, meets.BeforeB) : (meets.BeforeB, meets.BeforeA);
    }

    /// <summary>A ball as it is launched. Without squirt and swerve it sets out along the stick, and the part of its
    /// spin about its own way, which a raised butt gives and which bends the way, is left out.</summary>
    private BallState Launched(int ball, bool squirts)
    {
        BallState start = _chain.Trace.Setup.Balls[ball].Start;
        if (squirts)
            return start;
        StrokeRecord? stroke = _chain.Trace.Setup.Stroke;
        Vec2 aim = stroke is not null && stroke.Ball == ball
            ? Vec2.FromAngle(stroke.Stroke.Aim)
            : start.Velocity.Normalized();
        double about = start.Spin.Horizontal.Dot(aim);
        return new BallState(
            start.Position, start.Velocity.Length * aim,
            new Vec3(start.Spin.X - about * aim.X, start.Spin.Y - about * aim.Y, start.Spin.Z));
    }

    /// <summary>Ends the play at the first contact of any kind.</summary>
    private struct FirstContact : IShotWatch
    {
        private int _seen;
        private int _at;

        /// <summary>Its place among the events; -1 if there was none.</summary>
        public readonly int At => _at - 1;

        public bool GoesOn(ShotMoment moment)
        {
            _seen++;
            if (moment.Kind is ShotEventKind.SlideEnds or ShotEventKind.Stops)
                return true;
            _at = _seen;
            return false;
        }
    }
}
