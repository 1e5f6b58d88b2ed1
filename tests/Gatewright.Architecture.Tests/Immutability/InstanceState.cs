using System.Reflection;
using System.Runtime.CompilerServices;

namespace Gatewright.Architecture.Tests.Immutability;

/// <summary>Types whose values can change after they are made, or that hand out their insides.</summary>
internal static class InstanceState
{
    public static IReadOnlyList<string> Violations(IEnumerable<Type> types) =>
        [.. types.Where(CanHoldState).SelectMany(type => Faults(type).Select(fault => $"{type.FullName}{fault}"))];

    private static bool CanHoldState(Type type) =>
        !type.IsEnum && !type.IsInterface && !typeof(Delegate).IsAssignableFrom(type);

    private static IEnumerable<string> Faults(Type type)
    {
        if (type.IsValueType && !type.IsDefined(typeof(IsReadOnlyAttribute), inherit: false))
        {
            yield return " is a struct that is not readonly";
        }

        foreach (FieldInfo field in type.GetFields(HandWritten.Declared | BindingFlags.Instance))
        {
            if (!field.IsInitOnly && !IsPrimaryParameter(field) && !IsRemembered(field))
            {
                yield return $".{field.Name} can be set";
            }

            if (field.IsPublic && MutableContent.Is(field.FieldType))
            {
                yield return $".{field.Name} hands out what can be changed";
            }
        }

        foreach (PropertyInfo property in type.GetProperties(HandWritten.Declared | BindingFlags.Instance | BindingFlags.Static))
        {
            if (property.SetMethod is { } setter && !IsInit(setter))
            {
                yield return $".{property.Name} has a setter";
            }

            if (type.IsVisible && property.GetMethod is { IsPublic: true } && MutableContent.Is(property.PropertyType))
            {
                yield return $".{property.Name} hands out what can be changed";
            }
        }
    }

    /// <summary>
    /// A parameter of a primary constructor that methods use: the compiler keeps it in a field it cannot mark
    /// read-only. That nobody assigns to it is left to the reader.
    /// </summary>
    private static bool IsPrimaryParameter(FieldInfo field) =>
        field.Name.StartsWith('<') && field.Name.EndsWith(">P", StringComparison.Ordinal);

    /// <summary>
    /// What a property with no setter, or none after the object is made, works out when it is first asked for, and may
    /// keep (<c>field ??= …</c>): only the property itself can reach it, and a reference is written whole, so whoever
    /// asks sees nothing or the answer.
    /// </summary>
    private static bool IsRemembered(FieldInfo field)
    {
        string[] parts = field.Name.Split('<', '>');
        return parts is ["", var property, "k__BackingField"]
            && !field.FieldType.IsValueType
            && field.DeclaringType!.GetProperty(property, HandWritten.Declared | BindingFlags.Instance) is { } owner
            && (owner.SetMethod is null || IsInit(owner.SetMethod));
    }

    private static bool IsInit(MethodInfo setter) =>
        setter.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit));
}
