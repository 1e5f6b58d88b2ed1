using Gatewright.Journal.Exchange;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;
using Gatewright.Words;

namespace Gatewright.Cli.CheckShed;

/// <summary>A boat that somebody holds ashore, whatever its gates read.</summary>
internal static class HeldAshore
{
    private const string Source = "held";

    /// <summary>Whether a warning is of such a boat.</summary>
    public static bool Is(InputProblem warning) => warning.Source == Source;

    /// <summary>The warning: since when, by whom, why.</summary>
    public static InputProblem Of(string boat, Recorded hold) => new(Source, null, null, boat,
        $"stays ashore since {Language.English.Day(Day.Of(hold.Entry))}, held by member {hold.Entry.Member}: {((Held)hold.Fact).In(Language.English).TrimEnd('.')}. Not out on the water until the hold is lifted.");
}
