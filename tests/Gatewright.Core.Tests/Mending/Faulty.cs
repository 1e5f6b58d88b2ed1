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

    private static readonly GatePlace ItsGate = new(Seat, Side.Port);
    private static readonly GatePlace Across = new(Seat, Side.Starboard);

    /// <summary>States whose remedies together are of every kind that changes a gate.</summary>
    public static readonly IReadOnlyList<(GateState State, Cause[] Causes)> Cases =
    [
        (GateState.FromDegrees(6.2, 0, 0), [Cause.GatePitch]),
        (GateState.FromDegrees(4, 3.1, 0), [Cause.PinAft]),
        (GateState.FromDegrees(4, -2.2, 0), [Cause.PinAft]),
        (GateState.FromDegrees(4, 0, 2.7), [Cause.PinOut]),
        (GateState.FromDegrees(4, 0, -3.4), [Cause.PinOut]),
        (GateState.FromDegrees(4, 2.4, -1.8), [Cause.Rigger]),
        (GateState.FromDegrees(4, 2.4, 0), [Cause.Rigger]),
        (GateState.FromDegrees(4, 0, 2.4), [Cause.Rigger]),
    ];

    public static IReadOnlyList<Remedy> RemediesAtGates =>
    [
        .. Cases.SelectMany(c => c.Causes.SelectMany(cause => Remedies(Gate(c.State), cause))),
        .. Exchanged,
    ];

    private static IReadOnlyList<Remedy> Exchanged
    {
        get
        {
            var context = new BoatContext
            {
                Reports = [new(ReportKind.Refitted, ItsGate), new(ReportKind.Refitted, Across)],
                LastGood = new Dictionary<GatePlace, PinLean> { [ItsGate] = PinLean.FromDegrees(0, 0), [Across] = PinLean.FromDegrees(-2, 0) },
            };
            BoatCheck check = Gate(GateState.FromDegrees(4, 2, 0), context: context);
            return
            [
                .. Gatewright.Core.Mending.Remedies.For(check, new CausePart(Cause.WrongSeat, ItsGate, Across), ItsGate, MendingSettings.Default),
                .. Gatewright.Core.Mending.Remedies.For(check, new CausePart(Cause.WrongSeat, ItsGate), ItsGate, MendingSettings.Default),
            ];
        }
    }

    public static IReadOnlyList<Remedy> RemediesElsewhere
    {
        get
        {
            BoatCheck check = Gate(GateState.FromDegrees(4, 0, 0));
            var sleeve = new Reading(
                ReadItem.Sleeve, ItsGate, check.Readings.Readings[1].At, Angle.FromDegrees(2.5), check.Readings.Readings[0].Lie, check.Readings.Readings[0].Gauge);
            BoatCheck slipped = BoatCheck.Of(
                check.Readings with { Readings = [.. check.Readings.Readings, sleeve, sleeve] }, BoatContext.None, CheckSettings.Default);
            return
            [
                .. Gatewright.Core.Mending.Remedies.For(check, new CausePart(Cause.HullLevel), ItsGate, MendingSettings.Default),
                .. Gatewright.Core.Mending.Remedies.For(check, new CausePart(Cause.GaugeZero, Gauge: "gauge"), ItsGate, MendingSettings.Default),
                .. Gatewright.Core.Mending.Remedies.For(slipped, new CausePart(Cause.Sleeve, ItsGate), ItsGate, MendingSettings.Default),
            ];
        }
    }

    public static IEnumerable<Remedy> EveryRemedy => RemediesAtGates.Concat(RemediesElsewhere);

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
