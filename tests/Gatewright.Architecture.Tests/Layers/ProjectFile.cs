using System.Xml.Linq;

namespace Gatewright.Architecture.Tests.Layers;

/// <summary>What a project says it rests on.</summary>
internal sealed record ProjectFile(
    string Name, IReadOnlyList<string> Projects, IReadOnlyList<string> Packages, IReadOnlyList<string> AdditionalFiles)
{
    public static ProjectFile Parse(string path, string text)
    {
        var project = XElement.Parse(text);
        return new(
            Path.GetFileNameWithoutExtension(path),
            [.. Items("ProjectReference").Select(Path.GetFileNameWithoutExtension).OfType<string>()],
            [.. Items("PackageReference")],
            [.. Items("AdditionalFiles")]);

        IEnumerable<string> Items(string kind) => project
            .Descendants(kind)
            .Select(item => item.Attribute("Include")?.Value)
            .OfType<string>()
            .Order(StringComparer.Ordinal);
    }

    public static IReadOnlyList<ProjectFile> Under(string folder) =>
        [.. Repository.Files(folder, "*.csproj").Select(path => Parse(path, Repository.Read(path)))];
}
