using FsCheck.Xunit;
using Gatewright.Core.Oars;
using Gatewright.Core.Tests.Support;

namespace Gatewright.Core.Tests.Oars;

public class OarMatchingTests
{
    [Property]
    public void No_other_choice_is_narrower(byte[] bytes, byte many)
    {
        List<Oar> pool = Pool(bytes, 7);
        int count = 1 + (many % 4);
        MatchedOars? best = OarMatching.Best(pool, count);
        if (pool.Count < count)
        {
            Assert.Null(best);
            return;
        }

        Assert.Equal(count, best!.Oars.Distinct().Count());
        Close.To(best.Spread, Spread([.. best.Oars]), 1e-9);
        Close.To(Choices(pool, count).Min(Spread), best.Spread, 1e-9);
    }

    [Fact]
    public void Four_alike_are_found_among_six()
    {
        Oar[] pool = [Oar("a", 0, 376, 114), Oar("b", 3, 376, 114), Oar("c", 0.2, 376.1, 114), Oar("d", 0, 374, 114), Oar("e", 0.1, 376, 114.2), Oar("f", -0.1, 376, 114)];

        MatchedOars best = OarMatching.Best(pool, 4)!;

        Assert.Equal(["a", "c", "e", "f"], best.Oars.Select(o => o.Key));

        // The widest is the sleeve's: 0.3° of 0.5°.
        Close.To(0.6, best.Spread, 1e-9);
    }

    [Fact]
    public void Pairs_take_one_of_each_side()
    {
        Oar[] pool =
        [
            Oar("p1", 0, 288, 88) with { Side = Side.Port }, Oar("p2", 1, 288, 88) with { Side = Side.Port },
            Oar("s1", 1, 288, 88) with { Side = Side.Starboard }, Oar("s2", 0.1, 288, 88) with { Side = Side.Starboard },
            Oar("s3", 5, 280, 80) with { Side = Side.Starboard }, new("x", "X", Side.Port),
        ];

        IReadOnlyList<MatchedOars> pairs = OarMatching.Pairs(pool);

        Assert.Equal(["p2 s1", "p1 s2"], pairs.Select(p => string.Join(' ', p.Oars.Select(o => o.Key))));
        Close.To(0.2, pairs[1].Spread, 1e-9);
    }

    private static Oar Oar(string key, double sleeve, double length, double inboard) =>
        new(key, key, Sleeve: new(sleeve, 0.3, []), Length: new(length, 0.2, []), Inboard: new(inboard, 0.1, []));

    private static List<Oar> Pool(byte[] bytes, int most) => [.. bytes.Chunk(3).Where(c => c.Length == 3).Take(most)
        .Select((c, i) => Oar($"o{i}", c[0] / 50.0, 370 + (c[1] / 40.0), 110 + (c[2] / 40.0)))];

    private static double Spread(IReadOnlyCollection<Oar> oars) => OarItems.All.SkipLast(1)
        .Max(item => (oars.Max(o => o[item]!.Value) - oars.Min(o => o[item]!.Value)) / OarTolerances.Default[item]);

    private static IEnumerable<List<Oar>> Choices(List<Oar> pool, int count) => Enumerable.Range(0, 1 << pool.Count)
        .Where(bits => System.Numerics.BitOperations.PopCount((uint)bits) == count)
        .Select(bits => pool.Where((_, i) => (bits >> i & 1) == 1).ToList());
}
