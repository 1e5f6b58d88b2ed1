namespace Gatewright.Store.Checking;

/// <summary>What was found when a store was looked through.</summary>
/// <param name="Clubs">How many clubs were looked at.</param>
/// <param name="Entries">How many entries.</param>
/// <param name="Blobs">How many pictures.</param>
/// <param name="Faults">How many faults, whether listed or not.</param>
/// <param name="Notices">How many notices, whether listed or not.</param>
/// <param name="Findings">The first of them.</param>
public sealed record StoreReport(
    long Clubs, long Entries, long Blobs, long Faults, long Notices, IReadOnlyList<StoreFinding> Findings)
{
    /// <summary>Whether all is as it was written: there is no fault.</summary>
    public bool IsSound => Faults == 0;
}
