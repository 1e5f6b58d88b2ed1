using Gatewright.Core;
using Gatewright.Core.Advising;
using Gatewright.Core.Checking;
using Gatewright.Core.Judging;
using Gatewright.Core.Mending;
using Gatewright.Words;

namespace Gatewright.Journal.Exchange.Check;

/// <summary>Turns advice and remedies into the document. A boat that is good is asked neither.</summary>
internal static class MendingMapping
{
    public static CheckedNext? Next(BoatCheck check) =>
        check.Verdict.Verdict != Verdict.Good && Advisor.For(check, AdvisingSettings.Default).Next is { } next
            ? Next(next)
            : null;

    public static IReadOnlyList<CheckedRemedy> OfGate(BoatCheck check, GateVerdict gate) => gate.Verdict == Verdict.Good
        ? []
        : [.. Remedies.For(check, gate.Gate, MendingSettings.Default).Select(Remedy)];

    public static IReadOnlyList<CheckedRemedy> OfBoat(BoatCheck check) => check.Verdict.Verdict == Verdict.Good
        ? []
        : [.. Remedies.ForBoat(check).Select(Remedy)];

    private static CheckedRemedy Remedy(Remedy remedy) => new(
        remedy.Kind.Code(),
        CheckMapping.Part(remedy.Part),
        Wording.English.Remedies.Instruction(remedy),
        [.. remedy.Parts.Select(CheckedSupply.Of)],
        remedy.Minutes,
        Wording.English.Cautions.Each(remedy.Cautions),
        [.. remedy.Expected.Select(CheckedExpectation.Of)]);

    private static CheckedNext Next(NextReading next) => new(
        next.Choice.Item.Code(),
        next.Choice.Gate?.Seat,
        next.Choice.Gate?.Side.Word(),
        next.Choice.At is { } at ? Codes.Of(at) : null,
        next.Choice.Gauge,
        Wording.English.Next.Of(next.Choice),
        // Never negative but for the quadrature's error.
        Rounded.Probability(Math.Max(0, next.Bits)),
        next.Seconds,
        next.Scale.Code(),
        [.. next.Outcomes.Select(Outcome)]);

    private static CheckedOutcome Outcome(ReadingOutcome outcome) => new(
        outcome.From is { } from ? Rounded.Degrees(from) : null,
        outcome.To is { } to ? Rounded.Degrees(to) : null,
        Rounded.Probability(outcome.Chance),
        CheckMapping.Story(outcome.Story));
}
