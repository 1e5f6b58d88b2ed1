using System.Globalization;

namespace Gatewright.Architecture.Tests.Samples;

/// <summary>Each line does what Core may not; nobody calls it.</summary>
public static class Impurities
{
    private static int _calls;

    public static string Everything(HttpClient client) => string.Join(
        Environment.NewLine,
        client.BaseAddress,
        DateTime.UtcNow,
        DateTimeOffset.Now,
        TimeProvider.System,
        Guid.NewGuid(),
        new Random(1).Next(),
        Interlocked.Increment(ref _calls),
        CultureInfo.CurrentCulture.Name,
        Console.In);
}
