using System.Collections.Immutable;

namespace Gatewright.Core.Mending;

/// <summary>The parts on the shelf, counted.</summary>
/// <remarks>
/// A part counted as 0 is on the list all the same: it says that the club can get that size. A part that is not on
/// the list counts 0 too. Two stores are equal only when they are the same object.
/// </remarks>
public sealed class Stores
{
    private readonly ImmutableSortedDictionary<Part, int> _counts;

    private Stores(ImmutableSortedDictionary<Part, int> counts) => _counts = counts;

    /// <summary>A bare shelf.</summary>
    public static Stores Empty { get; } = new(ImmutableSortedDictionary<Part, int>.Empty);

    /// <summary>Every part on the list, by kind and size.</summary>
    public IReadOnlyList<PartCount> Parts => [.. _counts.Select(c => new PartCount(c.Key, c.Value))];

    /// <summary>The parts of some lines; lines of one part add up.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A count is below 0.</exception>
    public static Stores Of(IEnumerable<PartCount> lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        return Empty.And(lines);
    }

    /// <summary>How many there are of a part.</summary>
    public int Count(Part part) => _counts.GetValueOrDefault(part);

    /// <summary>These stores and more parts.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A count is below 0.</exception>
    public Stores And(IEnumerable<PartCount> more)
    {
        ArgumentNullException.ThrowIfNull(more);
        var counts = _counts.ToBuilder();
        foreach ((Part part, int count) in more)
        {
            ArgumentOutOfRangeException.ThrowIfNegative(count, nameof(more));
            counts[part] = counts.GetValueOrDefault(part) + count;
        }

        return new(counts.ToImmutable());
    }

    /// <summary>These stores when some parts have been taken.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There are not so many.</exception>
    public Stores Without(IEnumerable<PartCount> taken)
    {
        ArgumentNullException.ThrowIfNull(taken);
        var counts = _counts.ToBuilder();
        foreach ((Part part, int count) in taken)
        {
            int left = counts.GetValueOrDefault(part) - count;
            ArgumentOutOfRangeException.ThrowIfNegative(left, nameof(taken));
            counts[part] = left;
        }

        return new(counts.ToImmutable());
    }
}
