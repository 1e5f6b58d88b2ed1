using System.Text.RegularExpressions;
using static ArchUnitNET.Fluent.ArchRuleDefinition;
using LoadedTypes = ArchUnitNET.Domain.Architecture;

namespace Gatewright.Architecture.Tests.Layers;

/// <summary>
/// Folders of one project in an order: what stands in one may use those before it and the root, the root none of them.
/// </summary>
/// <remarks>A folder is a namespace: that each file's namespace is its folder is a rule of its own.</remarks>
internal sealed class FolderOrder(string root, params IReadOnlyList<string> folders)
{
    public IReadOnlyList<string> Violations(LoadedTypes architecture)
    {
        var violations = new List<string>(Unplaced(architecture));
        for (int i = -1; i < folders.Count - 1; i++)
        {
            string user = i < 0 ? $"^{Regex.Escape(root)}$" : Namespaces([folders[i]]);
            var rule = Types().That().ResideInNamespaceMatching(user)
                .Should().NotDependOnAny(Types().That().ResideInNamespaceMatching(Namespaces(folders.Skip(i + 1))))
                .WithoutRequiringPositiveResults();
            violations.AddRange(rule.Evaluate(architecture).Where(result => !result.Passed).Select(result => result.Description));
        }

        return violations;
    }

    private IEnumerable<string> Unplaced(LoadedTypes architecture) => architecture.Types
        .Select(type => type.Namespace.FullName)
        .Where(name => name.StartsWith(root + ".", StringComparison.Ordinal))
        .Select(name => name[(root.Length + 1)..].Split('.')[0])
        .Distinct()
        .Except(folders)
        .Select(folder => $"{root}.{folder} stands nowhere in the order of folders");

    private string Namespaces(IEnumerable<string> names) => $@"^{Regex.Escape(root)}\.({string.Join('|', names)})(\.|$)";
}
