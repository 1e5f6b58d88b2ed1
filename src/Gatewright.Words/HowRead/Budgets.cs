using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;

namespace Gatewright.Words.HowRead;

/// <summary>Which readings decided something about a boat, so that their uncertainty is worth telling part by part.</summary>
public static class Budgets
{
    /// <summary>Whether nothing decided against the boat, so that the reading nearest to a limit is told instead.</summary>
    public static bool IsNearest(BoatCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        return !Deciding(check).Any();
    }

    /// <summary>The readings that decided something; of a boat that is good, the one nearest to a limit.</summary>
    public static IReadOnlyList<CorrectedPitch> Of(BoatCheck check) =>
        !IsNearest(check) ? [.. Deciding(check).Distinct()]
        : Nearest(check) is { } nearest ? [nearest]
        : [];

    private static IEnumerable<CorrectedPitch> Deciding(BoatCheck check) =>
        from gate in check.Verdict.Gates
        from reason in gate.Reasons
        where reason is { Read: true, Item: ReadItem.Gate }
        from pitch in Behind(check.Corrected, gate.Gate, reason)
        where pitch is not null
        select pitch;

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
