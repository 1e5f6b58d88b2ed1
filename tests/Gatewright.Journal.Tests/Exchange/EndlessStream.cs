namespace Gatewright.Journal.Tests.Exchange;

/// <summary>A start, then a pattern over and over, up to a length: a file of any size that takes no room.</summary>
internal sealed class EndlessStream(byte[] start, byte[] pattern, long length) : Stream
{
    private long _position;

    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => false;

    public override long Length => length;

    public override long Position
    {
        get => _position;
        set => throw new NotSupportedException();
    }

    public override int Read(Span<byte> buffer)
    {
        int count = (int)Math.Min(buffer.Length, length - _position);
        for (int done = 0; done < count;)
        {
            ReadOnlySpan<byte> rest = Rest(_position + done);
            rest = rest[..Math.Min(rest.Length, count - done)];
            rest.CopyTo(buffer[done..]);
            done += rest.Length;
        }

        _position += count;
        return count;
    }

    public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

    public override void Flush()
    {
    }

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    private ReadOnlySpan<byte> Rest(long at) => at < start.Length
        ? start.AsSpan((int)at)
        : pattern.AsSpan((int)((at - start.Length) % pattern.Length));
}
