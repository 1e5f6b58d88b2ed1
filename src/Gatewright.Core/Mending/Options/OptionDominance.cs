using Gatewright.Core.Judging;

namespace Gatewright.Core.Mending.Options;

/// <summary>
/// Which of two options for one gate is never needed: whatever plan has it, the plan with the other in its place is
/// allowed too and no worse.
/// </summary>
/// <remarks>
/// One option makes another needless when it takes no part the other does not take, no more time, is above the floors
/// and inside the limits whenever the other is, and deviates no more. Range is the one demand that several gates meet
/// together. In a boat that keeps its standard every gate lies between the limits l and h, so all that counts is which
/// pitches there an option goes with: those within the largest range r of it. Option a goes with whatever b goes with when
/// max(l, a − r) ≤ max(l, b − r) and min(h, a + r) ≥ min(h, b + r), at every station where the gate is judged.
/// </remarks>
/// <param name="standard">The standard.</param>
public sealed class OptionDominance(Standard standard)
{
    /// <summary>Those of some options of one gate that are needed, in their order; of options alike, the first.</summary>
    /// <param name="options">The options, the gate as it is first: each option has its pitches judged at the same stations.</param>
    public IReadOnlyList<GateOption> Undominated(IReadOnlyList<GateOption> options)
    {
        ArgumentNullException.ThrowIfNull(options);
        List<GateOption> byParts = [.. options.OrderBy(o => o.Parts.Count).ThenBy(o => o.Minutes).ThenBy(o => o.Verdict.Deviation)];
        var kept = new List<GateOption>();
        foreach (GateOption option in byParts)
        {
            if (!kept.Exists(k => MakesNeedless(k, option)))
            {
                kept.RemoveAll(k => MakesNeedless(option, k));
                kept.Add(option);
            }
        }

        var needed = kept.ToHashSet();
        return [.. options.Where(needed.Contains)];
    }

    /// <summary>Whether one option makes another needless; two alike make each other so.</summary>
    public bool MakesNeedless(GateOption one, GateOption other)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        OptionVerdict its = one.Verdict;
        OptionVerdict others = other.Verdict;
        return its.Deviation <= others.Deviation
            && one.Minutes <= other.Minutes
            && (its.IsAboveFloors || !others.IsAboveFloors)
            && (its.IsInside || !others.IsInside)
            && (one.MakesUpFor is null || other.MakesUpFor is not null)
            && IsPartOf(one.Parts, other.Parts)
            && (!others.IsInside || Stations.All.All(s => GoesWithAsMuch(one, other, s)));
    }

    /// <summary>Whether every part of a rising list is on another.</summary>
    private static bool IsPartOf(IReadOnlyList<Part> few, IReadOnlyList<Part> many)
    {
        int found = 0;
        for (int i = 0; i < many.Count && found < few.Count; i++)
        {
            found += many[i] == few[found] ? 1 : 0;
        }

        return found == few.Count;
    }

    private bool GoesWithAsMuch(GateOption one, GateOption other, Station station)
    {
        if (one.Thousandths(station) is not { } its || other.Thousandths(station) is not { } others)
        {
            return true;
        }

        int lowest = Thousandths(standard.At(station).Lowest.Degrees);
        int highest = Thousandths(standard.At(station).Highest.Degrees);
        int range = Thousandths(standard.LargestRange.Degrees);
        return Math.Max(lowest, its - range) <= Math.Max(lowest, others - range)
            && Math.Min(highest, its + range) >= Math.Min(highest, others + range);
    }

    private static int Thousandths(double degrees) => (int)Math.Round(1000 * degrees);
}
