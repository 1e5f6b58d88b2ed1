using Gatewright.Core.Measuring;

namespace Gatewright.Journal.Exchange;

/// <summary>The racks that some boats lay on, after making sure that name and date tell them apart on reading.</summary>
internal sealed class WrittenRacks
{
    private readonly NameTable<RackRows> _named = new(name => new(name));
    private readonly List<Rack> _all = [];

    private WrittenRacks()
    {
    }

    /// <summary>The racks, each level of each once, in the order of first use.</summary>
    public IReadOnlyList<Rack> All => _all;

    /// <exception cref="ArgumentException">Reading would give a boat another level of its rack.</exception>
    public static WrittenRacks Of(IEnumerable<BoatLie> lies)
    {
        var racks = new WrittenRacks();
        (BoatLie Lie, Rack Rack)[] used = [.. lies.Select(l => (l, (l.Level as HullLevel.OfRack)?.Rack)).Where(u => u.Rack is not null)!];
        foreach (Rack rack in used.Select(u => u.Rack).Distinct())
        {
            racks.Add(rack);
        }

        foreach ((BoatLie lie, Rack rack) in used)
        {
            if (racks.Rows(rack).On(lie.Date) != rack)
            {
                throw TwoLevels(rack);
            }
        }

        return racks;
    }

    private void Add(Rack rack)
    {
        if (Rows(rack).Contradicts(rack, default) is not null)
        {
            throw TwoLevels(rack);
        }

        _all.Add(rack);
    }

    private RackRows Rows(Rack rack) => _named.Named(NameText.Shielded(rack.Name));

    private static ArgumentException TwoLevels(Rack rack) => new(
        $"Rack '{rack.Name}' has several levels, and the dates do not tell which of them a boat lay on.");
}
