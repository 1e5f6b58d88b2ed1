namespace Gatewright.Tests;

/// <summary>
/// For tests that take long and in which no number is read or written as text: <c>[Trait(Runs.Name, Runs.Once)]</c>. The
/// second run of ./test, under decimal commas, leaves them out.
/// </summary>
public static class Runs
{
    /// <summary>The trait.</summary>
    public const string Name = "runs";

    /// <summary>Its value.</summary>
    public const string Once = "once";
}
