using Gatewright.Core.Changing;
using Gatewright.Core.Mending;
using Gatewright.Core.Rig;

namespace Gatewright.Core.Tests.Changing;

/// <summary>Boats to change.</summary>
internal static class Rigs
{
    /// <summary>Riggers come back as they went and figures are exact: what is counted then is the steps alone.</summary>
    public static ChangeSettings Exact { get; } = ChangeSettings.Default with
    {
        RefitCentimetres = 0,
        Mending = MendingSettings.Default with { NewPinU = default },
        MayExchangeRiggers = true,
    };

    public static IReadOnlyList<GatePlace> Gates(BoatClass boatClass) => boatClass.Rowing == Rowing.Scull
        ? [.. Enumerable.Range(1, boatClass.Seats).SelectMany(seat => new GatePlace[] { new(seat, Side.Port), new(seat, Side.Starboard) })]
        : [.. Enumerable.Range(1, boatClass.Seats).Select(seat => new GatePlace(seat, (boatClass.Seats - seat) % 2 == 0 ? Side.Port : Side.Starboard))];

    /// <summary>A boat of which every gate stands alike: spread 85 or span 159, height 17, pitch 4 on upright pins; oars 373 and 115, or 288 and 88.</summary>
    public static RigOfBoat Even(string className, double u = 0.1)
    {
        var boatClass = BoatClass.Parse(className);
        bool isScull = boatClass.Rowing == Rowing.Scull;
        IReadOnlyList<GatePlace> gates = Gates(boatClass);
        var values = new List<RigValue>();
        foreach (int seat in gates.Select(g => g.Seat).Distinct())
        {
            values.Add(Value(isScull ? RigItem.Span : RigItem.Spread, new(seat, null), isScull ? 159 : 85, u));
        }

        foreach (GatePlace gate in gates)
        {
            var place = new RigPlace(gate.Seat, gate.Side);
            values.Add(Value(RigItem.Height, place, 17, u));
            values.Add(Value(RigItem.LeanAft, place, 0, u));
            values.Add(Value(RigItem.LeanOut, place, 0, u));
            values.Add(Value(RigItem.GatePitch, place, 4, u));
            values.Add(Value(RigItem.PitchAbeam, place, 4, u));
            values.Add(Value(RigItem.OarLength, place, isScull ? 288 : 373, u));
            values.Add(Value(RigItem.Inboard, place, isScull ? 88 : 115, u));
        }

        return RigOfBoat.Of("Teal", boatClass, gates, values);
    }

    public static RigOfBoat With(this RigOfBoat rig, RigItem item, RigPlace place, double value, double u = 0.1) => rig with
    {
        Values = [.. rig.Values.Where(v => v.Item != item || v.Place != place), Value(item, place, value, u)],
    };

    /// <summary>Riggers named after the gates they are on: "2P".</summary>
    public static RigOfBoat Marked(this RigOfBoat rig) => rig with { Riggers = [.. rig.Gates.Select(g => new RigMark(g, Mark(g)))] };

    public static string Mark(GatePlace gate) => FormattableString.Invariant($"{gate.Seat}{(gate.Side == Side.Port ? 'P' : 'S')}");

    public static ChangePlan To(this RigOfBoat rig, RigOfBoat other, ChangeSettings? settings = null) =>
        ChangePlan.Of(rig, TargetRig.Like(other, isSameBoat: true), settings ?? ChangeSettings.Default);

    private static RigValue Value(RigItem item, RigPlace place, double value, double u) => new(item, place, new(value, u));
}
