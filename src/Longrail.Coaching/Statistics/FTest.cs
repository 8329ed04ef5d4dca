namespace Longrail.Coaching.Statistics;

/// <summary>A ratio of two mean squares.</summary>
/// <param name="Squares">Sum of squares of what is tested.</param>
/// <param name="Freedom">Its degrees of freedom.</param>
/// <param name="ErrorSquares">Sum of squares of what is left.</param>
/// <param name="ErrorFreedom">Its degrees of freedom.</param>
public readonly record struct FTest(double Squares, int Freedom, double ErrorSquares, int ErrorFreedom)
{
    /// <summary>The ratio.</summary>
    public double F => Squares / Freedom / (ErrorSquares / ErrorFreedom);

    /// <summary>Chance of so large a ratio if what is tested has no effect.</summary>
    public double P => Levels.Above(F, Freedom, ErrorFreedom);
}
