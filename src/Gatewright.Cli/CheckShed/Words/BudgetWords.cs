using Gatewright.Cli.Drawing;
using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;

namespace Gatewright.Cli.CheckShed.Words;

/// <summary>Where the uncertainty of each reading that decided something comes from.</summary>
internal static class BudgetWords
{
    /// <summary>One sentence for each; of a boat that is good, the reading nearest to a limit.</summary>
    public static IEnumerable<string> Of(BoatCheck check)
    {
        List<CorrectedPitch> deciding = [.. Deciding(check).Distinct()];
        if (deciding.Count == 0 && Nearest(check) is { } nearest)
        {
            yield return $"Nearest to a limit: {Budget(nearest)}";
        }

        foreach (CorrectedPitch pitch in deciding)
        {
            yield return Budget(pitch);
        }

        if (check.Verdict.Gates.SelectMany(g => g.Reasons).Any(r => r.Kind is ReasonKind.Drop or ReasonKind.Range))
        {
            yield return "In a difference of two readings, what they share of level and gauge zero drops out.";
        }
    }

    private static IEnumerable<CorrectedPitch> Deciding(BoatCheck check)
    {
        foreach (GateVerdict gate in check.Verdict.Gates)
        {
            foreach (Reason reason in gate.Reasons.Where(r => r.Read))
            {
                foreach (CorrectedPitch? pitch in Behind(check.Corrected, gate.Gate, reason))
                {
                    if (pitch is not null)
                    {
                        yield return pitch;
                    }
                }
            }
        }
    }

    private static IEnumerable<CorrectedPitch?> Behind(CorrectedReadings corrected, GatePlace gate, Reason reason) =>
        reason.Kind switch
        {
            ReasonKind.Drop => [At(corrected, gate, Station.Catch), At(corrected, gate, Station.Finish)],
            ReasonKind.Range => [At(corrected, gate, reason.Station), At(corrected, reason.Other ?? gate, reason.Station)],
            _ => [At(corrected, gate, reason.Station)],
        };

    private static CorrectedPitch? At(CorrectedReadings corrected, GatePlace gate, Station station) =>
        corrected.IndexOf(gate, station) is >= 0 and int index ? corrected.Pitches[index] : null;

    private static CorrectedPitch? Nearest(BoatCheck check) =>
        check.Corrected.Pitches
            .Where(p => p.At.Station is not null)
            .MinBy(p => Margin(p, check.Verdict.Standard.At(p.At.Station!.Value)));

    private static double Margin(CorrectedPitch pitch, StationLimits limits) =>
        Math.Min(pitch.Pitch.Degrees - limits.Lowest.Degrees, limits.Highest.Degrees - pitch.Pitch.Degrees)
        / pitch.Budget.CombinedDegrees;

    private static string Budget(CorrectedPitch pitch)
    {
        UncertaintyBudget budget = pitch.Budget;
        string repeats = pitch.Repeats > 1 ? $" (from {pitch.Repeats} readings)" : string.Empty;
        return $"{pitch.Gate} {pitch.At.Phrase()}, {Figures.Loose(pitch.Estimate)}{repeats}: "
            + $"gauge's step {Two(budget.Resolution)}, reading again {Two(budget.Repeatability)}, "
            + $"oar held {Two(budget.HeldAngle)}, boat's level {Two(budget.Level)}, gauge's zero {Two(budget.GaugeZero)}; "
            + $"together {Two(budget.CombinedDegrees)} (root of the sum of squares).";
    }

    private static string Two(double degrees) => Figures.Degrees(degrees, 2);
}
