using System.Reflection;

namespace Gatewright.Architecture.Tests.Immutability;

/// <summary>Statics that can change: one that is neither constant nor read-only, or that holds what can be changed.</summary>
internal static class StaticState
{
    public static IReadOnlyList<string> Violations(IEnumerable<Type> types) =>
        [.. from type in types
            from field in type.GetFields(HandWritten.Declared | BindingFlags.Static)
            where !field.IsLiteral
            let fault = Fault(field)
            where fault is not null
            select $"{type.FullName}.{field.Name} {fault}"];

    private static string? Fault(FieldInfo field) =>
        !field.IsInitOnly ? "is a static that can be set"
        : MutableContent.Is(field.FieldType) ? "is a static whose content can be changed"
        : HoldsMutable(field) ? "is a static that can be cast to something that can be changed"
        : null;

    /// <summary>An array behind an IReadOnlyList is still an array.</summary>
    private static bool HoldsMutable(FieldInfo field) =>
        !field.DeclaringType!.ContainsGenericParameters
        && field.GetValue(null) is { } value
        && MutableContent.Is(value.GetType());
}
