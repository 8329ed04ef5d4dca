using Longrail.Coaching.Players;

namespace Longrail.Cli.Input;

/// <summary>Reads the player that is asked for: one of the presets, or a file.</summary>
internal static class PlayerInput
{
    /// <summary>The player; what is wrong is printed.</summary>
    /// <param name="asked">A name, a file, or null for the usual player.</param>
    /// <param name="streams">Where to read and where to print.</param>
    internal static Player? Read(string? asked, ProgramStreams streams)
    {
        if (asked is null)
            return PlayerPresets.Default;
        if (PlayerPresets.Named(asked) is { } preset)
            return preset;
        if (!SceneInput.IsStandardInput(asked) && !File.Exists(asked))
        {
            string names = string.Join(", ", PlayerPresets.All.Select(player => player.Name));
            streams.Error.WriteLine(
                $"longrail: --player: there is no player and no file \"{asked}\"; allowed: {names}, or a player file");
            return null;
        }

        if (!SceneInput.TryReadBytes(asked, streams, out byte[] utf8))
            return null;
        PlayerReading reading = PlayerReader.Read(utf8);
        SceneInput.PrintErrors(reading.Errors, SceneInput.NameOf(asked), streams.Error);
        return reading.Player;
    }
}
