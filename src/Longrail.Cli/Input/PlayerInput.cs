using Longrail.Coaching.Players;

namespace Longrail.Cli.Input;

/// <summary>Reads the player that is asked for: one of the presets, or a file.</summary>
internal static class PlayerInput
{
    /// <summary>The player; what is wrong is printed.</summary>
    /// <param name="asked">A name, a file, or null for the usual player.</param>
    /// <param name="error">Where to print.</param>
    internal static Player? Read(string? asked, TextWriter error) =>
        asked is null ? PlayerPresets.Default : PlayerPresets.Named(asked);
}
