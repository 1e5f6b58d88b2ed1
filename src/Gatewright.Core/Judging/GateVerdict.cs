namespace Gatewright.Core.Judging;

/// <summary>How one gate was judged.</summary>
/// <param name="Gate">The gate.</param>
/// <param name="Verdict">The worst of its reasons, or good.</param>
/// <param name="Reasons">Why it is not good, worst first; empty when it is.</param>
/// <param name="Pitches">Catch, abeam and finish, then any other point that was read.</param>
public sealed record GateVerdict(
    GatePlace Gate, Verdict Verdict, IReadOnlyList<Reason> Reasons, IReadOnlyList<StationPitch> Pitches)
{
    /// <summary>The pitch at a station.</summary>
    public StationPitch At(Station station) => Pitches[(int)station];
}
