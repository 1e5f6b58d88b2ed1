using Gatewright.Planning.Choosing;

namespace Gatewright.Planning.Tests.Choosing;

/// <summary>A small model drawn at random, with everything a model can have, and aims for it.</summary>
internal sealed class RandomModel
{
    private readonly Random _random;

    public RandomModel(int seed)
    {
        _random = new(seed);
        int resources = _random.Next(1, 4);
        List<IReadOnlyList<Choice>> groups = [.. Many(2, 6, () => (IReadOnlyList<Choice>)[
            Choice.Free, .. Many(0, 4, () => new Choice([.. Uses(resources)]))])];
        Model = new(
            groups,
            [.. Enumerable.Range(0, resources).Select(_ => new Resource(_random.Next(4), _random.Next(3) == 0))],
            [.. Many(1, 4, () => Bundle(groups))]);
        Aims =
        [
            new Aim.OfBundles("bundles", [.. Enumerable.Range(0, Model.Bundles.Count)]),
            new Aim.OfPurchases("bought"),
            Worth("worth", _random.Next(2) == 0),
            new RankedAims(Worth("first", false), Worth("second", false), Worth("third", false)),
        ];
    }

    public ChoiceModel Model { get; }

    public IReadOnlyList<Aim> Aims { get; }

    public IReadOnlyList<int> Nothing => new int[Model.Groups.Count];

    private IEnumerable<T> Many<T>(int least, int below, Func<T> draw) =>
        [.. Enumerable.Range(0, _random.Next(least, below)).Select(_ => draw())];

    private IEnumerable<Use> Uses(int resources) => Enumerable.Range(0, resources)
        .Where(_ => _random.Next(2) == 0)
        .Select(resource => new Use(resource, _random.Next(1, 3)));

    private Aim.OfOptions Worth(string name, bool isMost) => new(
        name, isMost, [.. Model.Groups.Select(g => (IReadOnlyList<int>)[.. g.Select(_ => _random.Next(4))])]);

    private Bundle Bundle(List<IReadOnlyList<Choice>> groups)
    {
        List<int> members = [.. Enumerable.Range(0, groups.Count).Where(_ => _random.Next(3) > 0)];
        return new(
            [.. members.Select(g => new Member(g, Flags(groups[g].Count)))],
            [.. members.Zip(members.Skip(1)).Select(p => new Pair(
                p.First, p.Second, [.. groups[p.First].Select(_ => Flags(groups[p.Second].Count))]))]);
    }

    private IReadOnlyList<bool> Flags(int count) => [.. Enumerable.Range(0, count).Select(_ => _random.Next(4) > 0)];
}
