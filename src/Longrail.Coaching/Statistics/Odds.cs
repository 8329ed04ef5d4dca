namespace Longrail.Coaching.Statistics;

/// <summary>A chance estimated from counted trials, with its 95 % interval.</summary>
/// <param name="Made">How many trials came off; from 0 to <paramref name="Trials"/>.</param>
/// <param name="Trials">How many there were; not negative.</param>
/// <param name="Low">Lower end of the interval (E. B. Wilson, J. Am. Stat. Assoc. 22, 209 (1927)).</param>
/// <param name="High">Upper end.</param>
public readonly record struct Odds(int Made, int Trials, double Low, double High)
{
    /// <summary>The normal deviate that leaves 2.5 % on each side.</summary>
    private const double Deviate = 1.959963984540054;

    /// <summary>The share that came off; 0 without a trial.</summary>
    public double Share => Trials > 0 ? (double)Made / Trials : 0;

    /// <summary>The chance and its interval from a count: Wilson's score interval, which keeps within 0 and 1 and holds
    /// what it says for few trials and for shares near 0 and 1, where the plain normal interval does not.</summary>
    /// <param name="made">How many trials came off, from 0 to <paramref name="trials"/>.</param>
    /// <param name="trials">How many there were, not negative; without any the interval is all from 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A count is out of its range.</exception>
    public static Odds Of(int made, int trials)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(trials);
        ArgumentOutOfRangeException.ThrowIfNegative(made);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(made, trials);
        if (trials == 0) return new Odds(0, 0, 0, 1);

        double n = trials;
        double p = made / n;
        double z2 = Deviate * Deviate;
        double centre = (p + z2 / (2 * n)) / (1 + z2 / n);
        double half = Deviate / (1 + z2 / n) * Math.Sqrt(p * (1 - p) / n + z2 / (4 * n * n));
        // At the ends centre and half-width are equal but for rounding.
        return new Odds(made, trials, made == 0 ? 0 : centre - half, made == trials ? 1 : centre + half);
    }
}
