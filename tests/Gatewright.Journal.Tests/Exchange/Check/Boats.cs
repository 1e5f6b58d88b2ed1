using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;

namespace Gatewright.Journal.Tests.Exchange.Check;

/// <summary>Boats made up for the tests.</summary>
internal static class Boats
{
    private static readonly MeasuringSettings Settings = MeasuringSettings.Default;

    public static BoatLie Lying(Lie lie = Lie.Upright, DateOnly? date = null) =>
        new(lie, new HullLevel.Read(HullAttitude.Level), date);

    /// <summary>One reading of a scull's gate.</summary>
    public static Reading Reading(int seat, Side side, StrokePoint at, double degrees, BoatLie lie) =>
        new(ReadItem.Gate, new(seat, side), at, Angle.FromDegrees(degrees), lie, Settings.GaugeNamed("G1"));

    public static StrokePoint At(Station station) => Settings.Scull.Point(station);

    public static StrokePoint At(double degrees) => Settings.Scull.Point(OarAngle.FromDegrees(degrees));

    /// <summary>A single read at the three stations on either side.</summary>
    public static IEnumerable<Reading> Single(double port, double starboard, BoatLie lie)
    {
        foreach (Station station in Stations.All)
        {
            yield return Reading(1, Side.Port, At(station), port, lie);
            yield return Reading(1, Side.Starboard, At(station), starboard, lie);
        }
    }

    public static BoatCheck Check(string boatClass, params IEnumerable<Reading> readings) =>
        BoatCheck.Of(new("Heron", BoatClass.Parse(boatClass), [.. readings]), BoatContext.None, CheckSettings.Default);
}
