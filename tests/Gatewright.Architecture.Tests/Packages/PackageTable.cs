using System.Xml.Linq;
using Gatewright.Architecture.Tests.Layers;

namespace Gatewright.Architecture.Tests.Packages;

/// <summary>A package with the projects that use it, as some page has it: "Sep: Gatewright.Journal".</summary>
internal static class PackageTable
{
    /// <summary>Names of the packages whose version is set centrally.</summary>
    public static IReadOnlyList<string> Central(string properties) =>
        [.. XElement.Parse(properties)
            .Descendants("PackageVersion")
            .Select(item => item.Attribute("Include")!.Value)
            .Order(StringComparer.Ordinal)];

    /// <summary>Rows "| package | licence | used in | why |"; the projects are separated by commas.</summary>
    public static IReadOnlyList<string> Documented(string page) =>
        [.. page.Split('\n')
            .Where(line => line.StartsWith("| ", StringComparison.Ordinal))
            .Select(line => line.Trim('|', ' ').Split('|', StringSplitOptions.TrimEntries))
            .Where(cells => cells[0] != "Package")
            .Select(cells => Row(cells[0], cells[2].Split(',', StringSplitOptions.TrimEntries)))
            .Order(StringComparer.Ordinal)];

    public static IReadOnlyList<string> Used(IReadOnlyList<ProjectFile> projects, IEnumerable<string> central) =>
        [.. central
            .Select(package => Row(package, projects.Where(p => p.Packages.Contains(package)).Select(p => p.Name)))
            .Order(StringComparer.Ordinal)];

    private static string Row(string package, IEnumerable<string> projects) =>
        $"{package}: {string.Join(", ", projects.Order(StringComparer.Ordinal))}";
}
