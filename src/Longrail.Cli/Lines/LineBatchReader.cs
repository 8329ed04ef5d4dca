using System.Buffers;
using Longrail.Scenes.Reading;

namespace Longrail.Cli.Lines;

/// <summary>Cuts a stream into batches of whole lines as they arrive. Never holds more than one line beyond what it
/// hands out.</summary>
/// <remarks>A line longer than a scene may be is not kept: its head, just too long, stands for it, so that whoever
/// plays the line refuses it for its length.</remarks>
internal sealed class LineBatchReader(Stream input)
{
    // Some hundred scenes: little enough to keep all cores busy and the answers small, enough to make handing over
    // cheap.
    private const int ReadSize = 16 * 1024;
    private const int LongestKept = SceneReader.LargestScene + 1;

    private byte[] _buffer = ArrayPool<byte>.Shared.Rent(ReadSize);
    private int _length;
    private long _line = 1;
    private bool _skipping;

    /// <summary>The next batch, or null at the end. Waits for input, but not for more than one whole line of
    /// it.</summary>
    public LineBatch? Next()
    {
        while (true)
        {
            MakeRoom();
            int read = input.Read(_buffer, _length, Math.Min(ReadSize, _buffer.Length - _length));
            if (read == 0)
                return _length == 0 ? null : Cut(_length, restLength: 0);
            int start = _length;
            _length += read;
            if (_skipping && !SkipToLineEnd(start))
                continue;

            int end = _buffer.AsSpan(0, _length).LastIndexOf((byte)'\n') + 1;
            if (end > 0)
                return Cut(end, _length - end);
            if (_length > LongestKept)
            {
                _length = LongestKept;
                _skipping = true;
            }
        }
    }

    // While a line is too long, what arrives is thrown away up to its end.
    private bool SkipToLineEnd(int start)
    {
        int end = _buffer.AsSpan(start, _length - start).IndexOf((byte)'\n');
        if (end < 0)
        {
            _length = start;
            return false;
        }

        _buffer.AsSpan(start + end, _length - start - end).CopyTo(_buffer.AsSpan(start));
        _length -= end;
        _skipping = false;
        return true;
    }

    private LineBatch Cut(int length, int restLength)
    {
        byte[] rest = ArrayPool<byte>.Shared.Rent(Math.Max(ReadSize, restLength));
        _buffer.AsSpan(length, restLength).CopyTo(rest);
        var batch = new LineBatch(_buffer, length, _line);
        _line += batch.Text.Count((byte)'\n');
        _buffer = rest;
        _length = restLength;
        return batch;
    }

    private void MakeRoom()
    {
        if (_buffer.Length - _length >= ReadSize / 2)
            return;
        byte[] larger = ArrayPool<byte>.Shared.Rent(2 * _buffer.Length);
        _buffer.AsSpan(0, _length).CopyTo(larger);
        ArrayPool<byte>.Shared.Return(_buffer);
        _buffer = larger;
    }
}
