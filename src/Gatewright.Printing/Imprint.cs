using Gatewright.Journal.Entries;
using Gatewright.Journal.Members;
using Gatewright.Journal.Standing;
using Gatewright.Printing.Told;
using Gatewright.Words;

namespace Gatewright.Printing;

/// <summary>What every page says of itself, and in which language.</summary>
/// <param name="Club">The club's name.</param>
/// <param name="Day">The day it is printed.</param>
/// <param name="Say">The language; on paper with a true minus, whoever hands it over.</param>
public sealed record Imprint(string Club, DateOnly Day, Wording Say)
{
    /// <summary>The language, as it is printed: −0.5 with a true minus.</summary>
    public Wording Say { get; init => field = Printed(value); } = Printed(Say);

    /// <summary>What a member is called; an id stands for itself where nobody knows, as in a terminal.</summary>
    public Func<string, string> NameOf { get; init; } = static member => member;

    /// <summary>The same for whoever may not see members' names.</summary>
    public Imprint WithoutNames() => this with { NameOf = _ => Texts["Member"] };

    /// <summary>Who recorded an entry: what a crew told over its link stands under no member's id.</summary>
    internal string Who(Entry entry) => CrewTold.Is(entry) ? Texts["CrewByLink"] : NameOf(entry.Member);

    /// <summary>What is said of how a boat stands, in a word or two.</summary>
    internal string Word(BoatStanding boat) => boat.Shown is { } shown
        ? Say.Names.Verdict(shown)
        : Texts[boat.IsToBeReadAgain ? "Verdict.ReadAgain" : "Verdict.NotRead"];

    /// <summary>The texts that stand on paper alone.</summary>
    internal PrintTexts Texts => PrintTexts.In(Say.Language);

    private static Wording Printed(Wording say)
    {
        ArgumentNullException.ThrowIfNull(say);
        return Wording.OnScreen(say.Language);
    }
}
