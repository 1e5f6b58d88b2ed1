using Gatewright.Journal.Entries;

namespace Gatewright.Journal.Replay;

/// <summary>Records in the order of their entries.</summary>
internal sealed class RecordedOrder : IComparer<Recorded>
{
    public static RecordedOrder Instance { get; } = new();

    public int Compare(Recorded? x, Recorded? y) => EntryOrder.Instance.Compare(x?.Entry, y?.Entry);
}
