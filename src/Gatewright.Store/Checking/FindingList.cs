namespace Gatewright.Store.Checking;

/// <summary>Counts what is found and looked at, and keeps the first findings.</summary>
internal sealed class FindingList(int most)
{
    private const string FromBackup =
        "Keep this store as it is, restore the latest backup into a new place, and let devices send again what they have since.";

    private readonly List<StoreFinding> _kept = [];
    private long _faults;
    private long _notices;

    public long Clubs { get; set; }

    public long Entries { get; set; }

    public long Blobs { get; set; }

    public StoreReport Report => new(Clubs, Entries, Blobs, _faults, _notices, _kept);

    public void Fault(string? club, long? number, string what, string remedy = FromBackup)
    {
        _faults++;
        Keep(new(FindingWeight.Fault, club, number, what, remedy));
    }

    public void Notice(string? club, long? number, string what, string remedy)
    {
        _notices++;
        Keep(new(FindingWeight.Notice, club, number, what, remedy));
    }

    private void Keep(StoreFinding finding)
    {
        if (_kept.Count < most)
        {
            _kept.Add(finding);
        }
    }
}
