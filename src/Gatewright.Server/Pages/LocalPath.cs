namespace Gatewright.Server.Pages;

/// <summary>Where to go on to: a page of this site, whatever the link said.</summary>
internal static class LocalPath
{
    /// <summary>Leads whoever has just signed in on to where their role works.</summary>
    public const string SignedIn = "/signed-in";

    /// <summary>The path, or where their role works when there is none or it leads elsewhere.</summary>
    public static string Of(string? path) =>
        path is ['/', ..] && !path.StartsWith("//", StringComparison.Ordinal) && !path.Contains('\\', StringComparison.Ordinal)
        && !path.Any(char.IsControl)
            ? path
            : SignedIn;
}
