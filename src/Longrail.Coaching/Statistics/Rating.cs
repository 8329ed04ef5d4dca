namespace Longrail.Coaching.Statistics;

/// <summary>Ability against difficulty on one scale.</summary>
/// <remarks>G. Rasch (1960) in natural units; A. E. Elo, The Rating of Chessplayers (1978), in steps of 400 for a
/// tenfold in odds. Difficulties are best anchored by the physics' expected success, so that harder shots are not taken
/// for a worse day.</remarks>
public static class Rating
{
    private const double Tenfold = 400;

    /// <summary>Chance of success by Rasch: 1 / (1 + exp(difficulty - ability)).</summary>
    public static double Rasch(double ability, double difficulty) => 1 / (1 + Math.Exp(difficulty - ability));

    /// <summary>Chance of success, or score expected, by Elo.</summary>
    public static double Elo(double ability, double difficulty) =>
        1 / (1 + Math.Pow(10, (difficulty - ability) / Tenfold));

    /// <summary>The new rating after a series, all of it scored against the rating before.</summary>
    /// <param name="ability">Rating before.</param>
    /// <param name="difficulties">What it was played against.</param>
    /// <param name="score">Sum of the results: 1 for a success, 0 for a failure.</param>
    /// <param name="gain">How far one result moves it; let it fall with experience.</param>
    public static double Updated(double ability, IReadOnlyList<double> difficulties, double score, double gain) =>
        ability + gain * (score - difficulties.Sum(difficulty => Elo(ability, difficulty)));
}
