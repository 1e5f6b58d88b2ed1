using FsCheck;
using FsCheck.Fluent;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Tests.Advising;

/// <summary>A boat read abeam and at some other stations, and a shuffle of its readings.</summary>
public sealed record RoundCase(string Name, BoatReadings Readings, BoatReadings Shuffled, BoatReadings Mirrored);

/// <summary>Rounds as clubs take them: half degrees, most gates near 4, some far off.</summary>
public static class Rounds
{
    private static readonly HullLevel[] Levels = [Round.Levelled, new HullLevel.BubbleCentred(), new HullLevel.ByEye()];

    public static Arbitrary<RoundCase> Cases() => (
        from boatClass in Gen.Elements("1x", "2-", "2x", "4-")
        from level in Gen.Elements(Levels)
        from lie in Gen.Elements(Lie.Upright, Lie.Inverted)
        let empty = Round.Of(boatClass, level, lie)
        let gates = Round.Gates(empty.Class)
        from abeam in Gen.ArrayOf(Shown(), gates.Count)
        from further in Gen.ArrayOf(Further(gates), 3)
        let round = further.Aggregate(
            gates.Zip(abeam).Aggregate(empty, (r, g) => r.Gate(g.First, Station.Abeam, g.Second)),
            (r, f) => r.Gate(f.Gate, f.Station, f.Shown))
        from shuffled in Gen.Shuffle(round.Taken.ToArray())
        select new RoundCase(
            $"{boatClass} {level} {string.Join(' ', round.Taken.Select(r => r.Value))}",
            round.Readings,
            (round with { Taken = shuffled }).Readings,
            round.Mirrored().Readings)).ToArbitrary();

    private static Gen<double> Shown() => Gen.Frequency(
        (6, Gen.Choose(6, 10).Select(n => n / 2.0)),
        (1, Gen.Choose(0, 18).Select(n => n / 2.0)));

    private static Gen<(GatePlace Gate, Station Station, double Shown)> Further(List<GatePlace> gates) =>
        from gate in Gen.Elements<GatePlace>([.. gates])
        from station in Gen.Elements(Station.Catch, Station.Abeam, Station.Finish)
        from shown in Shown()
        select (gate, station, shown);
}
