namespace Longrail.Cli;

/// <summary>An output that tells a reader who has gone from other errors of input and output.</summary>
internal sealed class GuardedOutput(Stream inner) : Stream
{
    public override bool CanRead => false;

    public override bool CanSeek => false;

    public override bool CanWrite => true;

    public override long Length => throw new NotSupportedException();

    public override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    public override void Flush() => Guard(inner.Flush);

    public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => Guard(() => inner.Write(buffer, offset, count));

    public override void Write(ReadOnlySpan<byte> buffer)
    {
        try
        {
            inner.Write(buffer);
        }
        catch (IOException closed)
        {
            throw new OutputClosedException(closed.Message, closed);
        }
    }

    private static void Guard(Action action)
    {
        try
        {
            action();
        }
        catch (IOException closed)
        {
            throw new OutputClosedException(closed.Message, closed);
        }
    }
}
