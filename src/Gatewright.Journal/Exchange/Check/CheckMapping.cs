using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Judging;
using Gatewright.Journal.Standing;
using Gatewright.Words;

namespace Gatewright.Journal.Exchange.Check;

/// <summary>Turns checked boats into the document.</summary>
public static class CheckMapping
{
    private const double WorthWriting = 0.01;
    private const int MostStories = 10;

    /// <summary>One boat as written. Asks for its diagnosis.</summary>
    /// <param name="check">Its check.</param>
    /// <param name="changed">Its gates that were changed and not read since; null for none.</param>
    public static CheckedBoat Boat(BoatCheck check, ChangedUnread? changed = null)
    {
        ArgumentNullException.ThrowIfNull(check);
        List<CheckedLie> lies = [.. check.Diagnosis.Levels.Select(level => Lie(level, check))];
        CheckedLie main = lies.MaxBy(lie => lie.Readings)!;
        return new(
            check.Verdict.Boat,
            check.Verdict.Class.Name,
            check.Verdict.Verdict.Word(),
            check.Verdict.StaysAshore || changed?.KeepAshore == true,
            new(main.BowHigh, main.PortLow),
            lies,
            [.. check.Verdict.Gates.Select(gate => Seat(gate, check))],
            [.. check.Diagnosis.Stories.Where(s => s.Probability >= WorthWriting).Take(MostStories).Select(Story)],
            MendingMapping.Next(check),
            MendingMapping.OfBoat(check),
            [.. check.Verdict.NotRead.Select(gate => new CheckedGate(gate.Seat, gate.Side?.Word()))],
            [.. (changed?.Changes ?? []).Select(Change)]);
    }

    private static CheckedChange Change(GateChange change) =>
        new(change.Gate.Seat, change.Gate.Side.Word(), change.By.Word(), Codes.Of(change.On)!, Wording.English.Boats.ReadAgain(change));

    private static CheckedLie Lie(LevelDiagnosis level, BoatCheck check) => new(
        level.Lie.Lie.Word(),
        Codes.Of(level.Lie.Date),
        Codes.Of(level.Lie.Level),
        check.Readings.Readings.Count(reading => reading.Lie == level.Lie),
        Quantity.Of(level.BowHigh),
        Quantity.Of(level.PortLow));

    private static CheckedSeat Seat(GateVerdict gate, BoatCheck check)
    {
        GateDiagnosis diagnosis = check.Diagnosis.Gates.First(g => g.Gate == gate.Gate);
        return new(
            gate.Gate.Seat,
            gate.Gate.Side.Word(),
            gate.Verdict.Word(),
            gate.StaysAshore,
            [.. gate.Reasons.Select(reason => Reason(gate.Gate, reason, check.Verdict.Standard))],
            [.. gate.Pitches.Select(Pitch)],
            Quantity.Of(diagnosis.GatePitch),
            Quantity.Of(diagnosis.LeanAft),
            Quantity.Of(diagnosis.LeanOut),
            [.. diagnosis.Causes.Select(c => new CheckedCause(c.Code, Rounded.Probability(c.Probability)))],
            MendingMapping.OfGate(check, gate));
    }

    private static CheckedPitch Pitch(StationPitch pitch) => new(
        Codes.Of(pitch.At),
        Rounded.Degrees(pitch.At.Angle.Angle),
        pitch.Read,
        Rounded.Degrees(pitch.Pitch.Value),
        Rounded.Degrees(pitch.Pitch.U));

    private static CheckedReason Reason(GatePlace gate, Reason reason, Standard standard) => new(
        Codes.Of(reason.Kind),
        Vocabulary.Items.Word(reason.Item),
        reason.Verdict.Word(),
        reason.Station.Word(),
        Rounded.Degrees(reason.Value.Value),
        Rounded.Degrees(reason.Value.U),
        Rounded.Degrees(reason.Limit),
        Rounded.Probability(reason.Probability),
        reason.Read,
        Gate(reason.Other),
        Wording.English.Reasons.Of(gate, reason, standard));

    internal static CheckedStory Story(Story story) => new(
        story.IsNone ? Causes.NoneCode : string.Join(" + ", story.Parts.Select(part => part.Cause.Code())),
        Rounded.Probability(story.Probability),
        [.. story.Parts.Select(Part)]);

    internal static CheckedPart Part(CausePart part) =>
        new(part.Cause.Code(), part.Gate?.Seat, part.Gate?.Side.Word(), Gate(part.Other), part.Gauge);

    private static CheckedGate? Gate(GatePlace? place) =>
        place is { } gate ? new(gate.Seat, gate.Side.Word()) : null;
}
