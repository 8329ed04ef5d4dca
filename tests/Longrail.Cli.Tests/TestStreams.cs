namespace Longrail.Cli.Tests;

/// <summary>A long stream of one byte repeated, made as it is read, which counts how much was taken from it.</summary>
internal sealed class LongStream(long length, Action<Memory<byte>> fill) : ReadOnlyStream
{
    /// <summary>How many bytes were taken.</summary>
    public long Taken { get; private set; }

    public override int Read(byte[] buffer, int offset, int count)
    {
        int n = (int)Math.Min(length - Taken, count);
        fill(buffer.AsMemory(offset, n));
        Taken += n;
        return n;
    }
}

/// <summary>A stream that hands out given pieces, one a read.</summary>
internal sealed class PieceStream(params byte[][] pieces) : ReadOnlyStream
{
    private int _next;

    public override int Read(byte[] buffer, int offset, int count)
    {
        if (_next == pieces.Length)
            return 0;
        byte[] piece = pieces[_next++];
        piece.CopyTo(buffer, offset);
        return piece.Length;
    }
}

/// <summary>An output whose reader goes away after so many bytes.</summary>
internal sealed class ClosingStream(long after) : MemoryStream
{
    public override void Write(byte[] buffer, int offset, int count) => Write(buffer.AsSpan(offset, count));

    public override void Write(ReadOnlySpan<byte> buffer)
    {
        if (Length + buffer.Length > after)
            throw new OutputClosedException("Broken pipe", new IOException("Broken pipe"));
        base.Write(buffer);
    }
}

/// <summary>What streams that can only be read have in common.</summary>
internal abstract class ReadOnlyStream : Stream
{
    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => false;

    public override long Length => throw new NotSupportedException();

    public override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    public override void Flush()
    {
    }

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
}
