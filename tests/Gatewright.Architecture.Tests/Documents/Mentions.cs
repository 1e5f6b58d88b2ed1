using System.Text.RegularExpressions;

namespace Gatewright.Architecture.Tests.Documents;

/// <summary>What a page points at inside the repository: its links, and the paths it names as code.</summary>
internal static partial class Mentions
{
    /// <summary>Paths from the root of the repository.</summary>
    public static IReadOnlyList<string> Of(string page, string text)
    {
        string folder = Path.GetDirectoryName(page) ?? string.Empty;
        IEnumerable<string> links = Link().Matches(text).Select(match => Path.Combine(folder, match.Groups["path"].Value));
        IEnumerable<string> paths = NamedPath().Matches(text).Select(match => match.Groups["path"].Value);
        return [.. links.Concat(paths).Distinct()];
    }

    /// <summary>Not those with a scheme, nor places within the same page.</summary>
    [GeneratedRegex(@"\]\((?![a-z]+:|#)(?<path>[^)#\s]+)")]
    private static partial Regex Link();

    [GeneratedRegex(@"`(?<path>(src|tests|bench|docs|\.ci)(/[\w.-]+)+)`")]
    private static partial Regex NamedPath();
}
