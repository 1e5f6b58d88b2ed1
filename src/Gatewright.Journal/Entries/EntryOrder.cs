namespace Gatewright.Journal.Entries;

/// <summary>
/// The order of a journal: by time, and between entries of one time by identity, so that every replica has the same
/// order whatever came first.
/// </summary>
public sealed class EntryOrder : IComparer<Entry>
{
    private EntryOrder()
    {
    }

    /// <summary>The order.</summary>
    public static EntryOrder Instance { get; } = new();

    /// <inheritdoc/>
    public int Compare(Entry? x, Entry? y)
    {
        if (x is null || y is null)
        {
            return (x is null ? 0 : 1) - (y is null ? 0 : 1);
        }

        int byTime = x.Time.CompareTo(y.Time);
        return byTime != 0 ? byTime : x.Id.CompareTo(y.Id);
    }
}
