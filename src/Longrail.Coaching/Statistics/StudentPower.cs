using MathNet.Numerics.Distributions;
using MathNet.Numerics.Integration;

namespace Longrail.Coaching.Statistics;

/// <summary>How often Student's test sees a shift that is there: the noncentral t law.</summary>
/// <remarks>Our own, since MathNet.Numerics 5.0.0 has no noncentral t: t = (z + shift) / u with u^2 a chi-squared over
/// its freedom, averaged over u by a Gauss rule.</remarks>
internal static class StudentPower
{
    private const int Nodes = 128;
    private const double Negligible = 1e-13;

    /// <summary>Chance that the two-sided test rejects.</summary>
    /// <param name="shift">The true difference over its true standard error.</param>
    /// <param name="freedom">Degrees of freedom, positive.</param>
    /// <param name="level">The test's false-alarm rate.</param>
    internal static double Of(double shift, double freedom, double level)
    {
        double limit = StudentT.InvCDF(0, 1, freedom, 1 - level / 2);
        double low = Math.Sqrt(ChiSquared.InvCDF(freedom, Negligible) / freedom);
        double high = Math.Sqrt(ChiSquared.InvCDF(freedom, 1 - Negligible) / freedom);
        return GaussLegendreRule.Integrate(
            u =>
            {
                double density = 2 * freedom * u * ChiSquared.PDF(freedom, freedom * u * u);
                return density * (Normal.CDF(0, 1, shift - limit * u) + Normal.CDF(0, 1, -shift - limit * u));
            },
            low, high, Nodes);
    }
}
