using Longrail.Scenes.Players;

namespace Longrail.Coaching.Players;

/// <summary>Players to start from. Their error sizes are assumptions.</summary>
/// <remarks>
/// No measured table of stroke errors of pool players was at hand. Published is the order: the errors of recreational
/// players vary more from shot to shot than those of national players (J. W. Pan, J. Komar, P. W. Kong, BMC Sports Sci.
/// Med. Rehabil. 13, 9 (2021), doi:10.1186/s13102-021-00237-9), and they shrink with practice, those of unsteady
/// players remaining the larger (S. Haar, C. M. van Assel, A. A. Faisal, Sci. Rep. 10 (2020),
/// doi:10.1038/s41598-020-76805-9). The sizes are set so that the cue ball's direction, aim and the squirt of a tip off
/// its place taken together, on a soft stroke strays by 0.7, 0.25, 0.12 and 0.06 degrees; a straight pot of 1 m and 1 m
/// into a 4 1/2 inch corner then goes down about one time in ten, three in ten, five to six in ten and nine in ten.
/// docs/sources.md tells the same.
/// </remarks>
public static class PlayerPresets
{
    private const double Degree = Math.PI / 180;
    private const double Millimetre = 1e-3;

    /// <summary>The presets in the order of <see cref="PlayerLevel"/>, the least steady first.</summary>
    public static IReadOnlyList<Player> All { get; } =
    [
        Preset(PlayerLevel.Beginner, 0.55, 12, 2.0, 3.0, 1.5),
        Preset(PlayerLevel.Club, 0.18, 6, 0.8, 1.5, 1.0),
        Preset(PlayerLevel.County, 0.085, 3.5, 0.4, 0.8, 0.5),
        Preset(PlayerLevel.National, 0.045, 2, 0.2, 0.5, 0.3),
    ];

    /// <summary>The player that is taken where none is named.</summary>
    public static Player Default => Of(PlayerLevel.Club);

    /// <summary>The preset of a level.</summary>
    public static Player Of(PlayerLevel level) => All[(int)level];

    /// <summary>The preset of that name, or null.</summary>
    /// <param name="name">The name; capitals do not count.</param>
    public static Player? Named(string name) => PlayerWords.Level(name) is { } level ? Of(level) : null;

    private static Player Preset(
        PlayerLevel level, double aimDegrees, double speedPercent, double acrossMillimetres, double upMillimetres,
        double elevationDegrees) => new(
        PlayerWords.Of(level), aimDegrees * Degree, speedPercent / 100, acrossMillimetres * Millimetre,
        upMillimetres * Millimetre, elevationDegrees * Degree);
}
