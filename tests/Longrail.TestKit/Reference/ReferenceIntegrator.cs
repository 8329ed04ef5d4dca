using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;

namespace Longrail.TestKit.Reference;

/// <summary>Plays a whole shot on a table without pockets in tiny steps: the slow, plain second route against which
/// the engine is held.</summary>
/// <remarks>
/// <para>Steps all balls by a short time, looks whether something touched, goes back and halves the step until it has
/// the instant, resolves the contact, goes on. Rubber is a spring with loss along the tilted normal, integrated by
/// leapfrog with the friction of <see cref="NoseAndBed"/>; under the impulse law the rebound is
/// <see cref="ReferenceCushionImpulse"/>.</para>
/// <para>Not for: pockets, a ball in two cushions at once, many balls touching at the same instant.</para>
/// </remarks>
public sealed class ReferenceIntegrator
{
    private const int ImpulseSteps = 4000;

    private readonly EquipmentSpec _equipment;
    private readonly ReferenceSteps _steps;
    private readonly ReferenceRail[] _rails;
    private readonly NoseAndBed[] _contacts;
    private readonly double[] _stiffness;
    private readonly double[] _reach;
    private readonly List<ReferenceEvent> _events = [];
    private readonly ReferenceBall[] _balls;
    private double _time;

    private ReferenceIntegrator(ShotSetup setup, ReferenceSteps steps)
    {
        _equipment = setup.Equipment;
        _steps = steps;
        _rails = ReferenceRail.Of(_equipment.Table);
        _balls = [.. setup.Balls.Select(ReferenceBall.From)];
        CushionSpec cushion = _equipment.Cushion;
        _contacts = [.. _balls.Select(b =>
            new NoseAndBed(b.Radius, cushion.NoseHeight, cushion.Friction, _equipment.Cloth.SlidingFriction))];
        _reach = [.. _balls.Select((b, i) => b.Radius * _contacts[i].Cos)];
        // Straight in without friction, m Y'' = -k cos^2 Y inwards and e^2 of it outwards: pi/(2w) (1 + 1/e) =
        // contact time.
        _stiffness = [.. _contacts.Select(c =>
            Math.Pow(Math.PI / 2 * (1 + 1 / cushion.Restitution) / (cushion.ContactTime * c.Cos), 2))];
    }

    /// <summary>Plays a shot.</summary>
    /// <param name="setup">The shot; its table must have no pockets.</param>
    /// <param name="maxTime">When to stop at the latest, seconds.</param>
    /// <param name="steps">Step sizes; null for the usual ones.</param>
    public static ReferenceRun Run(ShotSetup setup, double maxTime, ReferenceSteps? steps = null)
    {
        if (setup.Equipment.Table.Corner is not null || setup.Equipment.Table.Side is not null)
            throw new ArgumentException("The reference integrator knows no pockets.", nameof(setup));
        return new ReferenceIntegrator(setup, steps ?? new ReferenceSteps()).Play(maxTime);
    }

    private ReferenceRun Play(double maxTime)
    {
        List<double> times = [];
        List<IReadOnlyList<BallState>> samples = [];
        List<IReadOnlyList<Rotation>> orientations = [];
        double nextSample = 0;
        while (true)
        {
            if (_time >= nextSample - 1e-15)
            {
                times.Add(_time);
                samples.Add([.. _balls.Select(b => b.State)]);
                orientations.Add([.. _balls.Select(b => b.Orientation)]);
                nextSample = times.Count * _steps.Sample;
            }

            if (_time >= maxTime || !_balls.Any(b => b.Moves)) break;
            double step = _balls.Any(b => b.Rail >= 0) ? _steps.Rubber : _steps.Free;
            Step(Math.Min(step, Math.Min(nextSample, maxTime) - _time));
        }

        return new ReferenceRun(_time, _events, times, samples, orientations, [.. _balls.Select(b => b.State)]);
    }

    /// <summary>One step, cut short at the first touch in it.</summary>
    private void Step(double step)
    {
        ReferenceBall[] start = [.. _balls.Select(b => b.Copy())];
        Advance(step);
        List<Action> found = [];
        Look(start, found);
        if (found.Count > 0)
        {
            // Halve until the interval holds the instant of the first touch; end just past it.
            double low = 0, high = step;
            for (int i = 0; i < 60 && high - low > 1e-16; i++)
            {
                double middle = 0.5 * (low + high);
                Reset(start);
                Advance(middle);
                found.Clear();
                Look(start, found);
                if (found.Count > 0) high = middle;
                else low = middle;
            }

            Reset(start);
            Advance(high);
            found.Clear();
            Look(start, found);
            step = high;
        }

        _time += step;
        foreach (Action resolve in found) resolve();
    }

    private void Reset(ReferenceBall[] start)
    {
        for (int i = 0; i < _balls.Length; i++) _balls[i].Set(start[i]);
    }

    private void Advance(double step)
    {
        for (int i = 0; i < _balls.Length; i++)
        {
            ReferenceBall ball = _balls[i];
            if (ball.Rail >= 0) AdvanceInRubber(i, step);
            else if (ball.Moves) ReferenceCloth.Advance(ball, _equipment.Cloth, _equipment.Table.Gravity, step);
        }
    }

    private void AdvanceInRubber(int index, double step)
    {
        ReferenceBall ball = _balls[index];
        ReferenceRail rail = _rails[ball.Rail];
        NoseAndBed contact = _contacts[index];
        double loss = _equipment.Cushion.Restitution * _equipment.Cushion.Restitution;

        // Leapfrog: half a step of way, the push at that depth, half a step of way.
        Drift(ball, 0.5 * step);
        double deep = rail.Depth(ball.X, ball.Y, _reach[index]);
        bool sinking = rail.Closing(ball) > 0 && deep >= ball.Deepest;
        double force = Math.Max(0, deep) * contact.Cos * _stiffness[index] * (sinking ? 1 : loss);
        RailMotion motion = rail.In(ball);
        contact.Push(ref motion, force * step, _equipment.Table.Gravity * step);
        rail.Out(motion, ball);
        Drift(ball, 0.5 * step);
        ball.Deepest = Math.Max(rail.Depth(ball.X, ball.Y, _reach[index]), ball.Deepest);
    }

    private static void Drift(ReferenceBall ball, double step)
    {
        ball.X += ball.Vx * step;
        ball.Y += ball.Vy * step;
        ball.Turn(ball.Wx, ball.Wy, ball.Wz, step);
    }

    /// <summary>Lists what touched, or left the rubber, since the start of the step.</summary>
    private void Look(ReferenceBall[] start, List<Action> found)
    {
        for (int i = 0; i < _balls.Length; i++)
        {
            int index = i;
            ReferenceBall ball = _balls[i];
            for (int r = 0; r < _rails.Length; r++)
            {
                int rail = r;
                double deep = _rails[r].Depth(ball.X, ball.Y, _reach[i]);
                double closing = _rails[r].Closing(ball);
                if (ball.Rail == r)
                {
                    // The spring's force falls at the instant at which the ball turns back: no step may straddle it.
                    if (deep <= 0 && closing <= 0) found.Add(() => Leave(index));
                    else if (closing <= 0 && _rails[r].Closing(start[i]) > 0) found.Add(() => { });
                }
                else if (deep >= 0 && closing > 0)
                {
                    found.Add(() => Touch(index, rail));
                }
            }

            for (int j = i + 1; j < _balls.Length; j++)
            {
                int other = j;
                if (Meet(ball, _balls[j])) found.Add(() => Collide(index, other));
            }
        }
    }

    private static bool Meet(ReferenceBall a, ReferenceBall b)
    {
        double dx = b.X - a.X, dy = b.Y - a.Y;
        bool near = dx * dx + dy * dy <= 4 * a.Radius * b.Radius;
        return near && (a.Vx - b.Vx) * dx + (a.Vy - b.Vy) * dy > 0;
    }

    private void Collide(int i, int j)
    {
        if (!Meet(_balls[i], _balls[j])) return;
        BallState before = _balls[i].State;
        ReferenceBallContact.Collide(_balls[i], _balls[j], _equipment.BallSet.Restitution, _equipment.BallSet.Friction);
        _events.Add(new ReferenceEvent(_time, 0, i, j, null, before, _balls[i].State));
    }

    private void Touch(int index, int rail)
    {
        ReferenceBall ball = _balls[index];
        if (ball.Rail >= 0) throw new NotSupportedException("A ball in two cushions at once.");
        CushionSpec cushion = _equipment.Cushion;
        if (cushion.Law == CushionLaw.Yielding)
        {
            (ball.Rail, ball.Deepest, ball.Touch, ball.TouchTime) = (rail, 0, ball.State, _time);
            return;
        }

        BallState before = ball.State;
        RailMotion motion = ReferenceCushionImpulse.Rebound(
            _rails[rail].In(ball), ball.Radius, cushion.NoseHeight, cushion.Restitution, cushion.Friction,
            _equipment.Cloth.SlidingFriction, ImpulseSteps);
        _rails[rail].Out(motion, ball);
        _events.Add(new ReferenceEvent(_time, 0, index, null, _rails[rail].Name, before, ball.State));
    }

    private void Leave(int index)
    {
        ReferenceBall ball = _balls[index];
        CushionName name = _rails[ball.Rail].Name;
        ball.Rail = -1;
        _events.Add(
            new ReferenceEvent(ball.TouchTime, _time - ball.TouchTime, index, null, name, ball.Touch, ball.State));
    }
}
