using System.CommandLine;

namespace Gatewright.Cli.Inputs;

/// <summary>The <c>--standard</c> that every judging command has.</summary>
internal static class StandardOption
{
    private const string Name = "--standard";
    private const string Values = "club|race|FILE.json";
    private const string Choice = "What to judge by: club, race, or the club's own standard in a JSON file.";

    public static Option<string> Make() => new(Name)
    {
        Description = Choice,
        HelpName = Values,
        DefaultValueFactory = _ => "club",
    };

    /// <summary>That of a command which judges a shed: a club in a store has standards of its own.</summary>
    public static Option<string?> MakeForAShed() => new(Name)
    {
        Description = $"{Choice} Without it, club; of a club in a store, what it judges by itself.",
        HelpName = Values,
    };
}
