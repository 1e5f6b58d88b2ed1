using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Words;

namespace Gatewright.Core.Tests.Support;

/// <summary>Boats judged by the default rule.</summary>
internal static class Judged
{
    public static BoatVerdict Boat(
        Standard standard, IReadOnlyList<Reading> readings, IPitchForecast? forecast = null, string boatClass = "8+")
    {
        var boat = new BoatReadings("the boat", BoatClass.Parse(boatClass), readings);
        var corrected = CorrectedReadings.Of(readings, Taken.Settings);
        return new Judge(standard, DecisionRule.Default, Taken.Settings).Boat(boat, corrected, forecast ?? FixedForecast.Healthy);
    }

    public static GateVerdict Gate(Standard standard, params Reading[] readings) =>
        Assert.Single(Boat(standard, readings).Gates);

    /// <summary>Every station of one gate, the boat upright with the bubble centred.</summary>
    public static GateVerdict Gate(Standard standard, double atCatch, double abeam, double atFinish, BoatLie? lie = null) => Gate(
        standard,
        Taken.Gate(Taken.Seat(3), Station.Catch, atCatch, lie),
        Taken.Gate(Taken.Seat(3), Station.Abeam, abeam, lie),
        Taken.Gate(Taken.Seat(3), Station.Finish, atFinish, lie));

    public static IEnumerable<(ReasonKind Kind, Station Station, Verdict Verdict)> Grounds(this GateVerdict gate) =>
        gate.Reasons.Select(r => (r.Kind, r.Station, r.Verdict));

    public static IEnumerable<string> Sentences(this BoatVerdict boat) =>
        boat.Gates.SelectMany(gate => gate.Reasons.Select(reason => Wording.English.Reasons.Of(gate.Gate, reason, boat.Standard)));
}
