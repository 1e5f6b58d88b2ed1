using System.Buffers.Binary;

namespace Gatewright.Journal.Exchange.Archive;

/// <summary>
/// The end of a zip's list of members (APPNOTE 6.3, sections 4.3.14 to 4.3.16), read before the zip is opened: opening
/// reads the whole list into memory, however long it is.
/// </summary>
internal static class CentralDirectory
{
    private const int EndLength = 22;
    private const int LongestComment = ushort.MaxValue;
    private const int LocatorLength = 20;
    private const int LongEndLength = 56;

    /// <summary>Bytes from where the list begins to the end of the file; null when this is not a whole zip.</summary>
    public static async ValueTask<long?> LengthAsync(Stream zip, CancellationToken cancellation)
    {
        byte[] tail = new byte[(int)Math.Min(zip.Length, EndLength + LongestComment + LocatorLength)];
        zip.Position = zip.Length - tail.Length;
        await zip.ReadExactlyAsync(tail, cancellation).ConfigureAwait(false);
        int end = tail.AsSpan().LastIndexOf("PK\u0005\u0006"u8);
        if (end < 0 || end > tail.Length - EndLength)
        {
            return null;
        }

        long start = BinaryPrimitives.ReadUInt32LittleEndian(tail.AsSpan(end + 16));
        int locator = end - LocatorLength;
        if (locator >= 0 && tail.AsSpan(locator).StartsWith("PK\u0006\u0007"u8))
        {
            // A zip may have both; whichever is read, the list is no longer than from the first of them.
            long at = BinaryPrimitives.ReadInt64LittleEndian(tail.AsSpan(locator + 8));
            start = Math.Min(start, await LongStartAsync(zip, at, cancellation).ConfigureAwait(false));
        }

        return start >= 0 && start <= zip.Length ? zip.Length - start : null;
    }

    private static async ValueTask<long> LongStartAsync(Stream zip, long at, CancellationToken cancellation)
    {
        if (at < 0 || at > zip.Length - LongEndLength)
        {
            return -1;
        }

        byte[] end = new byte[LongEndLength];
        zip.Position = at;
        await zip.ReadExactlyAsync(end, cancellation).ConfigureAwait(false);
        return BinaryPrimitives.ReadInt64LittleEndian(end.AsSpan(48));
    }
}
