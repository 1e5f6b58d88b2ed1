namespace Gatewright.Planning.Choosing;

/// <summary>
/// Says beforehand which options of a bundle's groups can never be part of what it achieves: those that go with no option
/// of some other group. Most of what pairs demand is settled by this, since most gates of a boat are left as they are.
/// </summary>
internal static class PairReduction
{
    /// <summary>The bundle with fewer options allowed, and without the pairs that no longer forbid anything.</summary>
    public static Bundle Of(Bundle bundle)
    {
        var allowed = bundle.Members.ToDictionary(m => m.Group, m => m.Allowed.ToArray());
        bool changed;
        do
        {
            changed = false;
            foreach (Pair pair in bundle.Pairs)
            {
                changed |= Tighten(allowed[pair.First], allowed[pair.Second], (one, other) => pair.Together[one][other]);
                changed |= Tighten(allowed[pair.Second], allowed[pair.First], (one, other) => pair.Together[other][one]);
            }
        }
        while (changed);

        return new(
            [.. bundle.Members.Select(m => m with { Allowed = allowed[m.Group] })],
            [.. bundle.Pairs.Where(pair => Forbids(pair, allowed[pair.First], allowed[pair.Second]))]);
    }

    private static bool Tighten(bool[] allowed, bool[] others, Func<int, int, bool> together)
    {
        bool changed = false;
        for (int option = 0; option < allowed.Length; option++)
        {
            if (allowed[option] && !Places(others).Any(other => together(option, other)))
            {
                allowed[option] = false;
                changed = true;
            }
        }

        return changed;
    }

    private static bool Forbids(Pair pair, bool[] first, bool[] second) =>
        Places(first).Any(one => Places(second).Any(other => !pair.Together[one][other]));

    private static IEnumerable<int> Places(bool[] allowed) => Enumerable.Range(0, allowed.Length).Where(i => allowed[i]);
}
