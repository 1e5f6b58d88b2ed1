namespace Gatewright.Cli.Terminals;

/// <summary>Everything the program sees of the world outside: what it reads from and writes to.</summary>
/// <param name="Input">Standard input.</param>
/// <param name="InputIsPiped">Whether something is piped in, rather than a person typing.</param>
/// <param name="Output">Standard output.</param>
/// <param name="Error">Standard error.</param>
/// <param name="Colours">What the output can show.</param>
/// <param name="Width">Columns of the screen; null where the output is no screen.</param>
internal sealed record Terminal(
    Stream Input, bool InputIsPiped, TextWriter Output, TextWriter Error, Colours Colours, int? Width)
{
    /// <summary>The terminal, or the pipes, that this process was started with.</summary>
    public static Terminal OfThisProcess()
    {
        bool isScreen = !Console.IsOutputRedirected;
        return new(
            Console.OpenStandardInput(),
            Console.IsInputRedirected,
            new StreamWriter(Console.OpenStandardOutput(), Console.OutputEncoding) { NewLine = "\n" },
            Console.Error,
            ColoursOf(isScreen, Environment.GetEnvironmentVariable),
            isScreen ? WindowWidth() : null);
    }

    /// <summary>
    /// Colours only on a screen, only where the terminal has them, and none where NO_COLOR is set to anything
    /// (no-color.org).
    /// </summary>
    public static Colours ColoursOf(bool isScreen, Func<string, string?> environment)
    {
        string term = environment("TERM") ?? string.Empty;
        if (!isScreen || !string.IsNullOrEmpty(environment("NO_COLOR")) || term == "dumb")
        {
            return Colours.None;
        }

        bool many = term.Contains("256", StringComparison.Ordinal)
            || !string.IsNullOrEmpty(environment("COLORTERM"))
            || OperatingSystem.IsWindows();
        return many ? Colours.Many : Colours.Sixteen;
    }

    private static int? WindowWidth()
    {
        try
        {
            return Console.WindowWidth is > 0 and int width ? width : null;
        }
        catch (IOException)
        {
            // Some screens do not tell.
            return null;
        }
    }
}
