using System.Globalization;
using System.Text;
using Gatewright.Journal.Entries;

namespace Gatewright.Bench.Keeping;

/// <summary>Entries like those of a round of readings.</summary>
internal static class BenchEntries
{
    public const string Club = "club";

    public static Entry[] Make(int count) => [.. Enumerable.Range(1, count).Select(number => new Entry
    {
        Id = Guid.CreateVersion7(DateTimeOffset.UnixEpoch.AddMilliseconds(number)),
        Club = Club,
        Member = "m1",
        Device = "phone",
        Time = new(1_700_000_000_000 + number, 0),
        Kind = "note",
        Version = 1,
        Body = Encoding.UTF8.GetBytes(string.Create(
            CultureInfo.InvariantCulture,
            $$"""{"thing":"boat","key":"b{{number % 40}}","text":"Seat {{number % 8}}: the pin was knocked on the way out, looked at and left."}""")),
    })];
}
