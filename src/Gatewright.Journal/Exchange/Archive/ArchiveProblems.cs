namespace Gatewright.Journal.Exchange.Archive;

/// <summary>The problems found, the first of them kept.</summary>
internal sealed class ArchiveProblems(int most)
{
    private readonly List<ArchiveProblem> _kept = [];

    public IReadOnlyList<ArchiveProblem> Kept => _kept;

    public long Beyond { get; private set; }

    public void Add(string? member, string message, long? line = null)
    {
        if (_kept.Count < most)
        {
            _kept.Add(new(member is null ? null : ShownText.Of(member), line, message));
        }
        else
        {
            Beyond++;
        }
    }
}
