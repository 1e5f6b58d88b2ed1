namespace Gatewright.Server.Pages;

/// <summary>Where to go on to: a page of this site, whatever the link said.</summary>
internal static class LocalPath
{
    /// <summary>The path, or the start when it leads elsewhere.</summary>
    public static string Of(string? path) =>
        path is ['/', ..] && !path.StartsWith("//", StringComparison.Ordinal) && !path.Contains('\\', StringComparison.Ordinal)
        && !path.Any(char.IsControl)
            ? path
            : "/";
}
