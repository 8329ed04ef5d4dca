namespace Longrail.Coaching.Statistics;

/// <summary>A chance estimated from counted trials, with its 95 % interval.</summary>
/// <param name="Made">How many trials came off; from 0 to <paramref name="Trials"/>.</param>
/// <param name="Trials">How many there were; positive.</param>
/// <param name="Low">Lower end of the interval (E. B. Wilson, J. Am. Stat. Assoc. 22, 209 (1927)).</param>
/// <param name="High">Upper end.</param>
public readonly record struct Odds(int Made, int Trials, double Low, double High)
{
    /// <summary>The share that came off.</summary>
    public double Share => (double)Made / Trials;
}
