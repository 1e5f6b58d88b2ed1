namespace Gatewright.Core.Judging;

/// <summary>How one gate was judged.</summary>
/// <param name="Gate">The gate.</param>
/// <param name="Verdict">The worst of its reasons, or good.</param>
/// <param name="Reasons">Why it is not good, worst first; empty when it is.</param>
/// <param name="Pitches">Catch, abeam and finish, then any other point that was read.</param>
public sealed record GateVerdict(
    GatePlace Gate, Verdict Verdict, IReadOnlyList<Reason> Reasons, IReadOnlyList<StationPitch> Pitches)
{
    /// <summary>
    /// Whether the gate is to stay ashore until it is mended or read again: it is below a floor, or not shown to be above
    /// it. A verdict of `adjust` can hide such a doubt behind a worse word of less danger.
    /// </summary>
    public bool StaysAshore => Reasons.Any(r => r.Kind == ReasonKind.Floor);

    /// <summary>The pitch at a station.</summary>
    public StationPitch At(Station station) => Pitches[(int)station];
}
