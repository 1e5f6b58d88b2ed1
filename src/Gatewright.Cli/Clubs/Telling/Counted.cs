using System.Globalization;

namespace Gatewright.Cli.Clubs.Telling;

/// <summary>How many of something.</summary>
internal static class Counted
{
    /// <summary>"1 club", "2 clubs", "0 clubs".</summary>
    public static string Of(long count, string one, string? many = null) =>
        string.Create(CultureInfo.InvariantCulture, $"{count} {(count == 1 ? one : many ?? $"{one}s")}");
}
