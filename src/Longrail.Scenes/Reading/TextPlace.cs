namespace Longrail.Scenes.Reading;

/// <summary>A place in a text, counted from 1.</summary>
/// <param name="Line">The line.</param>
/// <param name="Column">The column, in bytes.</param>
internal readonly record struct TextPlace(int Line, int Column)
{
    /// <summary>The place of a byte.</summary>
    public static TextPlace In(ReadOnlySpan<byte> source, long offset)
    {
        ReadOnlySpan<byte> before = source[..(int)Math.Min(offset, source.Length)];
        return new TextPlace(before.Count((byte)'\n') + 1, before.Length - before.LastIndexOf((byte)'\n'));
    }

    /// <summary>The error with this place.</summary>
    public SceneError Of(SceneError error) => error with { Line = Line, Column = Column };
}
