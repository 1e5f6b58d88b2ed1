using Gatewright.Core.Mending;

namespace Gatewright.Core.Changing;

/// <summary>The shelf while a change is planned: what is taken is gone, and what comes out of a gate may go into another.</summary>
internal sealed class ShelfInUse(Stores? stores)
{
    private readonly Dictionary<Part, int> _left = stores is null ? [] : stores.Parts.ToDictionary(p => p.Part, p => p.Count);
    private readonly List<Part> _taken = [];
    private readonly List<Part> _freed = [];

    /// <summary>Every part taken.</summary>
    public IReadOnlyList<PartCount> Taken => PartCount.Of(_taken);

    /// <summary>Every part that came out.</summary>
    public IReadOnlyList<PartCount> Freed => PartCount.Of(_freed);

    /// <summary>What there is too little of; nothing where the shelf is not known.</summary>
    public IReadOnlyList<PartCount> Missing => stores is null
        ? []
        : [.. _left.Where(p => p.Value < 0).Select(p => new PartCount(p.Key, -p.Value)).OrderBy(p => p.Part)];

    public bool Has(Part part) => stores is null || _left.GetValueOrDefault(part) > 0;

    /// <summary>The sizes of which there is one; all of them where there is none of any, or the shelf is not known.</summary>
    public IReadOnlyList<double> Sizes(PartKind kind, IReadOnlyList<double> all)
    {
        List<double> there = [.. all.Where(size => Has(new(kind, size)))];
        return there.Count > 0 ? there : all;
    }

    public void Take(IReadOnlyList<Part> parts)
    {
        foreach (Part part in parts)
        {
            _taken.Add(part);
            _left[part] = _left.GetValueOrDefault(part) - 1;
        }
    }

    public void Give(Part part)
    {
        _freed.Add(part);
        _left[part] = _left.GetValueOrDefault(part) + 1;
    }
}
