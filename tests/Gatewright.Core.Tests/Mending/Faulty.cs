using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Core.Mending;

namespace Gatewright.Core.Tests.Mending;

/// <summary>
/// A boat with one gate that is what it is said to be, read without error at every station and at its pin, so that
/// what is found is what was put in.
/// </summary>
internal static class Faulty
{
    public const int Seat = 3;

    private static MeasuringSettings Settings => MeasuringSettings.Default;

    public static BoatCheck Gate(
        GateState state, Side side = Side.Port, Lie lie = Lie.Upright, BoatContext? context = null, string boatClass = "4x")
    {
        BoatClass of = BoatClass.Parse(boatClass);
        var lying = new BoatLie(lie, new HullLevel.Read(HullAttitude.Level));
        Gauge gauge = Settings.GaugeNamed("gauge") with { Zero = new(Estimate.FromDegrees(0, 0.05), true) };
        StationAngles angles = Settings.Angles(of.Rowing);
        var faulty = new GatePlace(Seat, side);
        List<GatePlace> gates = [.. Enumerable.Range(1, of.Seats).SelectMany(s => new[] { new GatePlace(s, Side.Port), new GatePlace(s, Side.Starboard) })];
        var readings = new List<Reading>();
        foreach (GatePlace gate in gates)
        {
            GateState its = gate == faulty ? state : GateState.FromDegrees(4, 0, 0);
            readings.AddRange(Stations.All.Select(station => new Reading(
                ReadItem.Gate, gate, angles.Point(station), PitchGeometry.At(angles.At(station), its, gate.Side).Angle, lying, gauge)));
        }

        // Twice each, so that a cause is as good as known.
        StrokePoint abeam = angles.Point(Station.Abeam);
        for (int i = 0; i < 2; i++)
        {
            readings.Add(new(ReadItem.GatePitch, faulty, abeam, state.GatePitch.Angle, lying, gauge));
            readings.Add(new(ReadItem.PinAft, faulty, abeam, state.Pin.Aft.Angle, lying, gauge));
            readings.Add(new(ReadItem.PinOut, faulty, abeam, state.Pin.Out.Angle, lying, gauge));
        }

        return BoatCheck.Of(new("boat", of, readings), context ?? BoatContext.None, CheckSettings.Default);
    }

    public static IReadOnlyList<Remedy> Remedies(BoatCheck check, Cause cause, Side side = Side.Port) => Gatewright.Core.Mending.Remedies.For(
        check, new CausePart(cause, new GatePlace(Seat, side)), new GatePlace(Seat, side), MendingSettings.Default);

    public static Remedy Remedy(BoatCheck check, Cause cause, RemedyKind kind, Side side = Side.Port) =>
        Remedies(check, cause, side).Single(r => r.Kind == kind);
}
