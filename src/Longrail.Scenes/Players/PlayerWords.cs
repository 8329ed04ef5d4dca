namespace Longrail.Scenes.Players;

/// <summary>The names of the levels as a player file and the command line write them.</summary>
public static class PlayerWords
{
    private static readonly string[] _levels = ["beginner", "club", "county", "national"];

    /// <summary>The levels in the order of <see cref="PlayerLevel"/>.</summary>
    public static IReadOnlyList<string> Levels => _levels;

    /// <summary>The name of a level.</summary>
    public static string Of(PlayerLevel level) => _levels[(int)level];

    /// <summary>The level of that name; null if there is none. Capitals do not count.</summary>
    public static PlayerLevel? Level(string name)
    {
        int index = Array.FindIndex(_levels, level => level.Equals(name, StringComparison.OrdinalIgnoreCase));
        return index < 0 ? null : (PlayerLevel)index;
    }
}
