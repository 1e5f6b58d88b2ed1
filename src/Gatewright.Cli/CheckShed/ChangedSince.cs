using Gatewright.Journal.Exchange;
using Gatewright.Journal.Standing;
using static Gatewright.Words.Wording;

namespace Gatewright.Cli.CheckShed;

/// <summary>A boat with gates that were changed and not read since: its verdict says nothing of them.</summary>
internal static class ChangedSince
{
    private const string Source = "changed";

    /// <summary>Whether a warning is of such a boat.</summary>
    public static bool Is(InputProblem warning) => warning.Source == Source;

    /// <summary>The warning: which gates, when, by what; and whether they keep it ashore.</summary>
    public static InputProblem Of(string boat, ChangedUnread changed)
    {
        string gates = string.Join("; ", changed.Changes.Select(English.Boats.Changed));
        return new(Source, null, null, boat, changed.KeepAshore
            ? $"stays ashore until it is read again, by what was read before: {gates}. Not out on the water until then."
            : $"is to be read again: {gates}.");
    }
}
