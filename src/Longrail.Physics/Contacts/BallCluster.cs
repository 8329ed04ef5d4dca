using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;

namespace Longrail.Physics.Contacts;

/// <summary>Several balls that touch each other, struck at once: resolved on the time scale of the ball-ball
/// contact.</summary>
/// <remarks>
/// A ball-ball contact lasts about 0.25 ms, thirty times shorter than a cushion contact, so the cushions and the cloth
/// stand still meanwhile and so do the balls' places; what is followed is how far each pair is pressed together. Each
/// pair is a Hertz spring, F = k x^(3/2), that gives back e^2 of the work it took, with Coulomb friction up to
/// sticking. The stiffness is the same for all pairs, and then the outcome does not depend on it (scaling time scales
/// it away), so no elastic constant has to be known. For a single pair this is <see cref="BallContact"/> to the
/// accuracy of the steps.
/// </remarks>
internal sealed class BallCluster
{
    /// <summary>Steps over one contact. Second order: at 160 the energy of a lossless collision is right to about
    /// 1e-5.</summary>
    private const int StepsPerContact = 160;

    /// <summary>Longest time followed, in contact times: a wave through a full rack takes about ten.</summary>
    private const int ContactTimesLimit = 60;

    private Touch[] _touches = new Touch[64];
    private bool[] _members = [];
    private int _count;

    private struct Touch
    {
        internal int A, B;
        internal Vec2 Normal;
        internal double Pressed, Deepest, Friction, Reduced, Impulse, Across, Up;
        internal bool Returning;
    }

    /// <summary>Number of touching pairs collected.</summary>
    internal int Count => _count;

    /// <summary>Starts a new cluster among a number of balls.</summary>
    internal void Clear(int balls)
    {
        _count = 0;
        if (_members.Length < balls) _members = new bool[balls];
        Array.Clear(_members);
    }

    /// <summary>Whether a ball belongs to the cluster.</summary>
    internal bool Has(int ball) => _members[ball];

    /// <summary>Whether a pair has been added already.</summary>
    internal bool HasPair(int a, int b)
    {
        foreach (ref Touch t in _touches.AsSpan(0, _count))
        {
            if ((t.A == a && t.B == b) || (t.A == b && t.B == a)) return true;
        }

        return false;
    }

    /// <summary>Whether the two balls of a pair were pressed together in the course of the contact.</summary>
    internal bool Pushed(int index) => _touches[index].Friction >= 0;

    /// <summary>Adds a touching pair.</summary>
    /// <param name="a">Index of one ball.</param>
    /// <param name="b">Index of the other.</param>
    /// <param name="gap">Clear distance between them, metres (almost zero).</param>
    internal void Add(int a, int b, double gap)
    {
        if (_count == _touches.Length) Array.Resize(ref _touches, 2 * _count);
        _touches[_count++] = new Touch { A = a, B = b, Pressed = -gap };
        _members[a] = _members[b] = true;
    }

    internal void Pair(int index, out int a, out int b)
    {
        a = _touches[index].A;
        b = _touches[index].B;
    }

    /// <summary>Lets the contacts run their course.</summary>
    /// <param name="balls">States of all balls; those of the cluster are changed.</param>
    /// <param name="sizes">Radius and mass of all balls.</param>
    /// <param name="restitution">Of a pair.</param>
    /// <param name="friction">Of a pair.</param>
    internal void Resolve(Span<BallState> balls, ReadOnlySpan<(double Radius, double Mass)> sizes, double restitution, BallFriction friction)
    {
        Span<Touch> touches = _touches.AsSpan(0, _count);
        double fastest = 0;
        double lightest = double.PositiveInfinity;
        foreach (ref Touch t in touches)
        {
            t.Normal = (balls[t.B].Position - balls[t.A].Position).Normalized();
            double ma = sizes[t.A].Mass;
            double mb = sizes[t.B].Mass;
            t.Reduced = ma * mb / (ma + mb);
            lightest = Math.Min(lightest, t.Reduced);
            fastest = Math.Max(fastest, Math.Abs(Closing(balls, t)));
            t.Friction = -1;
        }

        if (!(fastest > 0)) return;
        double energyBefore = Energy(balls, sizes);

        // Any stiffness will do. With unit time for the contact at the fastest closing speed (Hertz: T = 2.94 x/v and
        // x = (5 m v^2/(4 k))^(2/5)), lengths come out in metres and the small gaps keep their true proportion to 0.25
        // ms.
        double contactTime = TypicalContactTime;
        double deepest = fastest * contactTime / 2.94;
        double stiffness = 1.25 * lightest * fastest * fastest / (deepest * deepest * Math.Sqrt(deepest));
        double step = contactTime / StepsPerContact;
        int limit = StepsPerContact * ContactTimesLimit;
        for (int i = 0; i < limit; i++)
        {
            bool active = false;
            foreach (ref Touch t in touches) t.Pressed += 0.5 * step * Closing(balls, t);
            // All pushes of a step are taken from the velocities at its start, so that no pair goes first and a
            // symmetric rack stays so.
            foreach (ref Touch t in touches) Push(balls, sizes, ref t, stiffness, restitution, friction, step);
            foreach (ref Touch t in touches) Apply(balls, sizes, t);
            foreach (ref Touch t in touches)
            {
                double closing = Closing(balls, t);
                t.Pressed += 0.5 * step * closing;
                active |= t.Pressed > 0 || (closing > 0 && t.Pressed + closing * contactTime > 0);
            }

            if (!active) break;
        }

        KeepEnergy(balls, sizes, energyBefore);
    }

    /// <summary>Contact time of two balls, about 0.2 to 0.3 ms (Hertz; from memory). It only sets which small gaps
    /// count.</summary>
    internal const double TypicalContactTime = 0.25e-3;

    private static double Closing(Span<BallState> balls, in Touch t) =>
        (balls[t.A].Velocity - balls[t.B].Velocity).Dot(t.Normal);

    /// <summary>Works out what a pair gives each other in a step.</summary>
    private static void Push(
        ReadOnlySpan<BallState> balls, ReadOnlySpan<(double Radius, double Mass)> sizes, ref Touch t, double stiffness, double restitution,
        BallFriction friction, double step)
    {
        t.Impulse = t.Across = t.Up = 0;
        if (t.Pressed <= 0)
        {
            t.Returning = false;
            t.Deepest = 0;
            return;
        }

        if (t.Pressed >= t.Deepest)
        {
            t.Deepest = t.Pressed;
            t.Returning = false;
        }
        else
        {
            t.Returning = true;
        }

        double force = stiffness * t.Pressed * Math.Sqrt(t.Pressed);
        if (t.Returning) force *= restitution * restitution;
        t.Impulse = force * step;
        BallContact.Slip(
            balls[t.A], sizes[t.A].Radius, balls[t.B], sizes[t.B].Radius, t.Normal, out double slipAcross, out double slipUp);
        double slip = Math.Sqrt(slipAcross * slipAcross + slipUp * slipUp);
        // As for a pair at an instant, the coefficient is that of the slip with which the two surfaces met.
        if (t.Friction < 0) t.Friction = friction.At(slip);
        if (!(slip > 0)) return;
        double along = Math.Min(t.Friction * t.Impulse, slip * t.Reduced / 3.5) / slip;
        t.Across = -along * slipAcross;
        t.Up = -along * slipUp;
    }

    private static void Apply(Span<BallState> balls, ReadOnlySpan<(double Radius, double Mass)> sizes, in Touch t)
    {
        if (t.Impulse == 0) return;
        ref BallState a = ref balls[t.A];
        ref BallState b = ref balls[t.B];
        (double radiusA, double massA) = sizes[t.A];
        (double radiusB, double massB) = sizes[t.B];
        Vec2 left = t.Normal.Left;
        BallContact.Apply(ref a, radiusA, massA, t.Normal, left, t.Across, t.Up, 1.0);
        BallContact.Apply(ref b, radiusB, massB, t.Normal, left, t.Across, t.Up, -1.0);
        a = a with { Velocity = a.Velocity - (t.Impulse / massA) * t.Normal };
        b = b with { Velocity = b.Velocity + (t.Impulse / massB) * t.Normal };
    }

    /// <summary>Takes out the little energy that finite steps may have added, without touching the momentum.</summary>
    private void KeepEnergy(Span<BallState> balls, ReadOnlySpan<(double Radius, double Mass)> sizes, double before)
    {
        double after = Energy(balls, sizes);
        if (after <= before) return;
        Vec2 momentum = Vec2.Zero;
        double mass = 0;
        double spinning = 0;
        for (int i = 0; i < balls.Length; i++)
        {
            if (!_members[i]) continue;
            momentum += sizes[i].Mass * balls[i].Velocity;
            mass += sizes[i].Mass;
            spinning += 0.2 * sizes[i].Mass * sizes[i].Radius * sizes[i].Radius * balls[i].Spin.LengthSquared;
        }

        Vec2 mean = momentum / mass;
        double common = 0.5 * mass * mean.LengthSquared;
        double relative = after - spinning - common;
        double allowed = before - spinning - common;
        if (!(relative > 0) || !(allowed > 0)) return;
        double scale = Math.Sqrt(allowed / relative);
        for (int i = 0; i < balls.Length; i++)
        {
            if (_members[i]) balls[i] = balls[i] with { Velocity = mean + scale * (balls[i].Velocity - mean) };
        }
    }

    private double Energy(Span<BallState> balls, ReadOnlySpan<(double Radius, double Mass)> sizes)
    {
        double energy = 0;
        for (int i = 0; i < balls.Length; i++)
        {
            if (!_members[i]) continue;
            (double radius, double mass) = sizes[i];
            energy += mass * (0.5 * balls[i].Velocity.LengthSquared + 0.2 * radius * radius * balls[i].Spin.LengthSquared);
        }

        return energy;
    }
}
