using FsCheck;
using FsCheck.Fluent;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Tests.Support;

/// <summary>What was read on one boat, in the order given and in another.</summary>
public sealed record BoatCase(IReadOnlyList<Reading> Readings, IReadOnlyList<Reading> Shuffled);

/// <summary>
/// Boats with repeats, gaps, several lyings, two gauges, pins and angles of their own among the stations: whatever a
/// long evening in the shed may bring.
/// </summary>
public static class BoatCases
{
    private static readonly BoatLie[] Lies =
    [
        Taken.ByEye,
        Taken.Read(Lie.Upright, 0.3, -0.6),
        Taken.Read(Lie.Inverted, -0.8, 0.5),
        new(Lie.Inverted, new HullLevel.OfRack(new("top", HullAttitude.FromDegrees(0.4, 0.2), Bedding.Firm))),
    ];

    private static readonly Gauge[] Gauges = [Taken.Gauge, Taken.GaugeOf("the other", 0.1, 0.15, 0.3, 0.05)];

    public static Arbitrary<BoatCase> Boats() => (
        from readings in Readings().ArrayOf().Resize(25)
        from shuffled in Gen.Shuffle(readings)
        select new BoatCase(readings, shuffled)).ToArbitrary();

    private static Gen<Reading> Readings() =>
        from item in Gen.Frequency(
            (8, Gen.Constant(ReadItem.Gate)), (1, Gen.Elements(ReadItem.PinAft, ReadItem.PinOut, ReadItem.GatePitch, ReadItem.Sleeve)))
        from seat in Gen.Choose(1, 3)
        from side in Gen.Elements(Side.Port, Side.Starboard)
        from at in Gen.Elements(62.0, 0, -43, 20)
        from half in Gen.Choose(0, 14)
        from lie in Gen.Elements(Lies)
        from gauge in Gen.Elements(Gauges)
        let point = Taken.Settings.Scull.Point(OarAngle.FromDegrees(item == ReadItem.Gate ? at : 0))
        select new Reading(item, new(seat, side), point, Angle.FromDegrees(half / 2.0), lie, gauge);
}
