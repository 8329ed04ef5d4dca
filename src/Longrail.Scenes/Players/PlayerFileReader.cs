using Longrail.Scenes.Reading;

namespace Longrail.Scenes.Players;

/// <summary>Reads player files. Nothing that can be in a file makes it throw.</summary>
public static class PlayerFileReader
{
    private static readonly FileReader<PlayerFile> _reader =
        new(PlayerFields.Root, "player", PlayerFields.PathEndingIn);

    /// <summary>Reads a player file.</summary>
    /// <param name="utf8">The text in UTF-8, with or without a byte order mark.</param>
    public static PlayerFileReading Read(ReadOnlySpan<byte> utf8)
    {
        (PlayerFile? player, IReadOnlyList<SceneError> errors) = _reader.Read(utf8);
        return new PlayerFileReading(player, errors);
    }
}
