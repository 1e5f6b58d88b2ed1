using System.Globalization;

namespace Gatewright.Journal.Exchange.Archive;

/// <summary>Something wrong with a club's file.</summary>
/// <param name="Member">The member of the zip; null where it concerns the whole file.</param>
/// <param name="Line">The line in it, 1 the first; null where there are none.</param>
/// <param name="Message">What is wrong, and the remedy where there is one.</param>
public sealed record ArchiveProblem(string? Member, long? Line, string Message)
{
    /// <summary>"entries.jsonl, line 7: …".</summary>
    public override string ToString() => (Member, Line) switch
    {
        (null, _) => Message,
        (_, null) => $"{Member}: {Message}",
        _ => string.Create(CultureInfo.InvariantCulture, $"{Member}, line {Line}: {Message}"),
    };
}
