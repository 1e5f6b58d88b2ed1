using System.CommandLine;

namespace Gatewright.Cli.Inputs;

/// <summary>The <c>--standard</c> that every judging command has.</summary>
internal static class StandardOption
{
    public static Option<string> Make() => new("--standard")
    {
        Description = "What to judge by: club, race, or the club's own standard in a JSON file.",
        HelpName = "club|race|FILE.json",
        DefaultValueFactory = _ => "club",
    };
}
