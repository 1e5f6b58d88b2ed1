namespace Gatewright.Architecture.Tests;

/// <summary>The working copy that these tests were built in.</summary>
internal static class Repository
{
    public static string Root { get; } = FindRoot(AppContext.BaseDirectory);

    public static string Read(string path) => File.ReadAllText(Path.Combine(Root, path));

    /// <summary>Files of a folder and everything under it, without what a build made.</summary>
    public static IReadOnlyList<string> Files(string folder, string pattern) =>
        [.. Directory.EnumerateFiles(Path.Combine(Root, folder), pattern, SearchOption.AllDirectories)
            .Select(path => Path.GetRelativePath(Root, path).Replace('\\', '/'))
            .Where(path => !path.Split('/').Any(part => part is "bin" or "obj"))
            .Order(StringComparer.Ordinal)];

    private static string FindRoot(string start)
    {
        for (DirectoryInfo? folder = new(start); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Gatewright.slnx")))
            {
                return folder.FullName;
            }
        }

        throw new InvalidOperationException($"{start} is not inside a working copy of Gatewright.");
    }
}
