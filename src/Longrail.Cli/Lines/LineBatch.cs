using System.Buffers;

namespace Longrail.Cli.Lines;

/// <summary>Some whole lines of input on their way through the players, and their answers.</summary>
internal sealed class LineBatch : IDisposable
{
    private readonly ManualResetEventSlim _answered = new();
    private byte[] _text;

    /// <summary>Takes over a rented buffer with whole lines in it.</summary>
    /// <param name="text">The buffer.</param>
    /// <param name="length">How much of it is text.</param>
    /// <param name="firstLine">The number of its first line in the input.</param>
    public LineBatch(byte[] text, int length, long firstLine)
    {
        _text = text;
        Length = length;
        FirstLine = firstLine;
    }

    /// <summary>How long the text is, bytes.</summary>
    public int Length { get; }

    /// <summary>The number of the first line in the input, counted from 1.</summary>
    public long FirstLine { get; }

    /// <summary>The text.</summary>
    public ReadOnlySpan<byte> Text => _text.AsSpan(0, Length);

    /// <summary>The answers, one a line; null until a player takes the batch up.</summary>
    public ArrayBufferWriter<byte>? Answers { get; set; }

    /// <summary>How many lines could not be played.</summary>
    public int Failed { get; set; }

    /// <summary>Says that the answers are complete; the text is given back.</summary>
    public void Complete()
    {
        ArrayPool<byte>.Shared.Return(_text);
        _text = [];
        _answered.Set();
    }

    /// <summary>Waits until the answers are complete.</summary>
    /// <exception cref="OperationCanceledException">The run was ended.</exception>
    public void Wait(CancellationToken ended) => _answered.Wait(ended);

    /// <inheritdoc/>
    public void Dispose() => _answered.Dispose();
}
