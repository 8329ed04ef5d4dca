using MathNet.Numerics.Distributions;

namespace Longrail.Coaching.Statistics;

/// <summary>Confidence levels: their usual value, their legal range, and the deviates that go with them.</summary>
internal static class Levels
{
    /// <summary>The confidence of an interval where none is asked for.</summary>
    internal const double Usual = 0.95;

    /// <summary>The level, if it is one.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not between 0 and 1.</exception>
    internal static double Require(double confidence) => confidence is > 0 and < 1
        ? confidence
        : throw new ArgumentOutOfRangeException(
            nameof(confidence), confidence, "A confidence lies between 0 and 1, as 0.95.");

    /// <summary>The normal deviate that leaves half of the rest on each side.</summary>
    internal static double Deviate(double confidence) => Normal.InvCDF(0, 1, 0.5 + Require(confidence) / 2);

    /// <summary>The same of Student's law.</summary>
    internal static double Deviate(double confidence, double freedom) =>
        StudentT.InvCDF(0, 1, freedom, 0.5 + Require(confidence) / 2);

    /// <summary>Chance that Student's t lies farther from 0 than this, on either side.</summary>
    internal static double TwoSided(double t, double freedom) => 2 * StudentT.CDF(0, 1, freedom, -Math.Abs(t));

    /// <summary>Chance that Fisher's F is larger than this.</summary>
    internal static double Above(double f, double d1, double d2) =>
        // The reflected beta integral keeps its digits where 1 - CDF would lose them.
        f <= 0 ? 1 : MathNet.Numerics.SpecialFunctions.BetaRegularized(d2 / 2, d1 / 2, d2 / (d2 + d1 * f));
}
