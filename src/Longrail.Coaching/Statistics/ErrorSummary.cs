namespace Longrail.Coaching.Statistics;

/// <summary>Signed errors of a series of shots, as coaches split them: how far off on the whole, and how far
/// apart.</summary>
/// <param name="Count">How many shots.</param>
/// <param name="Constant">Constant error: the mean, in the errors' unit; the sign says which way.</param>
/// <param name="Variable">Variable error: the standard deviation about that mean.</param>
/// <param name="Absolute">Absolute error: the mean distance from no error, whichever way. It mixes the other
/// two.</param>
/// <param name="ConstantWithin">95 % interval of the constant error; null for a single shot.</param>
/// <param name="VariableWithin">95 % interval of the variable error; null for a single shot.</param>
public sealed record ErrorSummary(
    int Count, double Constant, double Variable, double Absolute, Interval? ConstantWithin, Interval? VariableWithin)
{
    /// <summary>Summary of errors.</summary>
    /// <param name="errors">At least one, all finite, all in one unit.</param>
    /// <exception cref="ArgumentException">There is none, or one is not finite.</exception>
    public static ErrorSummary Of(IReadOnlyList<double> errors)
    {
        SampleSummary sample = SampleSummary.Of(errors);
        bool hasSpread = sample.Count > 1;
        return new ErrorSummary(
            sample.Count, sample.Mean, sample.Deviation, errors.Average(Math.Abs),
            hasSpread ? sample.MeanWithin() : null, hasSpread ? sample.DeviationWithin() : null);
    }
}
