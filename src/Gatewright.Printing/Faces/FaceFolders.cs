namespace Gatewright.Printing.Faces;

/// <summary>Where a machine keeps its typefaces.</summary>
public static class FaceFolders
{
    /// <summary>The environment variable that names a folder to be looked in first, and alone.</summary>
    public const string Variable = "GATEWRIGHT_FONTS";

    /// <summary>The folders to look in, the first first.</summary>
    /// <param name="environment">Reads an environment variable.</param>
    public static IReadOnlyList<string> Of(Func<string, string?> environment)
    {
        ArgumentNullException.ThrowIfNull(environment);
        if (environment(Variable) is { Length: > 0 } named)
        {
            return [named];
        }

        string? home = environment("HOME");
        string? windows = environment("WINDIR");
        return
        [
            "/usr/share/fonts",
            "/usr/local/share/fonts",
            .. home is { Length: > 0 } ? [Path.Combine(home, ".local/share/fonts"), Path.Combine(home, ".fonts"), Path.Combine(home, "Library/Fonts")] : Array.Empty<string>(),
            "/Library/Fonts",
            "/System/Library/Fonts/Supplemental",
            .. windows is { Length: > 0 } ? [Path.Combine(windows, "Fonts")] : Array.Empty<string>(),
        ];
    }
}
