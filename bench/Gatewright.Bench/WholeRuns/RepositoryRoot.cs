namespace Gatewright.Bench.WholeRuns;

/// <summary>The working copy this program was built in.</summary>
internal static class RepositoryRoot
{
    public static string Path { get; } = Find(new(AppContext.BaseDirectory));

    private static string Find(DirectoryInfo folder) =>
        File.Exists(System.IO.Path.Combine(folder.FullName, "Gatewright.slnx")) ? folder.FullName
        : folder.Parent is { } parent ? Find(parent)
        : throw new InvalidOperationException($"{AppContext.BaseDirectory} is not inside a working copy of Gatewright.");
}
