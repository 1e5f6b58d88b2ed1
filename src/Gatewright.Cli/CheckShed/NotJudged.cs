using Gatewright.Journal.Exchange;

namespace Gatewright.Cli.CheckShed;

/// <summary>A boat in the input of which nothing can be said.</summary>
internal static class NotJudged
{
    private const string Source = "not judged";

    /// <summary>Whether a warning is of such a boat.</summary>
    public static bool Is(InputProblem warning) => warning.Source == Source;

    /// <summary>The warning: why, and what to do.</summary>
    public static InputProblem Of(string boat, string why) =>
        new(Source, null, "boat", boat, $"{why}. Read its gates, then check again.");
}
