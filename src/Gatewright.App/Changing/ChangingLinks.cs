using System.Globalization;

namespace Gatewright.App.Changing;

/// <summary>The pages about a boat's whole rig.</summary>
internal static class ChangingLinks
{
    /// <summary>The way to another rig; with one chosen, to that.</summary>
    public static string Change(string boat, string? to = null, bool mayExchange = false) =>
        Of(boat, "change") + (to is null ? string.Empty : "?to=" + Uri.EscapeDataString(to) + (mayExchange ? "&exchange=yes" : string.Empty));

    /// <summary>The boat beside another, or beside itself on a day.</summary>
    public static string Compare(string boat, string? with = null) =>
        Of(boat, "compare") + (with is null ? string.Empty : "?with=" + Uri.EscapeDataString(with));

    /// <summary>The boat on the road.</summary>
    public static string Travel(string boat) => Of(boat, "travel");

    /// <summary>A day as a choice: "day:2026-05-04".</summary>
    public static string Day(DateOnly day) => "day:" + day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>What was chosen: its kind, and which; null for nothing that is known.</summary>
    public static (string Kind, string Which)? Chosen(string? choice) =>
        choice?.Split(':', 2) is [{ } kind, { Length: > 0 } which] ? (kind, which) : null;

    /// <summary>The day of a choice; null where it is none.</summary>
    public static DateOnly? DayOf(string which) =>
        DateOnly.TryParseExact(which, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day) ? day : null;

    private static string Of(string boat, string page) => $"boat/{Uri.EscapeDataString(boat)}/{page}";
}
