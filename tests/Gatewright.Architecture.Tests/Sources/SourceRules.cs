using System.Text.RegularExpressions;

namespace Gatewright.Architecture.Tests.Sources;

/// <summary>The habits of the house that neither the compiler nor an analyzer holds.</summary>
internal static partial class SourceRules
{
    private const int MostLines = 400;

    public static IReadOnlyList<string> LongFiles(IEnumerable<SourceFile> files) =>
        [.. files.Where(file => file.Lines.Count > MostLines).Select(file => $"{file.Path} has {file.Lines.Count} lines, over {MostLines}")];

    /// <summary>A name that says nothing of what the thing is.</summary>
    public static IReadOnlyList<string> EmptyNames(IEnumerable<SourceFile> files) =>
        [.. files.SelectMany(file => DeclaredTypes().Matches(file.Text)
            .Select(match => match.Groups["name"].Value)
            .Append(file.Name)
            .Where(name => EmptyName().IsMatch(name))
            .Distinct()
            .Select(name => $"{file.Path}: {name}"))];

    /// <summary>Work left open, or code that only stands in for some.</summary>
    public static IReadOnlyList<string> OpenWork(IEnumerable<SourceFile> files) =>
        [.. files.SelectMany(file => file.Lines
            .Select((line, i) => (line, number: i + 1))
            .Where(at => Unfinished().IsMatch(at.line))
            .Select(at => $"{file.Path}({at.number}): {at.line.Trim()}"))];

    /// <summary>A namespace that is not its folder: the order of folders is held by namespace.</summary>
    public static IReadOnlyList<string> StrayNamespaces(IEnumerable<SourceFile> files) =>
        [.. files
            .Select(file => (file, expected: Namespace(file.Path), declared: DeclaredNamespace().Match(file.Text).Groups["name"].Value))
            .Where(at => at.declared.Length > 0 && at.declared != at.expected)
            .Select(at => $"{at.file.Path} declares {at.declared}, not {at.expected}")];

    /// <summary>"src/Gatewright.Core/Geometry/Angle.cs" → "Gatewright.Core.Geometry".</summary>
    private static string Namespace(string path) => string.Join('.', path.Split('/')[1..^1]);

    [GeneratedRegex(@"\b(class|struct|record|interface|enum)\s+(?<name>[A-Z]\w*)")]
    private static partial Regex DeclaredTypes();

    [GeneratedRegex(@"(Helper|Manager|Util|Utils|Utility|Utilities|Misc)s?$")]
    private static partial Regex EmptyName();

    [GeneratedRegex(@"\b(TO[D]O|FIX[M]E|XX[X]|HA[C]K)\b|\bNotImplemented[E]xception\b")]
    private static partial Regex Unfinished();

    [GeneratedRegex(@"^namespace (?<name>[\w.]+)", RegexOptions.Multiline)]
    private static partial Regex DeclaredNamespace();
}
