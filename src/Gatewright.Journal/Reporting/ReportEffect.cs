using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Judging;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Standing;

namespace Gatewright.Journal.Reporting;

/// <summary>What a report changed in what is thought of a boat.</summary>
/// <param name="Gate">The gate that was told of; null for the whole boat.</param>
/// <param name="IsToBeReadAgain">Whether the gate had been read, and what was read no longer counts since the report.</param>
/// <param name="Before">What was probably wrong with the gate before; null where nothing was known of it.</param>
/// <param name="Now">What is probably wrong with it now; null where nothing is known of it.</param>
/// <param name="Boat">What is probably wrong with the boat now, the likeliest story; null where nothing is known of it.</param>
public sealed record ReportEffect(GatePlace? Gate, bool IsToBeReadAgain, GateDiagnosis? Before, GateDiagnosis? Now, Story? Boat)
{
    /// <summary>Whether the likeliest cause at the gate is another than before.</summary>
    public bool IsAnotherCause => Before is { Causes: [var before, ..] } && Now is { Causes: [var now, ..] } && before.Cause != now.Cause;

    /// <summary>Whether it is likeliest now that nothing is wrong where it was told of.</summary>
    public bool IsLikeliestNothing => Gate is null ? Boat is { IsNone: true } : Now is { Causes: [{ Cause: null }, ..] };

    /// <summary>What a report changed. Asks for the boat's diagnosis, before and after.</summary>
    /// <param name="before">The boat before it; null where nothing was on record.</param>
    /// <param name="after">The boat with it.</param>
    /// <param name="report">The report.</param>
    public static ReportEffect Of(BoatStanding? before, BoatStanding after, Reported report)
    {
        ArgumentNullException.ThrowIfNull(after);
        ArgumentNullException.ThrowIfNull(report);
        GatePlace? gate = report is { Seat: { } seat, Side: { } side } ? new(seat, side) : null;
        GateDiagnosis? was = Diagnosed(before, gate);
        GateDiagnosis? now = Diagnosed(after, gate);
        return new(
            gate,
            Read(before, gate) && !Read(after, gate),
            was,
            now,
            gate is null && after.Check?.Diagnosis.Stories is [{ } likeliest, ..] ? likeliest : null);
    }

    private static GateDiagnosis? Diagnosed(BoatStanding? boat, GatePlace? gate) =>
        gate is null ? null : boat?.Check?.Diagnosis.Gates.FirstOrDefault(g => g.Gate == gate);

    private static bool Read(BoatStanding? boat, GatePlace? gate) =>
        gate is not null && boat?.Check?.Verdict.Gates is { } gates && gates.Any((GateVerdict g) => g.Gate == gate);
}
