using System.Text;

namespace Gatewright.Journal.Exchange;

/// <summary>
/// A source's bytes as text, as far as they are text, with a line feed at the end of each line: ends early, with a
/// defect, where they are not.
/// </summary>
internal sealed class SourceText(Stream stream) : TextReader
{
    private const int Chunk = 16_384;

    private readonly byte[] _bytes = new byte[Chunk];
    private readonly char[] _chars = new char[RowGuard.LongestRow + (2 * Chunk)];
    private readonly LineEnds _lineEnds = new();
    private readonly RowGuard _guard = new();
    private Decoder? _decoder;
    private int _start;
    private int _end;
    private bool _ended;

    /// <summary>Why the text ended early, or null.</summary>
    public TextDefect? Defect => _guard.Defect;

    /// <summary>The first line with anything on it, without taking it; empty when there is none or it does not end.</summary>
    public ReadOnlySpan<char> FirstLine()
    {
        while (true)
        {
            ReadOnlySpan<char> line = FirstLineOf(_chars.AsSpan(0, _end));
            if (!line.IsEmpty || _ended || _end + Chunk > _chars.Length)
            {
                return line;
            }

            TakeChunk();
        }
    }

    public override int Read(Span<char> buffer)
    {
        while (_start == _end && !_ended)
        {
            (_start, _end) = (0, 0);
            TakeChunk();
        }

        int taken = Math.Min(buffer.Length, _end - _start);
        _chars.AsSpan(_start, taken).CopyTo(buffer);
        _start += taken;
        return taken;
    }

    public override int Read(char[] buffer, int index, int count) => Read(buffer.AsSpan(index, count));

    public override int Read()
    {
        Span<char> one = stackalloc char[1];
        return Read(one) == 1 ? one[0] : -1;
    }

    private ReadOnlySpan<char> FirstLineOf(ReadOnlySpan<char> text)
    {
        while (true)
        {
            int length = text.IndexOf('\n');
            if (length < 0)
            {
                return _ended ? text : default;
            }

            if (!HeaderLine.IsBlank(text[..length]))
            {
                return text[..length];
            }

            text = text[(length + 1)..];
        }
    }

    private void TakeChunk()
    {
        int skipped = 0;
        int read;
        if (_decoder is null)
        {
            read = stream.ReadAtLeast(_bytes, TextEncoding.EnoughBytes, throwOnEndOfStream: false);
            Encoding? encoding = TextEncoding.Of(_bytes.AsSpan(0, read), out skipped);
            if (encoding is null)
            {
                _guard.Refuse(TextDefectKind.SpreadsheetFile);
                _ended = true;
                return;
            }

            _decoder = encoding.GetDecoder();
        }
        else
        {
            read = stream.Read(_bytes);
        }

        // A decoder that is flushed says whether the last bytes were half a character.
        int decoded = _decoder.GetChars(_bytes.AsSpan(skipped, Math.Max(read - skipped, 0)), _chars.AsSpan(_end), flush: read == 0);
        int length = _lineEnds.Unify(_chars.AsSpan(_end, decoded));
        _guard.Pass(_chars.AsSpan(_end, length));
        _end += length;
        _ended = read == 0 || _guard.Defect is not null;
    }
}
