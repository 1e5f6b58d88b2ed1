using System.Reflection;
using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;

namespace Gatewright.Architecture.Tests.Purity;

/// <summary>
/// Every type and member of other assemblies that a compiled assembly mentions anywhere: in a signature, a body, a
/// lambda. Read from its metadata, so that nothing hides behind an alias, an extension or a using.
/// </summary>
internal static class ForeignSymbols
{
    /// <summary>"System.Console", "System.DateTime.get_UtcNow", and so on.</summary>
    public static IReadOnlySet<string> Of(Assembly assembly)
    {
        using var file = new PEReader(File.OpenRead(assembly.Location));
        MetadataReader reader = file.GetMetadataReader();
        var types = reader.TypeReferences.Select(handle => Name(reader, handle));
        var members = reader.MemberReferences
            .Select(reader.GetMemberReference)
            .Where(member => member.Parent.Kind == HandleKind.TypeReference)
            .Select(member => $"{Name(reader, (TypeReferenceHandle)member.Parent)}.{reader.GetString(member.Name)}");
        return types.Concat(members).ToHashSet(StringComparer.Ordinal);
    }

    private static string Name(MetadataReader reader, TypeReferenceHandle handle)
    {
        TypeReference type = reader.GetTypeReference(handle);
        string name = reader.GetString(type.Name);
        return type.ResolutionScope.Kind == HandleKind.TypeReference
            ? $"{Name(reader, (TypeReferenceHandle)type.ResolutionScope)}+{name}"
            : $"{reader.GetString(type.Namespace)}.{name}";
    }
}
