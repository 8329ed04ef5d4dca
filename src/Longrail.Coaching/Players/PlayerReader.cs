using Longrail.Scenes.Players;

namespace Longrail.Coaching.Players;

/// <summary>Reads players from player files.</summary>
public static class PlayerReader
{
    /// <summary>The player of a file; what the file leaves out is as its preset has it.</summary>
    /// <param name="utf8">The text in UTF-8, with or without a byte order mark. Nothing in it makes this throw.</param>
    public static PlayerReading Read(ReadOnlySpan<byte> utf8)
    {
        PlayerFileReading reading = PlayerFileReader.Read(utf8);
        return new PlayerReading(reading.Player is { } file ? Of(file) : null, reading.Errors);
    }

    private static Player Of(PlayerFile file)
    {
        Player preset = file.Preset is { } level ? PlayerPresets.Of(level) : PlayerPresets.Default;
        return new Player(
            string.IsNullOrWhiteSpace(file.Name) ? preset.Name : file.Name,
            file.Aim?.Value ?? preset.Aim,
            file.Speed?.Value ?? preset.Speed,
            file.Tip?.Across?.Value ?? preset.TipAcross,
            file.Tip?.Up?.Value ?? preset.TipUp,
            file.Elevation?.Value ?? preset.Elevation);
    }
}
