namespace Gatewright.Journal.Exchange.Archive;

/// <summary>How many bytes a file may still give, all its members together.</summary>
internal sealed class UnpackedBudget(long bytes)
{
    private long _left = bytes;

    /// <exception cref="ArchiveException">There are more.</exception>
    public void Take(int bytes)
    {
        _left -= bytes;
        if (_left < 0)
        {
            throw new ArchiveException("unpacks to far more than a club's file of its size can hold");
        }
    }
}

/// <summary>A member while it is unpacked: what comes is counted, whatever the file says of its size.</summary>
internal sealed class UnpackedStream(Stream member, long most, UnpackedBudget budget) : Stream
{
    private long _read;

    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => false;

    public override long Length => throw new NotSupportedException();

    public override long Position
    {
        get => _read;
        set => throw new NotSupportedException();
    }

    public override int Read(byte[] buffer, int offset, int count) => Counted(member.Read(buffer, offset, count));

    public override int Read(Span<byte> buffer) => Counted(member.Read(buffer));

    public override async ValueTask<int> ReadAsync(Memory<byte> buffer, CancellationToken cancellationToken = default) =>
        Counted(await member.ReadAsync(buffer, cancellationToken).ConfigureAwait(false));

    public override Task<int> ReadAsync(byte[] buffer, int offset, int count, CancellationToken cancellationToken) =>
        ReadAsync(buffer.AsMemory(offset, count), cancellationToken).AsTask();

    public override void Flush()
    {
    }

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    protected override void Dispose(bool disposing)
    {
        if (disposing)
        {
            member.Dispose();
        }

        base.Dispose(disposing);
    }

    private int Counted(int bytes)
    {
        budget.Take(bytes);
        _read += bytes;
        return _read <= most
            ? bytes
            : throw new ArchiveException(FormattableString.Invariant($"has more than {most} bytes, the most that is taken"));
    }
}
