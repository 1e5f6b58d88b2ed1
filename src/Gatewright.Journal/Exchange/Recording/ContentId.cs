using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;

namespace Gatewright.Journal.Exchange.Recording;

/// <summary>The id of what stands in a file: the same each time the same is recorded.</summary>
internal static class ContentId
{
    /// <summary>The day of what has none: any will do, so long as it is always the same.</summary>
    private static readonly DateOnly NoDay = new(2000, 1, 1);

    /// <summary>A UUID of version 7 (RFC 9562, section 5.7): the day in its first 48 bits, a hash for what is random elsewhere.</summary>
    /// <param name="club">The club.</param>
    /// <param name="day">The day of the row.</param>
    /// <param name="kind">The kind of entry.</param>
    /// <param name="body">Its body.</param>
    /// <param name="repeat">How often the same stood before it in the file: a reading taken twice is two readings.</param>
    public static Guid Of(string club, DateOnly? day, string kind, ReadOnlySpan<byte> body, int repeat)
    {
        byte[] id = SHA256.HashData([.. Encoding.UTF8.GetBytes(FormattableString.Invariant($"{club}\n{kind}\n{repeat}\n")), .. body])[..16];
        long ms = new DateTimeOffset(Clamped(day), TimeOnly.MinValue, TimeSpan.Zero).ToUnixTimeMilliseconds();
        Span<byte> time = stackalloc byte[8];
        BinaryPrimitives.WriteInt64BigEndian(time, ms);
        time[2..].CopyTo(id);
        id[6] = (byte)((id[6] & 0x0F) | 0x70);
        id[8] = (byte)((id[8] & 0x3F) | 0x80);
        return new(id, bigEndian: true);
    }

    /// <summary>The time of a UUID begins in 1970.</summary>
    private static DateOnly Clamped(DateOnly? day) => day is { } known && known >= new DateOnly(1970, 1, 1) ? known : NoDay;
}
