namespace Longrail.TestKit.Reference;

/// <summary>One small push of a cushion's nose on a ball that stays on the bed, with Coulomb friction at nose and
/// bed.</summary>
/// <remarks>
/// <para>Newton and Euler for a solid sphere: the nose touches at R(0, cos t, sin t), the bed at R(0, 0, -1); the
/// nose pushes along -(0, cos t, sin t); the bed bears weight + push sin t less the vertical part of the nose's
/// friction, and never pulls. The vertical velocity is held at zero.</para>
/// <para>Both friction impulses of a step are found together, by projecting on the two friction discs until nothing
/// changes (Moreau's time stepping), so slipping, sticking and the passage between them need no cases. Well away from
/// sticking the slip is taken as the mean over the step, which makes the step second order; near sticking as the slip
/// at its end.</para>
/// <para>Written for checking only: slow, plain, and sharing no code with the engine.</para>
/// </remarks>
public sealed class NoseAndBed
{
    private const int Parts = 64;

    private readonly double _radius;
    private readonly double _sin;
    private readonly double _cos;
    private readonly double _noseFriction;
    private readonly double _bedFriction;

    // The last step's friction, as a start for the next.
    private double _f1, _f2, _g1, _g2;

    /// <summary>For a ball and a nose at a height above the bed.</summary>
    public NoseAndBed(double radius, double noseHeight, double noseFriction, double bedFriction)
    {
        _radius = radius;
        _sin = (noseHeight - radius) / radius;
        _cos = Math.Sqrt(1 - _sin * _sin);
        _noseFriction = noseFriction;
        _bedFriction = bedFriction;
    }

    /// <summary>Cosine of the tilt of the contact normal.</summary>
    public double Cos => _cos;

    /// <summary>Applies one push. Both impulses are per unit of the ball's mass, m/s.</summary>
    public void Push(ref RailMotion ball, double push, double weight)
    {
        // A slip that is about to die or to turn round is followed in smaller pushes: there the friction jumps.
        (double nose, double bed) = Slips(ball);
        double small = 20 * (push + weight), still = 1e-9 * (push + weight);
        bool dying = (nose < small && nose > still) || (bed < small && bed > still);
        int parts = dying ? Parts : 1;
        for (int i = 0; i < parts; i++) PushOnce(ref ball, push / parts, weight / parts);
    }

    private (double Nose, double Bed) Slips(in RailMotion ball)
    {
        double n1 = ball.Vx + _radius * (_sin * ball.Wy - _cos * ball.Wz), n2 = -_sin * ball.Vy + _radius * ball.Wx;
        double b1 = ball.Vx - _radius * ball.Wy, b2 = ball.Vy + _radius * ball.Wx;
        return (Math.Sqrt(n1 * n1 + n2 * n2), Math.Sqrt(b1 * b1 + b2 * b2));
    }

    private void PushOnce(ref RailMotion ball, double push, double weight)
    {
        double vx = ball.Vx, vy = ball.Vy;
        double px = _radius * ball.Wx, py = _radius * ball.Wy, pz = _radius * ball.Wz;

        double nose1 = vx + _sin * py - _cos * pz, nose2 = -_sin * vy + px;
        double bed1 = vx - py, bed2 = vy + px;
        double smallSlip = 20 * (push + weight);
        double keepNose = Math.Sqrt(nose1 * nose1 + nose2 * nose2) > smallSlip ? 1 : 0;
        double keepBed = Math.Sqrt(bed1 * bed1 + bed2 * bed2) > smallSlip ? 1 : 0;

        double f1 = _f1, f2 = _f2, g1 = _g1, g2 = _g2;
        double enough = 1e-12 * (push + weight);
        for (int round = 0; round < 2000; round++)
        {
            // Slip at the nose at the end of the step, plus the slip at its start where the mean is wanted.
            double s1 =
                vx + f1 + g1 + _sin * (py + 2.5 * (_sin * f1 - g1)) - _cos * (pz - 2.5 * _cos * f1) + keepNose * nose1;
            double s2 = -_sin * (vy - _cos * push - _sin * f2 + g2) + px + 2.5 * (f2 + g2) + keepNose * nose2;
            (double newF1, double newF2) = IntoDisc(f1 - s1 / 3.5, f2 - s2 / 3.5, _noseFriction * push);
            double change = Math.Abs(newF1 - f1) + Math.Abs(newF2 - f2);
            (f1, f2) = (newF1, newF2);

            double load = Math.Max(0, weight + _sin * push - _cos * f2);
            double c1 = vx + f1 + g1 - (py + 2.5 * (_sin * f1 - g1)) + keepBed * bed1;
            double c2 = vy - _cos * push - _sin * f2 + g2 + px + 2.5 * (f2 + g2) + keepBed * bed2;
            (double newG1, double newG2) = IntoDisc(g1 - c1 / 3.5, g2 - c2 / 3.5, _bedFriction * load);
            change += Math.Abs(newG1 - g1) + Math.Abs(newG2 - g2);
            (g1, g2) = (newG1, newG2);
            if (change <= enough) break;
        }

        ball.Vx = vx + f1 + g1;
        ball.Vy = vy - _cos * push - _sin * f2 + g2;
        ball.Wx = (px + 2.5 * (f2 + g2)) / _radius;
        ball.Wy = (py + 2.5 * (_sin * f1 - g1)) / _radius;
        ball.Wz = (pz - 2.5 * _cos * f1) / _radius;
        (_f1, _f2, _g1, _g2) = (f1, f2, g1, g2);
    }

    private static (double A, double B) IntoDisc(double a, double b, double radius)
    {
        double length = Math.Sqrt(a * a + b * b);
        return length <= radius ? (a, b) : (a * radius / length, b * radius / length);
    }
}
