namespace Longrail.Coaching.Statistics;

/// <summary>A drill that grows harder after makes and easier after misses: where does it settle?</summary>
/// <remarks>H. Levitt, J. Acoust. Soc. Am. 49, 467 (1971): it hovers where a step up is as likely as a step down.
/// </remarks>
/// <param name="MakesToHarder">So many makes in a row make it harder; positive.</param>
/// <param name="MissesToEasier">So many misses in a row make it easier; positive. One of the two is 1.</param>
public readonly record struct StaircaseRule(int MakesToHarder, int MissesToEasier = 1)
{
    /// <summary>The share of makes at which the drill settles.</summary>
    /// <exception cref="InvalidOperationException">A number is not positive, or neither is 1: for such rules there is
    /// no closed form.</exception>
    public double TargetRate => (MakesToHarder, MissesToEasier) switch
    {
        ( > 0, 1) => Math.Pow(0.5, 1.0 / MakesToHarder),
        (1, > 0) => 1 - Math.Pow(0.5, 1.0 / MissesToEasier),
        _ => throw new InvalidOperationException("One of the two numbers is 1, and the other positive."),
    };
}
