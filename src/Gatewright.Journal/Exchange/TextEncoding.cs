using System.Text;

namespace Gatewright.Journal.Exchange;

/// <summary>What a source's first bytes tell of its encoding.</summary>
internal static class TextEncoding
{
    /// <summary>How many bytes are enough to tell.</summary>
    public const int EnoughBytes = 4;

    /// <summary>The encoding, UTF-8 unless a byte order mark says otherwise; null when it is a spreadsheet program's own file.</summary>
    /// <param name="start">The first bytes, fewer than enough when there are no more.</param>
    /// <param name="markLength">How many of them are the byte order mark.</param>
    public static Encoding? Of(ReadOnlySpan<byte> start, out int markLength)
    {
        (Encoding? encoding, markLength) = start switch
        {
            [0xEF, 0xBB, 0xBF, ..] => (Encoding.UTF8, 3),
            [0xFF, 0xFE, ..] => (Encoding.Unicode, 2),
            [0xFE, 0xFF, ..] => (Encoding.BigEndianUnicode, 2),
            _ => (IsSpreadsheet(start) ? null : Encoding.UTF8, 0),
        };
        return encoding;
    }

    /// <summary>The zip archive and the compound file that spreadsheet programs keep their sheets in.</summary>
    private static bool IsSpreadsheet(ReadOnlySpan<byte> start) =>
        start is [(byte)'P', (byte)'K', 3, 4, ..] or [0xD0, 0xCF, 0x11, 0xE0, ..];
}
