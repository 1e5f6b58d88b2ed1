using FsCheck;
using FsCheck.Fluent;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;

namespace Gatewright.Journal.Tests.Replay;

/// <summary>Journals to replay: made up, small enough that keys, fields and times collide often.</summary>
internal static class Journals
{
    public const string Club = "club";

    public static Recorded Entry(int number, Fact fact, long ms, int counter = 0, string device = "phone", string member = "m1")
    {
        (string kind, int version, byte[] body) = FactKinds.Write(fact);
        return new(
            new Entry
            {
                Id = Id(number),
                Club = Club,
                Member = member,
                Device = device,
                Time = new(ms, counter),
                Kind = kind,
                Version = version,
                Body = body,
            },
            fact);
    }

    /// <summary>A version 7 UUID that carries a number.</summary>
    public static Guid Id(int number) =>
        Guid.Parse($"01900000-0000-7000-8000-{number:x12}");

    public static ThingSet Set(string key, string field, string? value) =>
        new(Things.Boat, key, new Dictionary<string, string?> { [field] = value });

    /// <summary>Entries about two boats with two fields each, at few times, retracting each other at random.</summary>
    public static Gen<Recorded[]> Any { get; } =
        from count in Gen.Choose(1, 14)
        from entries in Gen.CollectToArray(Enumerable.Range(0, count), number => One(number, count))
        select entries;

    /// <summary>So many entries, numbered from a number on.</summary>
    public static Gen<Recorded[]> Many(int from, int count) =>
        Gen.CollectToArray(Enumerable.Range(from, count), number => One(number, from + count));

    private static Gen<Recorded> One(int number, int count) =>
        from ms in Gen.Choose(1, 4)
        from counter in Gen.Choose(0, 1)
        from device in Gen.Elements("phone", "tablet")
        from fact in Gen.Frequency(
            (4, SetField),
            (2, Gen.Choose(0, count - 1).Select(target => (Fact)new Retracted(Id(target), null))),
            (1, Gen.Elements("heron", "teal").Select(boat => (Fact)new Held(boat, "knock"))),
            (1, Gen.Elements("heron", "teal").Select(boat => (Fact)new Released(boat, "mended"))),
            (1, Gen.Choose(0, 5).Select(n => (Fact)new StockCounted("insert", 4, n))),
            (1, Gen.Choose(-2, 2).Select(n => (Fact)new StockChanged("insert", 4, n, null))))
        select Entry(number, fact, ms, counter, device);

    private static Gen<Fact> SetField { get; } =
        from boat in Gen.Elements("heron", "teal")
        from field in Gen.Elements("name", "rack")
        from value in Gen.Elements("a", "b", null)
        select (Fact)Set(boat, field, value);
}
