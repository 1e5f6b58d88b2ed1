namespace Gatewright.Bench.Browsing;

/// <summary>Folders for a while.</summary>
internal sealed class Folders
{
    private readonly List<string> _made = [];

    /// <summary>An empty one.</summary>
    public string New()
    {
        _made.Add(Directory.CreateTempSubdirectory("gw-bench-").FullName);
        return _made[^1];
    }

    public void Delete() => _made.ForEach(folder => Directory.Delete(folder, recursive: true));
}
