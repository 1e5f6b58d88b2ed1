namespace Gatewright.Architecture.Tests.Purity;

/// <summary>What reaches out of a pure library: files, network, clock, chance, terminal, surroundings, other threads.</summary>
internal static class Impure
{
    private static readonly string[] Namespaces =
    [
        "System.IO.", "System.Net.", "System.Threading.", "System.Diagnostics.Process", "System.Runtime.InteropServices.Marshal",
    ];

    private static readonly string[] Types =
    [
        "System.Console", "System.Random", "System.Security.Cryptography.RandomNumberGenerator",
        "System.TimeProvider", "System.TimeZoneInfo", "System.Diagnostics.Stopwatch", "System.AppDomain",
    ];

    private static readonly string[] Members =
    [
        "System.DateTime.get_Now", "System.DateTime.get_UtcNow", "System.DateTime.get_Today",
        "System.DateTimeOffset.get_Now", "System.DateTimeOffset.get_UtcNow",
        "System.Guid.NewGuid", "System.Guid.CreateVersion7",
        "System.Globalization.CultureInfo.get_CurrentCulture", "System.Globalization.CultureInfo.get_CurrentUICulture",
        "System.FormattableString.CurrentCulture",
    ];

    /// <summary>An iterator asks which thread it runs on, to reuse itself; nothing else may ask for the surroundings.</summary>
    private const string AskedByEveryIterator = "System.Environment.get_CurrentManagedThreadId";

    public static IReadOnlyList<string> Among(IEnumerable<string> symbols) =>
        [.. symbols.Where(IsImpure).Order(StringComparer.Ordinal)];

    private static bool IsImpure(string symbol) =>
        Namespaces.Any(space => symbol.StartsWith(space, StringComparison.Ordinal))
        || Types.Contains(symbol)
        || Members.Contains(symbol)
        || (symbol.StartsWith("System.Environment.", StringComparison.Ordinal) && symbol != AskedByEveryIterator);
}
