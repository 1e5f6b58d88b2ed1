using System.CommandLine;
using Gatewright.Core.Rig;

namespace Gatewright.Cli.Rigs;

/// <summary>The <c>--crew</c>.</summary>
internal static class CrewOption
{
    public static Option<string?> Make(string description) => Make("--crew", description);

    /// <summary>The same under another name.</summary>
    public static Option<string?> Make(string name, string description)
    {
        var option = new Option<string?>(name) { Description = description, HelpName = "CREW" };
        option.AcceptOnlyFromAmong([.. Crews.All.Select(c => c.Word())]);
        return option;
    }
}
