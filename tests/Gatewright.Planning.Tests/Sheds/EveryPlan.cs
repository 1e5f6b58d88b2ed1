using Gatewright.Core.Mending;

namespace Gatewright.Planning.Tests.Sheds;

/// <summary>The best plan by trying every one.</summary>
internal static class EveryPlan
{
    /// <summary>The best figures, less being better throughout and the first before all, of one outcome for each boat.</summary>
    /// <param name="boats">What can be done to each boat: the parts it takes, and figures that add up over boats.</param>
    /// <param name="isAllowed">Which plans may be made, by the parts they take.</param>
    /// <param name="ofParts">One figure more, that the parts of the whole plan make; it stands at a place among the others.</param>
    /// <param name="place">That place.</param>
    public static long[] Best(
        IReadOnlyList<IReadOnlyList<(IReadOnlyList<PartCount> Parts, long[] Figures)>> boats,
        Func<IReadOnlyList<PartCount>, bool> isAllowed,
        Func<IReadOnlyList<PartCount>, long> ofParts,
        int place)
    {
        long[]? best = null;
        Try(0, [], new long[boats[0][0].Figures.Length]);
        return best!;

        void Try(int boat, IReadOnlyList<PartCount> parts, long[] figures)
        {
            if (!isAllowed(parts))
            {
                return;
            }

            if (boat == boats.Count)
            {
                long[] found = [.. figures[..place], ofParts(parts), .. figures[place..]];
                best = best is null || IsLess(found, best) ? found : best;
                return;
            }

            foreach ((IReadOnlyList<PartCount> more, long[] added) in LeastOfEachParts(boats[boat]))
            {
                Try(boat + 1, [.. Stores.Of(parts).And(more).Parts], [.. figures.Zip(added, (a, b) => a + b)]);
            }
        }
    }

    /// <summary>Whether the first figure that differs is the smaller one.</summary>
    public static bool IsLess(IReadOnlyList<long> one, IReadOnlyList<long> other)
    {
        int differs = Enumerable.Range(0, one.Count).FirstOrDefault(i => one[i] != other[i], -1);
        return differs >= 0 && one[differs] < other[differs];
    }

    /// <summary>Of what takes the same parts, only what has the least figures can be in a best plan.</summary>
    private static IEnumerable<(IReadOnlyList<PartCount> Parts, long[] Figures)> LeastOfEachParts(
        IEnumerable<(IReadOnlyList<PartCount> Parts, long[] Figures)> outcomes) => outcomes
            .GroupBy(o => string.Join(", ", o.Parts))
            .Select(alike => alike.Aggregate((best, next) => IsLess(next.Figures, best.Figures) ? next : best));
}
