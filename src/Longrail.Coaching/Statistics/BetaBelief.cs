using MathNet.Numerics.Distributions;
using MathNet.Numerics.Integration;

namespace Longrail.Coaching.Statistics;

/// <summary>What is believed of a chance: a beta law, which a count of trials sharpens.</summary>
/// <param name="A">First shape, positive: successes so far plus those that the belief began with.</param>
/// <param name="B">Second shape, positive: the same of failures.</param>
public readonly record struct BetaBelief(double A, double B)
{
    private const int Nodes = 128;

    /// <summary>Every chance as likely as any other.</summary>
    public static BetaBelief Uniform { get; } = new(1, 1);

    /// <summary>The expected chance.</summary>
    public double Mean => A / (A + B);

    /// <summary>The belief after more trials.</summary>
    /// <param name="made">How many came off.</param>
    /// <param name="trials">How many there were.</param>
    /// <exception cref="ArgumentOutOfRangeException">A count is out of range.</exception>
    public BetaBelief After(int made, int trials)
    {
        Proportion.RequireCounts(made, trials);
        return new BetaBelief(A + made, B + trials - made);
    }

    /// <summary>The middle part of the belief.</summary>
    /// <param name="confidence">How much of it, between 0 and 1.</param>
    public Interval Within(double confidence = Levels.Usual)
    {
        double tail = (1 - Levels.Require(confidence)) / 2;
        return new Interval(Beta.InvCDF(A, B, tail), Beta.InvCDF(A, B, 1 - tail));
    }

    /// <summary>How likely this chance is larger than another, the two being independent.</summary>
    public double ChanceAbove(BetaBelief other)
    {
        (double a, double b) = (A, B);
        return GaussLegendreRule.Integrate(x => Beta.PDF(a, b, x) * Beta.CDF(other.A, other.B, x), 0, 1, Nodes);
    }
}
