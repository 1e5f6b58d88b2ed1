namespace Gatewright.Replica.Copies;

/// <summary>What was to be recorded says what cannot be; nothing of it was.</summary>
/// <param name="problems">Everything wrong, each with field, value and remedy.</param>
public class NotRecordedException(IReadOnlyList<string> problems) : Exception(string.Join(" ", problems))
{
    /// <summary>Everything wrong, each with field, value and remedy.</summary>
    public IReadOnlyList<string> Problems { get; } = problems;
}
