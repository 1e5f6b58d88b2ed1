namespace Gatewright.Cli.Terminals;

/// <summary>The one place where the program stands still until something is done.</summary>
/// <remarks>
/// In a terminal nothing else is done meanwhile: there is no thread that waiting keeps from other work, and what comes after
/// a club is opened is arithmetic.
/// </remarks>
internal static class Waited
{
    /// <summary>What a task comes to; what it throws is thrown here.</summary>
    public static T For<T>(Task<T> task) => task.GetAwaiter().GetResult();
}
