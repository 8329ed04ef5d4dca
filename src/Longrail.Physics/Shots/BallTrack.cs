using Longrail.Physics.Contacts;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;

namespace Longrail.Physics.Shots;

/// <summary>What the loop knows of one ball: its present stretch of motion and what it will meet by itself.</summary>
internal struct BallTrack
{
    internal double Radius, Mass;

    /// <summary>Distance in plan at which this ball touches a nose line, metres.</summary>
    internal double Reach;

    internal MotionPhase Phase;

    /// <summary>The present stretch: it began at <see cref="Since"/> and lasts, undisturbed, until
    /// <see cref="Until"/>.</summary>
    internal double Since, Until;

    internal BallState Start;
    internal Vec2 Acceleration, SpinRate;
    internal double VerticalRate;

    /// <summary>What this ball meets first, other balls apart.</summary>
    internal Forecast Next;

    /// <summary>While in the rubber: state, memory and modes at the start and at the end of the stretch.</summary>
    internal PressedBall Pressed, PressedNext;

    internal RubberSlot First, FirstNext, Second, SecondNext;
    internal StickModes Modes, ModesNext;
    internal double Lift, LiftNext;
    internal bool LeavesFirst, LeavesSecond;

    /// <summary>The pocket it dropped into; meaningful only once pocketed.</summary>
    internal Equipment.PocketName Pocket;

    internal readonly bool Travels => Phase is MotionPhase.Sliding or MotionPhase.Rolling or MotionPhase.InRubber;

    internal readonly Vec2 PositionAt(double time)
    {
        double s = time - Since;
        return Start.Position + s * (Start.Velocity + (0.5 * s) * Acceleration);
    }

    internal readonly Vec2 VelocityAt(double time) => Start.Velocity + (time - Since) * Acceleration;

    /// <summary>The present stretch as the trace keeps it.</summary>
    internal readonly MotionSegment Segment => new(Since, Phase, Start, Acceleration, SpinRate, VerticalRate);

    internal readonly BallState StateAt(double time) => Segment.At(time);
}
