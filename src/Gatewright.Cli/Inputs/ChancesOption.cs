using System.CommandLine;

namespace Gatewright.Cli.Inputs;

/// <summary>The <c>--chances</c> that every weighing command has.</summary>
internal static class ChancesOption
{
    public static Option<string?> Make() => new("--chances")
    {
        Description = "The club's own table of chances, a JSON file; without it the defaults.",
        HelpName = "FILE.json",
    };
}
