using System.Reflection;
using System.Runtime.CompilerServices;

namespace Gatewright.Architecture.Tests.Immutability;

/// <summary>The types that people wrote, without those the compiler makes for lambdas, iterators and collections.</summary>
internal static class HandWritten
{
    public const BindingFlags Declared =
        BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly;

    public static IEnumerable<Type> Types(Assembly assembly) => assembly.GetTypes().Where(IsHandWritten);

    private static bool IsHandWritten(Type type) =>
        !type.Name.StartsWith('<')
        && !type.IsDefined(typeof(CompilerGeneratedAttribute), inherit: false)
        && (type.DeclaringType is null || IsHandWritten(type.DeclaringType));
}
