using Gatewright.Journal.Entries;

namespace Gatewright.Journal.Exchange.Archive;

/// <summary>The lines of a member, one in memory at a time.</summary>
internal sealed class ArchiveLines(Stream from)
{
    private readonly byte[] _buffer = new byte[2 * EntryLimits.Line];
    private int _start;
    private int _end;

    /// <summary>The next line without its end, good until the one after it; null after the last.</summary>
    /// <exception cref="ArchiveException">It is too long, or the last one has no end.</exception>
    public async ValueTask<ReadOnlyMemory<byte>?> NextAsync(CancellationToken cancellation)
    {
        while (true)
        {
            int length = _buffer.AsSpan(_start, _end - _start).IndexOf((byte)'\n');
            if (length >= 0)
            {
                _start += length + 1;
                return _buffer.AsMemory(_start - length - 1, length);
            }

            if (_end - _start > EntryLimits.Line)
            {
                throw new ArchiveException(FormattableString.Invariant($"a line of more than {EntryLimits.Line} bytes"));
            }

            _buffer.AsSpan(_start, _end - _start).CopyTo(_buffer);
            (_start, _end) = (0, _end - _start);
            int read = await from.ReadAsync(_buffer.AsMemory(_end), cancellation).ConfigureAwait(false);
            if (read == 0)
            {
                return _end == 0 ? null : throw new ArchiveException("the last line has no end: the file was cut short");
            }

            _end += read;
        }
    }
}
