using Gatewright.Journal.Entries;

namespace Gatewright.Journal.Views;

/// <summary>The day an entry was made.</summary>
internal static class Day
{
    /// <summary>By universal time: the journal must be read alike everywhere, whatever zone a phone was set to.</summary>
    public static DateOnly Of(Entry entry) => DateOnly.FromDateTime(entry.Time.Instant.UtcDateTime);
}
