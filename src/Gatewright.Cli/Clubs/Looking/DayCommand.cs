using System.CommandLine;
using Gatewright.Cli.Clubs.Telling;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;

namespace Gatewright.Cli.Clubs.Looking;

/// <summary>The grammar of <c>gatewright club day</c>.</summary>
internal static class DayCommand
{
    public static Command Of(Terminal terminal)
    {
        var day = new Argument<DateOnly?>("DAY") { Description = "The day, as 2026-11-25.", CustomParser = DayArgument.Read };
        var boat = new Option<string>("--boat") { Description = "The boat's name.", HelpName = "NAME", Required = true };
        var store = StoreOptions.OfAClub();
        var manner = new MannerOptions();
        var command = new Command("day", "Tell how a boat stood at the end of a day, as far as is known today, and who said so.") { day, boat };
        store.AddTo(command);
        manner.AddTo(command);
        command.SetAction((result, cancellation) => ClubTeller.TellAsync(terminal, manner.Of(result), () => DayRun.RunAsync(
            store.Of(result), result.GetValue(day)!.Value, result.GetValue(boat)!, cancellation)));
        return command;
    }
}
