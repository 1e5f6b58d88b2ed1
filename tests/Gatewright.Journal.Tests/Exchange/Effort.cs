namespace Gatewright.Journal.Tests.Exchange;

/// <summary>How much a test does: enough to notice a fault in the normal run, all of it in a long one.</summary>
internal static class Effort
{
    public static int Of(int normally, int wholly) => LongRun.IsAsked ? wholly : normally;
}
