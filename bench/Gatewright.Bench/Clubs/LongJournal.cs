using System.Globalization;
using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;

namespace Gatewright.Bench.Clubs;

/// <summary>The journal of a large club over many years: of 60 eights mostly readings, between them all that else is recorded.</summary>
internal static class LongJournal
{
    public const string Club = "long-club";

    /// <summary>Entries in which every boat is read once.</summary>
    public const int Round = 27 * Count;

    private const int Count = 60;

    /// <summary>The keys of its boats.</summary>
    public static IEnumerable<string> Boats => Enumerable.Range(0, Count).Select(number => Key("boat", number));

    public static IEnumerable<Entry> Entries(int count)
    {
        for (int i = 0; i < count; i++)
        {
            (string kind, int version, byte[] body) = FactKinds.Write(Fact(i));
            yield return new()
            {
                Id = Id(i),
                Club = Club,
                Member = string.Create(CultureInfo.InvariantCulture, $"m{i / 500 % 12}"),
                Device = string.Create(CultureInfo.InvariantCulture, $"d{i / 500 % 20}"),
                Time = At(i),
                Kind = kind,
                Version = version,
                Body = body,
            };
        }
    }

    /// <summary>When the entry at a place was recorded.</summary>
    public static HybridTime At(int place) => new(1_700_000_000_000 + (place * 900L), place % 3);

    private static Guid Id(int i) => Guid.Parse(string.Create(CultureInfo.InvariantCulture, $"018bcfe5-0000-7{i % 4096:x3}-8{i * 7 % 4096:x3}-{i:x12}"));

    private static Fact Fact(int i)
    {
        int lying = i / 27;
        string boat = Key("boat", lying % Count);
        int seat = 1 + (i % 27 / 3 % 8);
        return (i % 27) switch
        {
            0 => new BoatLaid(Key("lying", lying), boat, Lie.Inverted, LevelBasis.Rack, Rack: "rack-a", Round: Key("round", lying / Count)),
            25 when lying % 5 == 0 => new Reported(boat, ReportKind.Knock, seat, Side.Port, "on the landing stage"),
            25 when lying % 5 == 1 => new JobPlanned(Key("job", lying), boat, Cause.GatePitch, "insert-swap", ["take the insert out", "fit the new one"], [new("insert", 4, 1)], [new(Station.Catch, 4, 3.5m, 4.5m)], seat, Side.Port),
            26 when lying % 5 == 1 => new JobDone(Key("job", lying), Cause.GatePitch),
            25 when lying % 5 == 2 => new ThingSet(Things.Gate, $"{boat}/{seat}/port", new Dictionary<string, string?> { ["insert"] = "4" }),
            25 when lying % 5 == 3 => new Noted(Things.Boat, boat, "the rack is due for paint"),
            26 when lying % 5 == 3 => new Retracted(Id(i - 1), "wrong boat"),
            _ => new ReadingTaken(Key("lying", lying), boat, ReadItem.Gate, seat, seat % 2 == 0 ? Side.Port : Side.Starboard, 3.5m + (0.5m * (i % 4)), Stations.All[i % 3], Gauge: "gauge-1"),
        };
    }

    private static string Key(string word, int number) => string.Create(CultureInfo.InvariantCulture, $"{word}-{number}");
}
