namespace Gatewright.Architecture.Tests.Sources;

/// <summary>A source file, by its path from the root of the repository.</summary>
internal sealed record SourceFile(string Path, string Text)
{
    public string Name => System.IO.Path.GetFileNameWithoutExtension(Path);

    public IReadOnlyList<string> Lines => Text.TrimEnd('\n').Split('\n');

    public static IReadOnlyList<SourceFile> Under(params IEnumerable<string> folders) =>
        [.. folders
            .SelectMany(folder => Repository.Files(folder, "*.cs"))
            .Select(path => new SourceFile(path, Repository.Read(path)))];
}
