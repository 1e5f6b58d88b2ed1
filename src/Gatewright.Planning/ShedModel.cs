using Gatewright.Core.Mending;
using Gatewright.Core.Mending.Options;
using Gatewright.Planning.Choosing;

namespace Gatewright.Planning;

/// <summary>The boats of a shed as a choice: a group a gate, a resource a part, two bundles a boat.</summary>
internal sealed class ShedModel
{
    private readonly List<Part> _parts;
    private readonly List<int> _firstGroup = [];
    private readonly List<IReadOnlyList<GateOption>> _gates;

    /// <param name="boats">The boats.</param>
    /// <param name="stores">What is on the shelf.</param>
    /// <param name="canBuy">Whether more can be bought.</param>
    public ShedModel(IReadOnlyList<BoatWork> boats, Stores stores, bool canBuy)
    {
        Boats = boats;
        _gates = [.. boats.SelectMany(b => b.Gates)];
        _parts = [.. _gates.SelectMany(options => options).SelectMany(o => o.Parts).Distinct().Order()];
        int group = 0;
        foreach (BoatWork boat in boats)
        {
            _firstGroup.Add(group);
            group += boat.Gates.Count;
        }

        Dictionary<Part, int> places = _parts.Select((part, i) => (part, i)).ToDictionary(p => p.part, p => p.i);
        Choices = new(
            [.. _gates.Select(options => (IReadOnlyList<Choice>)[.. options.Select(o => Choice(o, places))])],
            [.. _parts.Select(part => new Resource(stores.Count(part), canBuy))],
            [.. boats.Select((_, i) => AboveFloors(i)), .. boats.Select((_, i) => Inside(i))]);
    }

    public IReadOnlyList<BoatWork> Boats { get; }

    public ChoiceModel Choices { get; }

    /// <summary>Nothing is done at any gate.</summary>
    public IReadOnlyList<int> Nothing => new int[_gates.Count];

    public Aim MostAboveFloors => new Aim.OfBundles(AimNames.AboveFloors, [.. Enumerable.Range(0, Boats.Count)]);

    public Aim MostInside => new Aim.OfBundles(AimNames.Inside, [.. Enumerable.Range(Boats.Count, Boats.Count)]);

    public Aim LeastDeviation => Least(AimNames.Deviation, o => o.Verdict.Deviation);

    /// <summary>Fewest parts, then least time; of plans alike in all else, the one that sets right what is wrong.</summary>
    public Aim LeastWork => new RankedAims(
        Least(AimNames.Parts, o => o.Parts.Count),
        Least(AimNames.Minutes, o => o.Minutes),
        Least(AimNames.MadeUpFor, o => o.MakesUpFor is null ? 0 : 1));

    public static Aim FewestBought => new Aim.OfPurchases(AimNames.Bought);

    /// <summary>As many jobs of an earlier plan as can be are kept.</summary>
    public Aim MostKept(IReadOnlyList<int> earlier) => new Aim.OfOptions(
        AimNames.Kept,
        true,
        [.. _gates.Select((options, group) => (IReadOnlyList<int>)[.. options.Select((option, i) =>
            !option.IsLeft && i == earlier[group] ? 1 : 0)])]);

    /// <summary>A boat when what was chosen is done.</summary>
    public BoatState State(IReadOnlyList<int> chosen, int boat) => new(
        [.. Boats[boat].Gates.Select((options, i) => options[chosen[_firstGroup[boat] + i]])],
        Choices.Achieves(chosen, boat),
        Choices.Achieves(chosen, Boats.Count + boat));

    /// <summary>What a choice takes beyond what is on the shelf.</summary>
    public IReadOnlyList<PartCount> Bought(IReadOnlyList<int> chosen) =>
        [.. Choices.Used(chosen)
            .Select((used, i) => new PartCount(_parts[i], used - Choices.Resources[i].Capacity))
            .Where(bought => bought.Count > 0)];

    private Aim.OfOptions Least(string name, Func<GateOption, int> worth) => new(
        name, false, [.. _gates.Select(options => (IReadOnlyList<int>)[.. options.Select(worth)])]);

    private Bundle AboveFloors(int boat) => new(Members(boat, o => o.Verdict.IsAboveFloors), []);

    private Bundle Inside(int boat) => new(Members(boat, o => o.Verdict.IsInside), Pairs(boat));

    private IReadOnlyList<Member> Members(int boat, Func<GateOption, bool> allows) =>
        [.. Boats[boat].Gates.Select((options, i) => new Member(_firstGroup[boat] + i, [.. options.Select(allows)]))];

    private List<Pair> Pairs(int boat)
    {
        var pairs = new List<Pair>();
        var range = new BoatRange(Boats[boat].Check);
        IReadOnlyList<IReadOnlyList<GateOption>> gates = Boats[boat].Gates;
        for (int one = 0; one < gates.Count; one++)
        {
            for (int other = 0; other < one; other++)
            {
                pairs.Add(new(
                    _firstGroup[boat] + one,
                    _firstGroup[boat] + other,
                    [.. gates[one].Select(o => (IReadOnlyList<bool>)[.. gates[other].Select(p => range.Allows(o, p))])]));
            }
        }

        return pairs;
    }

    private static Choice Choice(GateOption option, Dictionary<Part, int> places) =>
        new([.. PartCount.Of(option.Parts).Select(c => new Use(places[c.Part], c.Count))]);
}
