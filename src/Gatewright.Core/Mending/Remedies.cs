using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;

namespace Gatewright.Core.Mending;

/// <summary>The ways to mend the likely causes of a boat.</summary>
public static class Remedies
{
    /// <summary>A cause less likely than this is not worth taking a spanner to: read on first.</summary>
    public const double LikelyEnough = 0.2;

    /// <summary>
    /// Remedies for every cause at one gate that is likely enough, the likeliest cause first, of each the quickest first.
    /// </summary>
    public static IReadOnlyList<Remedy> For(BoatCheck check, GatePlace gate, MendingSettings settings)
    {
        ArgumentNullException.ThrowIfNull(check);
        return [.. Likely(check.Diagnosis, part => part.Touches(gate)).SelectMany(part => For(check, part, gate, settings))];
    }

    /// <summary>Remedies for what the boat shares: its level, a gauge.</summary>
    public static IReadOnlyList<Remedy> ForBoat(BoatCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        return [.. Likely(check.Diagnosis, part => part.Cause.IsBoatWide()).Select(ReadAgain)];
    }

    /// <summary>Remedies for one cause at one gate, the quickest first.</summary>
    public static IReadOnlyList<Remedy> For(BoatCheck check, CausePart part, GatePlace gate, MendingSettings settings)
    {
        ArgumentNullException.ThrowIfNull(check);
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(settings);
        if (part.Cause.IsBoatWide())
        {
            return [ReadAgain(part)];
        }

        if (part.Cause == Cause.Sleeve)
        {
            return [SleeveRemedy.Of(check, part, settings)];
        }

        var bench = new RemedyBench(check, part, gate, settings);
        return [.. (part.Cause switch
        {
            Cause.GatePitch => [bench.InsertSwap()],
            Cause.PinAft => [bench.Backstay(), bench.FootShimAft(), bench.Straighten(), bench.Replace()],
            Cause.PinOut => [bench.PlateWasher(), bench.FootShimOut(), bench.Straighten(), bench.Replace()],
            Cause.WrongSeat => [bench.Exchange()],
            _ => new Remedy?[] { bench.Refit(), bench.SetBothWays(), bench.Repair() },
        }).OfType<Remedy>().OrderBy(r => r.Minutes)];
    }

    private static IEnumerable<CausePart> Likely(Diagnosis diagnosis, Func<CausePart, bool> which) =>
        diagnosis.Weights.Openings
            .Select(o => o.Part)
            .Where(which)
            .Select(part => (Part: part, Probability: diagnosis.Probability(p => p == part)))
            .Where(c => c.Probability >= LikelyEnough)
            .OrderByDescending(c => c.Probability)
            .Select(c => c.Part);

    private static Remedy ReadAgain(CausePart part) => part.Cause == Cause.HullLevel
        ? new(RemedyKind.LevelAgain, part, default, [new Work.ReadLevel()], [], 10, [])
        : new(RemedyKind.CheckGauge, part, default, [new Work.ReverseGauge()], [], 5, []);
}
