using MathNet.Numerics.Distributions;

namespace Longrail.Coaching.Statistics;

/// <summary>A sample reduced to what tests of means need.</summary>
/// <param name="Count">How many values; positive.</param>
/// <param name="Mean">Their mean.</param>
/// <param name="Deviation">Their standard deviation, with count - 1 below; 0 for one value.</param>
public readonly record struct SampleSummary(int Count, double Mean, double Deviation)
{
    /// <summary>Deviation squared.</summary>
    public double Variance => Deviation * Deviation;

    /// <summary>Sum of the squared distances from the mean.</summary>
    public double SumOfSquares => (Count - 1) * Variance;

    /// <summary>Standard error of the mean.</summary>
    public double StandardError => Deviation / Math.Sqrt(Count);

    /// <summary>The summary of values.</summary>
    /// <param name="values">At least one, all finite.</param>
    /// <exception cref="ArgumentException">There is none, or one is not finite.</exception>
    public static SampleSummary Of(IReadOnlyList<double> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        if (values.Count == 0 || values.Any(value => !double.IsFinite(value)))
            throw new ArgumentException("A sample has at least one value, and all are finite.", nameof(values));
        double mean = values.Average();
        // Once more over the rest: what rounding left of the first mean is taken out.
        mean += values.Average(value => value - mean);
        double squares = values.Sum(value => (value - mean) * (value - mean));
        return new SampleSummary(values.Count, mean, values.Count > 1 ? Math.Sqrt(squares / (values.Count - 1)) : 0);
    }

    /// <summary>Student's interval for the mean.</summary>
    /// <param name="confidence">Between 0 and 1.</param>
    /// <exception cref="InvalidOperationException">One value alone has no spread.</exception>
    public Interval MeanWithin(double confidence = Levels.Usual)
    {
        RequireSpread();
        double half = Levels.Deviate(confidence, Count - 1) * StandardError;
        return new Interval(Mean - half, Mean + half);
    }

    /// <summary>Interval for the deviation of normal values, by the chi-squared law.</summary>
    /// <param name="confidence">Between 0 and 1.</param>
    /// <exception cref="InvalidOperationException">One value alone has no spread.</exception>
    public Interval DeviationWithin(double confidence = Levels.Usual)
    {
        RequireSpread();
        double tail = (1 - Levels.Require(confidence)) / 2;
        return new Interval(
            Math.Sqrt(SumOfSquares / ChiSquared.InvCDF(Count - 1, 1 - tail)),
            Math.Sqrt(SumOfSquares / ChiSquared.InvCDF(Count - 1, tail)));
    }

    private void RequireSpread()
    {
        if (Count < 2) throw new InvalidOperationException("One value alone has no spread; two or more have.");
    }
}
