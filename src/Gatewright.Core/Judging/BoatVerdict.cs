namespace Gatewright.Core.Judging;

/// <summary>How a boat was judged.</summary>
/// <param name="Boat">The boat's name.</param>
/// <param name="Class">Its class.</param>
/// <param name="Standard">The standard it was judged by.</param>
/// <param name="Verdict">That of its worst gate among those read.</param>
/// <param name="Gates">Every gate of which something was read, from the bow.</param>
/// <param name="NotRead">The gates of which nothing was read: the verdict says nothing of them.</param>
public sealed record BoatVerdict(
    string Boat,
    BoatClass Class,
    Standard Standard,
    Verdict Verdict,
    IReadOnlyList<GateVerdict> Gates,
    IReadOnlyList<MissingGate> NotRead)
{
    /// <summary>Whether the boat is to stay ashore until it is mended or read again: some gate of it is.</summary>
    public bool StaysAshore => Gates.Any(g => g.StaysAshore);
}
