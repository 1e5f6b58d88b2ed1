using Gatewright.Cli.Drawing;
using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;

namespace Gatewright.Cli.CheckShed.Words;

/// <summary>Which readings decided something, and where their uncertainty comes from.</summary>
internal static class BudgetWords
{
    /// <summary>The part of a budget and how it is called.</summary>
    public static IReadOnlyList<(string Name, Func<UncertaintyBudget, double> Degrees)> Parts { get; } =
    [
        ("gauge step", budget => budget.Resolution),
        ("read again", budget => budget.Repeatability),
        ("oar held", budget => budget.HeldAngle),
        ("boat level", budget => budget.Level),
        ("gauge zero", budget => budget.GaugeZero),
        ("in all", budget => budget.CombinedDegrees),
    ];

    /// <summary>What is said under the figures.</summary>
    public const string InAll =
        "In all is the root of the sum of squares. In a difference of two readings, what they share of level and "
        + "gauge zero drops out.";

    /// <summary>Whether nothing decided against the boat, so that the reading nearest to a limit is told instead.</summary>
    public static bool IsNearest(BoatCheck check) => !Deciding(check).Any();

    /// <summary>The readings that decided something; of a boat that is good, the one nearest to a limit.</summary>
    public static IReadOnlyList<CorrectedPitch> Of(BoatCheck check) =>
        !IsNearest(check) ? [.. Deciding(check).Distinct()]
        : Nearest(check) is { } nearest ? [nearest]
        : [];

    /// <summary>"Seat 3 port at the catch, 2.4° ± 0.3: gauge step 0.14, … in all 0.34."</summary>
    public static string Sentence(CorrectedPitch pitch)
    {
        string repeats = pitch.Repeats > 1 ? $" (from {pitch.Repeats} readings)" : string.Empty;
        IEnumerable<string> parts = Parts.Select(part => $"{part.Name} {Figures.Degrees(part.Degrees(pitch.Budget), 2)}");
        return $"{pitch.Gate} {pitch.At.Phrase()}, {Figures.Loose(pitch.Estimate)}{repeats}: {string.Join(", ", parts)}.";
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
}
