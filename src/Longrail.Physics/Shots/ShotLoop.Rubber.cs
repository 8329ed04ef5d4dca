using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;

namespace Longrail.Physics.Shots;

/// <content>Balls pressed into a cushion that yields.</content>
internal sealed partial class ShotLoop
{
    private static PressedBall Press(BallState state, double radius) => new(state.Position, state.Velocity, radius * state.Spin);

    private static BallState Release(in PressedBall pressed, double radius) =>
        new(pressed.Position, pressed.Velocity, (1.0 / radius) * pressed.Surface);

    /// <summary>A ball touches a piece of cushion: it is pressed into it from now on, perhaps into a second one
    /// besides.</summary>
    private void EnterRubber(int i, BallState state, int piece, int eventIndex)
    {
        ref BallTrack ball = ref _balls[i];
        bool second = ball.Phase == MotionPhase.InRubber;
        // Two pieces at once is all a table's shape allows; if one were ever to give three, the second is let go.
        if (second) CloseTouch(i, ref ball.Second);
        ref RubberSlot slot = ref second ? ref ball.Second : ref ball.First;
        slot = new RubberSlot { Piece = piece, Event = eventIndex, Deepest = 0, Returning = false };
        if (!second)
        {
            ball.Modes = default;
            ball.Lift = 0;
        }

        BeginStretch(i, Press(state, ball.Radius));
    }

    /// <summary>A pressed ball goes on with the velocity and spin that another ball gave it.</summary>
    private void ContinueInRubber(int i, BallState state)
    {
        _balls[i].Modes = default;
        BeginStretch(i, Press(state, _balls[i].Radius));
    }

    /// <summary>Starts a stretch in the rubber: the motion is computed to its end now, and its path drawn as a parabola
    /// through both ends.</summary>
    private void BeginStretch(int i, PressedBall from)
    {
        ref BallTrack ball = ref _balls[i];
        ref readonly RubberLaw law = ref _rubber[i];
        ball.Phase = MotionPhase.InRubber;
        ball.Pressed = ball.PressedNext = from;
        double elapsed = Follow(ref ball, law, law.LongestStep);
        ball.Since = _now;
        ball.Until = _now + elapsed;
        ball.Start = Release(from, ball.Radius);
        if (elapsed > 0)
        {
            Vec2 way = ball.PressedNext.Position - from.Position;
            Vec3 turn = (1.0 / (elapsed * ball.Radius)) * (ball.PressedNext.Surface - from.Surface);
            ball.Acceleration = (2.0 / (elapsed * elapsed)) * (way - elapsed * from.Velocity);
            ball.SpinRate = turn.Horizontal;
            ball.VerticalRate = turn.Z;
        }

        StretchBegins(i);
    }

    /// <summary>Computes <see cref="BallTrack.PressedNext"/> a time after <see cref="BallTrack.Pressed"/>, or as far as
    /// the ball stays in.</summary>
    private double Follow(ref BallTrack ball, in RubberLaw law, double time)
    {
        ball.PressedNext = ball.Pressed;
        ball.FirstNext = ball.First;
        ball.SecondNext = ball.Second;
        ball.ModesNext = ball.Modes;
        ball.LiftNext = ball.Lift;
        if (ball.Second.InUse)
        {
            return CushionCorner.Advance(
                ref ball.PressedNext, ref ball.FirstNext, ref ball.SecondNext, _field.Outline.Pieces, law, time,
                out ball.LeavesFirst, out ball.LeavesSecond);
        }

        ball.LeavesSecond = false;
        return CushionRubber.Advance(
            ref ball.PressedNext, ref ball.FirstNext, ref ball.ModesNext, _field.Outline.Pieces, law, time, ref ball.LiftNext,
            out ball.LeavesFirst);
    }

    private static void TakeFollowed(ref BallTrack ball)
    {
        ball.Pressed = ball.PressedNext;
        ball.First = ball.FirstNext;
        ball.Second = ball.SecondNext;
        ball.Modes = ball.ModesNext;
        ball.Lift = ball.LiftNext;
    }

    private void RubberStretchEnds(int i)
    {
        ref BallTrack ball = ref _balls[i];
        TakeFollowed(ref ball);
        NoteDepth(ball, ball.First);
        if (ball.Second.InUse) NoteDepth(ball, ball.Second);
        double pressedFor = _now - _events[ball.First.Event].Time;
        if (pressedFor > LoopLimits.ContactTimesOfPress * _equipment.Cushion.ContactTime)
        {
            LoseToCloth(ref ball);
            if (Lies(ball.Pressed))
            {
                CloseTouch(i, ref ball.Second);
                CloseTouch(i, ref ball.First);
                SetFree(i, BallState.AtRest(ball.Pressed.Position));
                return;
            }
        }

        if (ball.LeavesSecond) CloseTouch(i, ref ball.Second);
        if (ball.LeavesFirst)
        {
            CloseTouch(i, ref ball.First);
            ball.First = ball.Second;
            ball.Second = RubberSlot.Free;
        }

        if (ball.First.InUse) BeginStretch(i, ball.Pressed);
        else SetFree(i, Release(ball.Pressed, ball.Radius));
    }

    /// <summary>A ball that leans on a cushion for long loses spin and speed to the cloth as on the open bed. In an
    /// ordinary contact that is less than a thousandth and left out, as in the published equations.</summary>
    private void LoseToCloth(ref BallTrack ball)
    {
        double elapsed = _now - ball.Since;
        ClothSpec cloth = _equipment.Cloth;
        PressedBall pressed = ball.Pressed;
        double turn = ball.Radius * cloth.SpinDecay * elapsed;
        double drag = cloth.RollingFriction * _equipment.Table.Gravity * elapsed;
        double speed = pressed.Velocity.Length;
        double kept = speed > drag ? 1 - drag / speed : 0;
        double vertical = Math.Abs(pressed.Surface.Z) > turn ? pressed.Surface.Z - Math.CopySign(turn, pressed.Surface.Z) : 0;
        ball.Pressed = pressed with
        {
            Velocity = kept * pressed.Velocity,
            Surface = new Vec3(kept * pressed.Surface.X, kept * pressed.Surface.Y, vertical),
        };
    }

    private static bool Lies(in PressedBall ball) =>
        ball.Velocity.Length < LoopLimits.LyingSpeed && ball.Surface.Length < LoopLimits.LyingSpeed;

    /// <summary>Follows a pressed ball to this instant, in the middle of a stretch, and starts a new stretch from
    /// there.</summary>
    private void InterruptRubber(int i)
    {
        ref BallTrack ball = ref _balls[i];
        // The path that others see is the stretch's parabola: the place is taken from it, so that a touch is a touch to
        // rounding.
        Vec2 place = ball.PositionAt(_now);
        Follow(ref ball, _rubber[i], _now - ball.Since);
        TakeFollowed(ref ball);
        ball.Pressed = ball.Pressed with { Position = place };
        NoteDepth(ball, ball.First);
        ball.Since = _now;
        ball.Until = _now;
        ball.Start = Release(ball.Pressed, ball.Radius);
        ball.Acceleration = ball.SpinRate = Vec2.Zero;
        ball.VerticalRate = 0;
    }

    private void NoteDepth(in BallTrack ball, in RubberSlot slot)
    {
        double depth = -_field.Outline.Pieces[slot.Piece].Gap(ball.Pressed.Position, ball.Reach, out _);
        ref EventEntry entry = ref _events[slot.Event];
        entry.Depth = Math.Max(entry.Depth, Math.Max(depth, slot.Deepest));
    }

    /// <summary>Completes the event of a touch with the ball's state as it stands.</summary>
    private void CloseTouch(int i, ref RubberSlot slot)
    {
        if (!slot.InUse) return;
        ref readonly BallTrack ball = ref _balls[i];
        ref EventEntry entry = ref _events[slot.Event];
        entry.Duration = _now - entry.Time;
        entry.AfterA = Release(ball.Pressed, ball.Radius);
        entry.HopHeight = Hop.Height(ball.Lift, _equipment.Table.Gravity);
        slot = RubberSlot.Free;
    }
}
