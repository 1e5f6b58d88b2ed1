using FsCheck;
using FsCheck.Fluent;
using Gatewright.Core;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;

namespace Gatewright.Journal.Tests.Exchange;

/// <summary>A shed as it can come out of reading: what <see cref="AnyShed"/> makes.</summary>
public sealed record AShed(IReadOnlyList<BoatReadings> Boats)
{
    public override string ToString() => string.Join('\n', Boats.Select(b => $"{b.Boat} {b.Class}: {string.Join("; ", b.Readings)}"));
}

/// <summary>Makes sheds of every class, item, lie and way of levelling, with names and numbers that are hard to write.</summary>
public static class AnyShed
{
    private static readonly string[] s_beginnings = ["", "=", "+", "-", "@", "'", "'=", "''@", "(", "\""];

    private static readonly string[] s_endings = ["", " Kestrel", " \"II\"", ", red", ";x", " Möwe", "'s", " 2×", "\u00C5", "|", "#", " 船"];

    public static Arbitrary<AShed> Sheds() => Shed().ToArbitrary();

    private static Gen<AShed> Shed() =>
        from racks in Racks()
        from boatClasses in Gen.Elements(BoatClass.All.ToArray()).NonEmptyListOf()
        from boats in Gen.CollectToSequence(boatClasses.Take(6).Select((c, i) => Boat(i, c, racks)))
        select new AShed([.. boats]);

    private static Gen<Rack[]> Racks() => Gen.CollectToArray(Enumerable.Range(0, 3).Select(
        i => from name in Name(i)
             from attitude in Attitude()
             from bed in Gen.Elements(Bedding.Firm, Bedding.Soft)
             from day in Day()
             select new Rack(name, attitude, bed, day)));

    private static Gen<BoatReadings> Boat(int number, BoatClass boatClass, Rack[] racks) =>
        from name in Name(number)
        from sides in Gen.Elements(Side.Port, Side.Starboard).ArrayOf(boatClass.Seats)
        from laid in Lie(racks).NonEmptyListOf()
        from moved in Gen.Elements(laid.ToArray()).ListOf(2)
        let lies = (BoatLie[])[.. laid, .. moved.Select((l, i) => l with { Moved = $"move {i}" })]
        from readings in Reading(boatClass, sides, lies).NonEmptyListOf()
        select new BoatReadings(name, boatClass, AsRead(readings));

    /// <summary>Lyings that are alike, but for a move between them, as a file tells them apart: the first by nothing, the others by their number.</summary>
    internal static IReadOnlyList<Reading> AsRead(IEnumerable<Reading> readings)
    {
        List<Reading> all = [.. readings];
        var marked = all.Select(r => r.Lie).Distinct().GroupBy(l => l with { Moved = null })
            .SelectMany(alike => alike.Select((lie, i) => (lie, Marked: alike.Key with { Moved = i == 0 ? null : $"{i + 1}" })))
            .ToDictionary(l => l.lie, l => l.Marked);
        return [.. all.Select(r => r with { Lie = marked[r.Lie] })];
    }

    private static Gen<Reading> Reading(BoatClass boatClass, Side[] sides, BoatLie[] lies) =>
        from item in Gen.Elements(Enum.GetValues<ReadItem>())
        from seat in Gen.Choose(1, boatClass.Seats)
        from sculled in Gen.Elements(Side.Port, Side.Starboard)
        from at in Point(MeasuringSettings.Default.Angles(boatClass.Rowing))
        from value in Degrees(30)
        from lie in Gen.Elements(lies)
        from gauge in Gen.Elements("gauge", "blue", "=blue", "Gauge, old")
        let side = boatClass.Rowing == Rowing.Scull ? sculled : sides[seat - 1]
        let abeam = MeasuringSettings.Default.Angles(boatClass.Rowing).Point(Station.Abeam)
        select new Reading(
            item,
            new(seat, side),
            item == ReadItem.Gate ? at : abeam,
            Angle.FromDegrees(value),
            lie,
            MeasuringSettings.Default.GaugeNamed(gauge));

    private static Gen<StrokePoint> Point(StationAngles angles) => Gen.OneOf(
        Gen.Elements(Stations.All.ToArray()).Select(angles.Point),
        Degrees(90).Select(d => angles.Point(OarAngle.FromDegrees(d))));

    private static Gen<BoatLie> Lie(Rack[] racks) =>
        from lie in Gen.Elements(Core.Lie.Upright, Core.Lie.Inverted)
        from day in Day()
        from level in Gen.OneOf(
            Attitude().Select(HullLevel (a) => new HullLevel.Read(a)),
            Gen.Constant<HullLevel>(new HullLevel.BubbleCentred()),
            Gen.Constant<HullLevel>(new HullLevel.ByEye()),
            Gen.Elements(racks).Select(HullLevel (r) => new HullLevel.OfRack(r)))
        select new BoatLie(lie, level, day);

    private static Gen<HullAttitude> Attitude() =>
        from bowHigh in Degrees(30)
        from portLow in Degrees(30)
        select HullAttitude.FromDegrees(bowHigh, portLow);

    /// <summary>Few days, so that lyings meet on one.</summary>
    private static Gen<DateOnly?> Day() => Gen.Elements<DateOnly?>(null, new(2026, 5, 4), new(2026, 11, 12));

    /// <summary>Half degrees, numbers of seventeen digits, and numbers that are written with a power of ten.</summary>
    private static Gen<double> Degrees(int most) => Gen.OneOf(
        Gen.Choose(-2 * most, 2 * most).Select(n => n / 2.0),
        Gen.Choose(-most * 997, most * 997).Select(n => n / 997.0),
        Gen.Choose(-most, most).Select(n => n * 1.3e-7));

    /// <summary>No two numbers make names that differ only in case and spaces.</summary>
    private static Gen<string> Name(int number) =>
        from beginning in Gen.Elements(s_beginnings)
        from ending in Gen.Elements(s_endings)
        select $"{beginning}{number}.{ending}";
}
