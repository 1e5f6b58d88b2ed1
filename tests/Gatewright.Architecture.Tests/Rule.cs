namespace Gatewright.Architecture.Tests;

/// <summary>Asserts that nothing breaks a rule, and names everything that does: xunit would cut the list short.</summary>
internal static class Rule
{
    public static void Holds(IReadOnlyCollection<string> violations) =>
        Assert.True(violations.Count == 0, string.Join(Environment.NewLine, violations));
}
