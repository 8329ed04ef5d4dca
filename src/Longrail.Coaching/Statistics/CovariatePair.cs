namespace Longrail.Coaching.Statistics;

/// <summary>A value with what may have moved it.</summary>
/// <param name="Covariate">What was measured beside it, as the speed of the stroke.</param>
/// <param name="Value">The value, as where the ball landed.</param>
public readonly record struct CovariatePair(double Covariate, double Value);
