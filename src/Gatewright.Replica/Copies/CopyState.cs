using Gatewright.Journal.Replay;

namespace Gatewright.Replica.Copies;

/// <summary>What a copy is made of. Immutable.</summary>
/// <param name="Shared">What was pulled; of a club that lives on the device alone, what its snapshot has.</param>
/// <param name="Number">The number of the last entry that was pulled.</param>
/// <param name="Own">What was recorded here and has not come back.</param>
/// <param name="Club">Both, without what was refused.</param>
/// <param name="SnapshotNumber">The number up to which there is a snapshot.</param>
/// <param name="SnapshotPlace">The place up to which own records are in the snapshot.</param>
internal sealed record CopyState(Club Shared, long Number, OwnEntries Own, Club Club, long SnapshotNumber, long SnapshotPlace)
{
    public static CopyState Empty(string club) => new(Club.Empty(club), 0, OwnEntries.Empty, Club.Empty(club), 0, 0);

    /// <summary>With what was pulled.</summary>
    public CopyState Pulled(IEnumerable<Recorded> records, long number, OwnEntries own)
    {
        Club shared = Shared.With(records);
        return this with { Shared = shared, Number = number, Own = own, Club = shared.With(own.InClub) };
    }

    /// <summary>With own entries that have changed.</summary>
    public CopyState With(OwnEntries own) => this with { Own = own, Club = Shared.With(own.InClub) };

    /// <summary>With own entries that are new, and the club that has them.</summary>
    public CopyState Recorded(IReadOnlyList<OwnEntry> entries, Club club) => this with { Own = Own.With(entries), Club = club };
}
