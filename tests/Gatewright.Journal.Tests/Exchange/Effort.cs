namespace Gatewright.Journal.Tests.Exchange;

/// <summary>How much a test does: enough to notice a fault in the normal run, all of it when GATEWRIGHT_LONG is set.</summary>
internal static class Effort
{
    public static bool IsLong => !string.IsNullOrEmpty(Environment.GetEnvironmentVariable("GATEWRIGHT_LONG"));

    public static int Of(int normally, int wholly) => IsLong ? wholly : normally;
}
