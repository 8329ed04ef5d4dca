using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;

namespace Longrail.Physics.Shots;

/// <content>What happens at an event.</content>
internal sealed partial class ShotLoop
{
    private void Resolve(Occurrence next)
    {
        switch (next.Kind)
        {
            case ForecastKind.Drop: Drop(next.A, next.Index); break;
            case ForecastKind.BallsMeet: BallsMeet(next.A, next.B); break;
            case ForecastKind.Touch: Touch(next.A, next.Index); break;
            case ForecastKind.RubberStretchEnds: RubberStretchEnds(next.A); break;
            case ForecastKind.MouthCrossed: _stale[next.A] = true; break;
            default: PhaseEnds(next.A); break;
        }
    }

    private void PhaseEnds(int i)
    {
        ref readonly BallTrack ball = ref _balls[i];
        MotionPhase phase = ball.Phase;
        BallState before = ball.StateAt(_now);
        BallState after = FreeMotion.Ended(phase, ball.Start, before, ball.Radius);
        SetFree(i, after);
        if (phase == MotionPhase.Pivoting) return;
        bool rolls = _balls[i].Phase == MotionPhase.Rolling;
        ref EventEntry entry = ref Record(phase == MotionPhase.Sliding && rolls ? ShotEventKind.SlideEnds : ShotEventKind.Stops, i);
        entry.BeforeA = before;
        entry.AfterA = _balls[i].Start;
    }

    private void Drop(int i, int pocket)
    {
        BallState state = StateNow(i);
        if (_balls[i].Phase == MotionPhase.InRubber)
        {
            CloseTouch(i, ref _balls[i].First);
            CloseTouch(i, ref _balls[i].Second);
        }

        ref EventEntry entry = ref Record(ShotEventKind.Pocketed, i);
        entry.BeforeA = entry.AfterA = state;
        entry.Pocket = (PocketName)pocket;
        entry.HasPocket = true;

        ref BallTrack ball = ref _balls[i];
        ball.Phase = MotionPhase.Pocketed;
        ball.Since = _now;
        ball.Until = double.PositiveInfinity;
        ball.Start = state;
        ball.Acceleration = ball.SpinRate = Vec2.Zero;
        ball.VerticalRate = 0;
        ball.Pocket = (PocketName)pocket;
        StretchBegins(i);
    }

    /// <summary>A ball's state now; a pressed ball is followed to this instant first.</summary>
    private BallState StateNow(int i)
    {
        if (_balls[i].Phase == MotionPhase.InRubber) InterruptRubber(i);
        return _balls[i].StateAt(_now);
    }

    private void BallsMeet(int i, int j)
    {
        for (int k = 0; k < _count; k++) _states[k] = _balls[k].StateAt(_now);
        _states[i] = StateNow(i);
        _states[j] = StateNow(j);
        double closing = (_states[i].Velocity - _states[j].Velocity).Dot((_states[j].Position - _states[i].Position).Normalized());
        Unsink(i, j);
        CollectCluster(i, j, closing);
        double restitution = closing < LoopLimits.LosslessClosing ? 1.0 : _equipment.BallSet.Restitution;
        BallFriction friction = _equipment.BallSet.Friction;
        Array.Copy(_states, _statesBefore, _count);

        if (_cluster.Count == 1)
        {
            BallContactResult met = BallContact.Collide(
                ref _states[i], _sizes[i].Radius, _sizes[i].Mass, ref _states[j], _sizes[j].Radius, _sizes[j].Mass, restitution, friction);
            RecordMeeting(i, j, Hop.Height(met.UpwardSpeed, _equipment.Table.Gravity));
            Continue(i);
            Continue(j);
            return;
        }

        _cluster.Resolve(_states.AsSpan(0, _count), _sizes.AsSpan(0, _count), restitution, friction);
        for (int t = 0; t < _cluster.Count; t++)
        {
            _cluster.Pair(t, out int a, out int b);
            if (!_cluster.Pushed(t)) continue;
            RecordMeeting(a, b, 0);
        }

        for (int k = 0; k < _count; k++)
        {
            if (_cluster.Has(k)) Continue(k);
        }
    }

    /// <summary>Puts two balls that have leaned on each other back to a bare touch, so that a long press does not let
    /// them sink in step by step. Their common centre of mass stays; each moves by less than
    /// <see cref="LoopLimits.Sink"/>.</summary>
    private void Unsink(int i, int j)
    {
        Vec2 apart = _states[j].Position - _states[i].Position;
        double overlap = BallContact.Reach(_sizes[i].Radius, _sizes[j].Radius) - apart.Length;
        if (!(overlap > 0)) return;
        Vec2 shift = apart.Normalized() * (overlap / (_sizes[i].Mass + _sizes[j].Mass));
        _states[i] = _states[i] with { Position = _states[i].Position - _sizes[j].Mass * shift };
        _states[j] = _states[j] with { Position = _states[j].Position + _sizes[i].Mass * shift };
    }

    /// <summary>Collects the touching pairs that hang together with the two balls that meet.</summary>
    private void CollectCluster(int i, int j, double closing)
    {
        _cluster.Clear(_count);
        _cluster.Add(i, j, 0);
        // What is pressed together by less than a tenth of the contact's depth is touching as far as the contact can
        // tell.
        double bridged = Math.Min(LoopLimits.BridgedGap, 0.1 * closing * BallCluster.TypicalContactTime) + LoopLimits.FrozenGap;
        bool grown = true;
        while (grown)
        {
            grown = false;
            for (int a = 0; a < _count; a++)
            {
                if (_balls[a].Phase == MotionPhase.Pocketed) continue;
                for (int b = a + 1; b < _count; b++)
                {
                    if (_balls[b].Phase == MotionPhase.Pocketed || (a == i && b == j)) continue;
                    if (!_cluster.Has(a) && !_cluster.Has(b)) continue;
                    if (_cluster.HasPair(a, b)) continue;
                    double gap = _states[a].Position.DistanceTo(_states[b].Position) - BallContact.Reach(_sizes[a].Radius, _sizes[b].Radius);
                    if (gap > bridged) continue;
                    _cluster.Add(a, b, Math.Max(gap, 0));
                    grown = true;
                }
            }
        }

        // Pressed members must be followed to this instant like the two that meet.
        if (_cluster.Count == 1) return;
        for (int k = 0; k < _count; k++)
        {
            if (k != i && k != j && _cluster.Has(k)) _states[k] = StateNow(k);
        }
    }

    private void RecordMeeting(int i, int j, double hop)
    {
        Vec2 normal = (_statesBefore[j].Position - _statesBefore[i].Position).Normalized();
        bool firstStrikes = _statesBefore[i].Velocity.Dot(normal) >= -_statesBefore[j].Velocity.Dot(normal);
        (int striker, int struck) = firstStrikes ? (i, j) : (j, i);
        ref EventEntry entry = ref Record(ShotEventKind.BallsMeet, striker);
        entry.B = struck;
        entry.BeforeA = _statesBefore[striker];
        entry.AfterA = _states[striker];
        entry.BeforeB = _statesBefore[struck];
        entry.AfterB = _states[struck];
        entry.HopHeight = hop;
    }

    /// <summary>A ball goes on from a state that a collision gave it: free, or still in the rubber.</summary>
    private void Continue(int i)
    {
        if (_balls[i].Phase == MotionPhase.InRubber) ContinueInRubber(i, _states[i]);
        else SetFree(i, _states[i]);
    }

    private void Touch(int i, int piece)
    {
        BallState state = StateNow(i);
        ref BallTrack ball = ref _balls[i];
        RubberPiece rubber = _field.Outline.Pieces[piece];
        rubber.Gap(state.Position, ball.Reach, out Vec2 into);
        ref EventEntry entry = ref RecordTouch(i, rubber, state, into);
        if (Yields(rubber, state.Position, state.Velocity.Dot(into)))
        {
            EnterRubber(i, state, piece, _events.Count - 1);
            return;
        }

        PressedBall pressed = Press(state, ball.Radius);
        LocalMotion after = CushionImpulse.Rebound(pressed.Seen(into), _equipment.Cushion.Restitution, _rubber[i].Friction, out double lift);
        PressedBall rebound = PressedBall.Rate(Vec2.Zero, after, into);
        entry.AfterA = new BallState(state.Position, rebound.Velocity, (1.0 / ball.Radius) * rebound.Surface);
        entry.HopHeight = Hop.Height(lift, _equipment.Table.Gravity);
        _states[i] = entry.AfterA;
        Continue(i);
    }

    /// <summary>Whether a touch takes time. A jaw is faced with hard rubber on wood, which stiffens the end of the
    /// cushion too: there a touch takes next to none. A ball that merely leans on anything has no instant of
    /// impact.</summary>
    private bool Yields(in RubberPiece rubber, Vec2 position, double closing)
    {
        if (closing < LoopLimits.LeaningSpeed) return true;
        if (_equipment.Cushion.Law != CushionLaw.Yielding) return false;
        if (!rubber.HasJaws) return true;
        double along = (position - rubber.Start).Dot(rubber.Direction);
        return along >= rubber.SolidFrom + LoopLimits.StiffEnd && along <= rubber.SolidTo - LoopLimits.StiffEnd;
    }

    /// <summary>Opens the event of a touch: on the straight nose it is a cushion, elsewhere a jaw.</summary>
    private ref EventEntry RecordTouch(int i, in RubberPiece rubber, BallState state, Vec2 into)
    {
        double along = (state.Position - rubber.Start).Dot(rubber.Direction);
        bool straight = along >= rubber.SolidFrom && along <= rubber.SolidTo;
        ref EventEntry entry = ref Record(straight ? ShotEventKind.Cushion : ShotEventKind.Jaw, i);
        entry.BeforeA = entry.AfterA = state;
        entry.Cushion = rubber.Cushion;
        entry.HasCushion = true;
        if (!straight)
        {
            entry.Pocket = along < rubber.SolidFrom ? rubber.AtStart.Pocket : rubber.AtEnd.Pocket;
            entry.HasPocket = true;
        }

        return ref entry;
    }
}
