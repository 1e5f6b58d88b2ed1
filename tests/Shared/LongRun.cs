namespace Gatewright.Tests;

/// <summary>
/// For tests that take minutes: <c>[Fact(Skip = LongRun.Why, SkipUnless = nameof(LongRun.IsAsked), SkipType = typeof(LongRun))]</c>.
/// </summary>
public static class LongRun
{
    /// <summary>What is shown for a test that was left out.</summary>
    public const string Why = "takes minutes; run by ./test --long";

    /// <summary>Whether GATEWRIGHT_LONG is set.</summary>
    public static bool IsAsked => !string.IsNullOrEmpty(Environment.GetEnvironmentVariable("GATEWRIGHT_LONG"));
}
