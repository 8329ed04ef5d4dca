namespace Longrail.Coaching.Statistics;

/// <summary>Sums of squares and products of two quantities about their means.</summary>
/// <param name="Xx">Of the covariate with itself.</param>
/// <param name="Xy">Of the covariate with the value.</param>
/// <param name="Yy">Of the value with itself.</param>
public readonly record struct SumsOfProducts(double Xx, double Xy, double Yy)
{
    /// <summary>Slope of the value on the covariate; 0 where the covariate does not vary.</summary>
    public double Slope => Xx > 0 ? Xy / Xx : 0;

    /// <summary>The part of <see cref="Yy"/> that the covariate takes.</summary>
    public double Explained => Slope * Xy;

    /// <summary>The part that it leaves.</summary>
    public double Left => Math.Max(0, Yy - Explained);

    /// <summary>The sums of two sets, each about its own means.</summary>
    public static SumsOfProducts operator +(SumsOfProducts a, SumsOfProducts b) =>
        new(a.Xx + b.Xx, a.Xy + b.Xy, a.Yy + b.Yy);

    /// <summary>The sums of a set of pairs.</summary>
    /// <param name="pairs">At least one.</param>
    public static SumsOfProducts Of(IReadOnlyList<CovariatePair> pairs)
    {
        ArgumentNullException.ThrowIfNull(pairs);
        double x = pairs.Average(pair => pair.Covariate);
        double y = pairs.Average(pair => pair.Value);
        var sums = default(SumsOfProducts);
        foreach (CovariatePair pair in pairs)
        {
            double dx = pair.Covariate - x;
            double dy = pair.Value - y;
            sums += new SumsOfProducts(dx * dx, dx * dy, dy * dy);
        }

        return sums;
    }
}
