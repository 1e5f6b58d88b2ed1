using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Core.Mending;
using Gatewright.Core.Simulating;

namespace Gatewright.Planning.Tests.Sheds;

/// <summary>Boats made up for one test.</summary>
internal static class Rounds
{
    private static readonly MeasuringSettings s_settings = MeasuringSettings.Default;

    /// <summary>
    /// A boat read at three stations, all gates of fours but those given: catch, abeam and finish by seat and side.
    /// </summary>
    public static ShedBoat Boat(
        string name, string boatClass, HullLevel level, params (int Seat, Side Side, double Catch, double Abeam, double Finish)[] others)
    {
        BoatClass type = BoatClass.Parse(boatClass);
        var lie = new BoatLie(Lie.Upright, level);
        Gauge gauge = s_settings.GaugeNamed("gauge");
        IEnumerable<Reading> readings = new BoatPlan(type).Gates.SelectMany(gate => Stations.All.Select(station => new Reading(
            ReadItem.Gate,
            gate,
            s_settings.Angles(type.Rowing).Point(station),
            Angle.FromDegrees(Degrees(others, gate, station)),
            lie,
            gauge)));
        return new(BoatCheck.Of(new(name, type, [.. readings]), BoatContext.None, CheckSettings.Default));
    }

    public static HullLevel Level => new HullLevel.Read(HullAttitude.Level);

    public static Stores Shelf(params (PartKind Kind, double Size, int Count)[] parts) =>
        Stores.Of(parts.Select(p => new PartCount(new(p.Kind, p.Size), p.Count)));

    public static ShedPlan Plan(Stores stores, params ShedBoat[] boats) => new Planner(PlanSettings.Default).Plan(boats, stores);

    public static PlannedBoat Of(this ShedPlan plan, string name) => plan.Boats.Single(b => b.Check.Readings.Boat == name);

    /// <summary>A double with port gate of stroke so low that the blade may dive.</summary>
    public static ShedBoat Diving(string name) => Boat(name, "2x", Level, (2, Side.Port, 1.5, 1.5, 1.5));

    /// <summary>A double with the same gate too steep, which is a matter of comfort.</summary>
    public static ShedBoat Steep(string name) => Boat(name, "2x", Level, (2, Side.Port, 6, 6, 6));

    private static double Degrees(
        (int Seat, Side Side, double Catch, double Abeam, double Finish)[] others, GatePlace gate, Station station)
    {
        int place = Array.FindIndex(others, o => o.Seat == gate.Seat && o.Side == gate.Side);
        return place < 0 ? 4
            : station == Station.Catch ? others[place].Catch
            : station == Station.Abeam ? others[place].Abeam
            : others[place].Finish;
    }
}
