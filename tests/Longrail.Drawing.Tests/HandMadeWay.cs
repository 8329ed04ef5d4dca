using Longrail.Drawing.Paths;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;

namespace Longrail.Drawing.Tests;

/// <summary>Puts one ball's way together piece by piece; crude, but smooth and with all phases.</summary>
internal sealed class HandMadeWay(Vec2 position, Vec2 velocity, Vec3 spin)
{
    private const double Gravity = 9.80665;
    private readonly List<MotionSegment> _segments = [];
    private BallState _now = new(position, velocity, spin);
    private double _time;

    internal double RubberTime { get; private set; }

    internal HandMadeWay Wait(double seconds) => Add(MotionPhase.AtRest, Vec2.Zero, Vec2.Zero, seconds);

    internal HandMadeWay Turn(Vec2 newVelocity, Vec3 newSpin)
    {
        _now = new BallState(_now.Position, newVelocity, newSpin);
        return this;
    }

    internal HandMadeWay Slide(double seconds)
    {
        double r = SyntheticShot.Radius;
        // Slip at the lowest point; friction runs against it.
        Vec2 slip = _now.Velocity + new Vec2(-_now.Spin.Y, _now.Spin.X) * r;
        Vec2 acceleration = slip.Normalized() * (-0.2 * Gravity);
        double longest = slip.Length / (3.5 * 0.2 * Gravity);
        return Add(MotionPhase.Sliding, acceleration, acceleration.Left * (2.5 / r), Math.Min(seconds, longest));
    }

    internal HandMadeWay Roll(double seconds)
    {
        double r = SyntheticShot.Radius;
        _now = _now with { Spin = new Vec3(-_now.Velocity.Y / r, _now.Velocity.X / r, _now.Spin.Z) };
        Vec2 acceleration = _now.Velocity.Normalized() * (-0.01 * Gravity);
        double longest = _now.Velocity.Length / (0.01 * Gravity);
        return Add(MotionPhase.Rolling, acceleration, acceleration.Left / r, Math.Min(seconds, longest));
    }

    internal HandMadeWay Rubber(double seconds, Vec2 outVelocity, Vec3 outSpin)
    {
        RubberTime = _time;
        Add(MotionPhase.InRubber, (outVelocity - _now.Velocity) / seconds, Vec2.Zero, seconds);
        return Turn(outVelocity, outSpin);
    }

    internal double TimeToReachY(double y) => (y - _now.Position.Y) / _now.Velocity.Y * 1.02;

    internal Vec2 PositionAt(double time) => StateAt(time).Position;

    internal BallTrack Track()
    {
        var pieces = new List<TrackPiece>();
        for (int i = 0; i < _segments.Count; i++)
        {
            double start = _segments[i].StartTime;
            double end = i + 1 < _segments.Count ? _segments[i + 1].StartTime : _time;
            if (_segments[i].Phase == MotionPhase.AtRest)
                continue;
            var points = new TablePoint[25];
            for (int k = 0; k <= 24; k++)
                points[k] = TablePoint.From(Along(_segments[i], (end - start) * k / 24).Position);
            pieces.Add(new TrackPiece(_segments[i].Phase, start, end, points));
        }

        return new BallTrack(
            SyntheticShot.Radius, pieces, StateAt, OrientationAt, new BallEnd(MotionPhase.AtRest, _now, null));
    }

    private BallState StateAt(double time)
    {
        if (_segments.Count == 0 || time >= _time)
            return _now;
        MotionSegment segment = _segments.Last(s => s.StartTime <= Math.Max(time, 0));
        return Along(segment, time - segment.StartTime);
    }

    private Rotation OrientationAt(double time)
    {
        Rotation rotation = Rotation.Identity;
        double end = Math.Min(time, _time);
        const double Step = 0.002;
        for (double t = 0; t < end; t += Step)
            rotation = rotation.Then(Rotation.FromVector(StateAt(t + Step / 2).Spin * Math.Min(Step, end - t)));
        return rotation.Normalized();
    }

    private HandMadeWay Add(MotionPhase phase, Vec2 acceleration, Vec2 spinRate, double seconds)
    {
        var segment = new MotionSegment(_time, phase, _now, acceleration, spinRate, 0);
        _segments.Add(segment);
        _now = Along(segment, seconds);
        _time += seconds;
        return this;
    }

    private static BallState Along(MotionSegment s, double t) => new(
        s.Start.Position + s.Start.Velocity * t + s.Acceleration * (t * t / 2),
        s.Start.Velocity + s.Acceleration * t,
        new Vec3(s.Start.Spin.X + s.SpinRate.X * t, s.Start.Spin.Y + s.SpinRate.Y * t, s.Start.Spin.Z));
}
