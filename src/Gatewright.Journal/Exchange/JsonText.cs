using System.Text.Json;
using System.Text.Unicode;

namespace Gatewright.Journal.Exchange;

/// <summary>Parses JSON that people write by hand: comments and a comma after the last entry are allowed.</summary>
internal static class JsonText
{
    private const int Piece = 65_536;

    private static readonly JsonDocumentOptions s_options = new()
    {
        AllowTrailingCommas = true,
        CommentHandling = JsonCommentHandling.Skip,
        MaxDepth = 16,
    };

    /// <summary>The document, or null when it has reported an error.</summary>
    /// <param name="content">The bytes; left open.</param>
    /// <param name="longest">The most bytes there may be.</param>
    /// <param name="what">What the file should be, "a standard".</param>
    /// <param name="report">Where problems go.</param>
    public static JsonDocument? Parse(Stream content, int longest, string what, JsonReporter report)
    {
        if (Bytes(content, longest) is not { } text)
        {
            report.TooLong(longest, what);
            return null;
        }

        if (text.Span is [0xEF, 0xBB, 0xBF, ..])
        {
            text = text[3..];
        }

        if (!Utf8.IsValid(text.Span))
        {
            report.NotUtf8();
            return null;
        }

        try
        {
            return JsonDocument.Parse(text, s_options);
        }
        catch (JsonException fault)
        {
            report.NotJson(fault);
            return null;
        }
    }

    /// <summary>All bytes, or null when there are too many: no more than one piece too much is read of them.</summary>
    private static ReadOnlyMemory<byte>? Bytes(Stream content, int longest)
    {
        byte[] bytes = new byte[Math.Min(Piece, longest + 1)];
        int length = 0;
        while (content.ReadAtLeast(bytes.AsSpan(length), bytes.Length - length, throwOnEndOfStream: false) is var read and > 0)
        {
            length += read;
            if (length > longest)
            {
                return null;
            }

            if (length < bytes.Length)
            {
                break;
            }

            Array.Resize(ref bytes, (int)Math.Min(2L * bytes.Length, longest + 1L));
        }

        return bytes.AsMemory(0, length);
    }
}
