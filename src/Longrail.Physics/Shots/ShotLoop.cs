using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Roots;

namespace Longrail.Physics.Shots;

/// <summary>The loop of one shot: who touches whom next, and what follows. Reused from shot to shot; after the first it
/// allocates nothing.</summary>
/// <remarks>Partial by concern: here the loop itself; <c>ShotLoop.Resolve.cs</c> what a contact does;
/// <c>ShotLoop.Rubber.cs</c> balls pressed into a cushion.</remarks>
internal sealed partial class ShotLoop
{
    private readonly BallCluster _cluster = new();
    private BallTrack[] _balls = [];
    private double[] _pairs = [];
    private BallState[] _states = [];
    private BallState[] _statesBefore = [];
    private (double Radius, double Mass)[] _sizes = [];
    private RubberLaw[] _rubber = [];
    private bool[] _stale = [];
    private Buffer<EventEntry> _events = new(64);
    private Buffer<(int Ball, MotionSegment Segment)> _segments = new(128);
    private int _count;
    private double _now;
    private TableSpec? _table;
    private Playfield _field = null!;
    private EquipmentSpec _equipment = null!;

    /// <summary>The events so far.</summary>
    internal ReadOnlySpan<EventEntry> Events => _events.Items;

    /// <summary>The stretches of motion so far, in order of time.</summary>
    internal ReadOnlySpan<(int Ball, MotionSegment Segment)> Segments => _segments.Items;

    /// <summary>Time now, seconds.</summary>
    internal double Now => _now;

    /// <summary>Plays a shot to its end.</summary>
    internal StopReason Run(ShotSetup setup, ShotOptions options)
    {
        var toTheEnd = default(WatchToTheEnd);
        return Run(setup, options, ref toTheEnd);
    }

    /// <summary>Plays a shot until a watch has seen enough.</summary>
    internal StopReason Run<TWatch>(ShotSetup setup, ShotOptions options, ref TWatch watch)
        where TWatch : struct, IShotWatch
    {
        Begin(setup);
        int atOnePlace = 0;
        int seen = 0;
        while (true)
        {
            for (; seen < _events.Count; seen++)
            {
                if (!watch.GoesOn(new ShotMoment(in _events[seen]))) return Cut(_now, StopReason.Watched);
            }

            Occurrence next = Earliest();
            if (double.IsPositiveInfinity(next.Time)) return StopReason.AtRest;
            if (next.Time > options.MaxTime) return Cut(options.MaxTime, StopReason.TimeLimit);
            if (_events.Count >= options.MaxEvents) return Cut(_now, StopReason.EventLimit);
            atOnePlace = next.Time > _now + LoopLimits.NoProgress ? 0 : atOnePlace + 1;
            if (atOnePlace > LoopLimits.EventsAtOnePlace * _count) return Cut(_now, StopReason.Stalled);
            _now = next.Time;
            Resolve(next);
            ForecastStale();
        }
    }

    /// <summary>A ball's radius, metres.</summary>
    internal double RadiusOf(int ball) => _balls[ball].Radius;

    /// <summary>How a ball stands now.</summary>
    internal BallEnd End(int ball)
    {
        ref readonly BallTrack track = ref _balls[ball];
        return track.Phase == MotionPhase.Pocketed
            ? new BallEnd(MotionPhase.Pocketed, track.Start, track.Pocket)
            : new BallEnd(track.Phase, track.StateAt(_now), null);
    }

    private void Begin(ShotSetup setup)
    {
        _equipment = setup.Equipment;
        if (!ReferenceEquals(_table, _equipment.Table))
        {
            _field = new Playfield(_equipment.Table);
            _table = _equipment.Table;
        }

        SetupCheck.Require(setup, _field.Outline);
        _count = setup.Balls.Count;
        if (_balls.Length < _count)
        {
            _balls = new BallTrack[_count];
            _pairs = new double[_count * _count];
            _states = new BallState[_count];
            _statesBefore = new BallState[_count];
            _sizes = new (double, double)[_count];
            _rubber = new RubberLaw[_count];
            _stale = new bool[_count];
        }

        _now = 0;
        _events.Count = 0;
        _segments.Count = 0;
        if (setup.Stroke is { } stroke)
        {
            ref EventEntry entry = ref Record(ShotEventKind.Tip, stroke.Ball);
            entry.AfterA = setup.Balls[stroke.Ball].Start;
            entry.BeforeA = BallState.AtRest(entry.AfterA.Position);
            entry.HopHeight = Hop.FromStroke(stroke.Stroke, _equipment.Table.Gravity);
        }

        for (int i = 0; i < _count; i++)
        {
            ShotBall ball = setup.Balls[i];
            ref BallTrack track = ref _balls[i];
            track = default;
            track.Radius = ball.Radius;
            track.Mass = ball.Mass;
            track.Reach = TableOutline.Reach(ball.Radius, _equipment.Cushion.NoseHeight);
            track.First = track.Second = RubberSlot.Free;
            _sizes[i] = (ball.Radius, ball.Mass);
            _rubber[i] = i > 0 && _sizes[i - 1].Radius == ball.Radius
                ? _rubber[i - 1]
                : new RubberLaw(ball.Radius, _equipment.Cushion, _equipment.Cloth, _equipment.Table.Gravity);
            SetFree(i, ball.Start);
        }

        ForecastStale();
    }

    /// <summary>Ends the run early: states are brought to the time, contacts under way are closed as they
    /// stand.</summary>
    private StopReason Cut(double time, StopReason reason)
    {
        _now = time;
        for (int i = 0; i < _count; i++)
        {
            if (_balls[i].Phase != MotionPhase.InRubber) continue;
            InterruptRubber(i);
            CloseTouch(i, ref _balls[i].First);
            CloseTouch(i, ref _balls[i].Second);
        }

        return reason;
    }

    private readonly record struct Occurrence(double Time, ForecastKind Kind, int A, int B, int Index);

    /// <summary>The next thing to happen; ties break by kind, then by the lower and the higher ball.</summary>
    private Occurrence Earliest()
    {
        var best = new Occurrence(double.PositiveInfinity, ForecastKind.PhaseEnds, -1, -1, -1);
        for (int i = 0; i < _count; i++)
        {
            Forecast own = _balls[i].Next;
            if (own.Time < best.Time || (own.Time == best.Time && own.Kind < best.Kind && !double.IsPositiveInfinity(own.Time)))
                best = new Occurrence(own.Time, own.Kind, i, -1, own.Index);
            int row = i * _count;
            for (int j = i + 1; j < _count; j++)
            {
                double time = _pairs[row + j];
                if (time < best.Time || (time == best.Time && ForecastKind.BallsMeet < best.Kind && !double.IsPositiveInfinity(time)))
                    best = new Occurrence(time, ForecastKind.BallsMeet, i, j, -1);
            }
        }

        return best;
    }

    private void ForecastStale()
    {
        for (int i = 0; i < _count; i++)
        {
            if (_stale[i]) ForecastOwn(i);
        }

        for (int i = 0; i < _count; i++)
        {
            for (int j = i + 1; j < _count; j++)
            {
                if (_stale[i] || _stale[j]) _pairs[i * _count + j] = ForecastPair(i, j);
            }
        }

        Array.Clear(_stale, 0, _count);
    }

    private void ForecastOwn(int i)
    {
        ref BallTrack ball = ref _balls[i];
        ForecastKind end = ball.Phase == MotionPhase.InRubber ? ForecastKind.RubberStretchEnds : ForecastKind.PhaseEnds;
        ball.Next = new Forecast(ball.Until, end, -1);
        if (!ball.Travels) return;
        double limit = ball.Until - _now;
        Forecast met = _field.Next(
            ball.PositionAt(_now), ball.VelocityAt(_now), ball.Acceleration, ball.Reach, limit, ball.First.Piece, ball.Second.Piece);
        // A ball in the rubber is beside the pocket, not over it, however deep a soft cushion has let it in.
        if (met.Kind == ForecastKind.Drop && ball.Phase == MotionPhase.InRubber) return;
        if (met.Time <= limit) ball.Next = met with { Time = Math.Min(_now + met.Time, ball.Until) };
    }

    private double ForecastPair(int i, int j)
    {
        ref readonly BallTrack a = ref _balls[i];
        ref readonly BallTrack b = ref _balls[j];
        if (a.Phase == MotionPhase.Pocketed || b.Phase == MotionPhase.Pocketed) return double.PositiveInfinity;
        if (!a.Travels && !b.Travels) return double.PositiveInfinity;
        double limit = Math.Min(a.Travels ? a.Until : double.PositiveInfinity, b.Travels ? b.Until : double.PositiveInfinity) - _now;
        Vec2 p = a.PositionAt(_now) - b.PositionAt(_now);
        Vec2 v = a.VelocityAt(_now) - b.VelocityAt(_now);
        Vec2 acceleration = a.Acceleration - b.Acceleration;
        double reach = BallContact.Reach(a.Radius, b.Radius);
        double farthest = reach + limit * (v.Length + 0.5 * limit * acceleration.Length);
        double distanceSquared = p.LengthSquared;
        if (distanceSquared > farthest * farthest) return double.PositiveInfinity;
        double time = FirstCrossing.Quartic(
            distanceSquared - reach * reach, 2 * p.Dot(v), v.LengthSquared + p.Dot(acceleration), v.Dot(acceleration),
            0.25 * acceleration.LengthSquared, limit,
            2 * reach * LoopLimits.SlowestClosing, 2 * reach * LoopLimits.Sink);
        return _now + time;
    }

    /// <summary>Puts a ball on the cloth in a state, free of any cushion, and starts its next stretch.</summary>
    private void SetFree(int i, BallState state)
    {
        ref BallTrack ball = ref _balls[i];
        FreeMotion motion = FreeMotion.From(state, ball.Radius, _equipment.Cloth, _equipment.Table.Gravity);
        ball.Phase = motion.Phase;
        ball.Since = _now;
        ball.Until = _now + motion.Duration;
        ball.Start = motion.Start;
        ball.Acceleration = motion.Acceleration;
        ball.SpinRate = motion.SpinRate;
        ball.VerticalRate = motion.VerticalSpinRate;
        ball.First = ball.Second = RubberSlot.Free;
        ball.Lift = 0;
        StretchBegins(i);
    }

    /// <summary>Notes the start of a stretch for the trace and for the forecasts.</summary>
    private void StretchBegins(int i)
    {
        ref (int Ball, MotionSegment Segment) entry = ref _segments.Add();
        entry = (i, _balls[i].Segment);
        _stale[i] = true;
    }

    private ref EventEntry Record(ShotEventKind kind, int ball)
    {
        ref EventEntry entry = ref _events.Add();
        entry = default;
        entry.Time = _now;
        entry.Kind = kind;
        entry.A = ball;
        entry.B = -1;
        return ref entry;
    }
}
