namespace Gatewright.Core.Mending;

/// <summary>So many of one part.</summary>
/// <param name="Part">The part.</param>
/// <param name="Count">How many, 0 or more.</param>
public readonly record struct PartCount(Part Part, int Count)
{
    /// <summary>How many there are of each part in a heap of parts, by kind and size.</summary>
    public static IReadOnlyList<PartCount> Of(IEnumerable<Part> parts) =>
        [.. parts.GroupBy(p => p).Select(g => new PartCount(g.Key, g.Count())).OrderBy(c => c.Part)];

    /// <summary>"3 × insert 4°".</summary>
    public override string ToString() => FormattableString.Invariant($"{Count} × {Part}");
}
