using System.CommandLine;
using Gatewright.Cli.Clubs.Looking;
using Gatewright.Cli.Rigs;
using Gatewright.Cli.Terminals;
using Gatewright.Core.Rig;

namespace Gatewright.Cli.Changing;

/// <summary>The grammar of <c>gatewright change</c>.</summary>
internal static class ChangeCommand
{
    public static Command Of(Terminal terminal)
    {
        var options = new ChangingOptions("The boat to change; it may be left out where there is one.");
        var kept = new Option<string?>("--to") { Description = "A rig that the club keeps under this name.", HelpName = "NAME" };
        var boat = new Option<string?>("--to-boat") { Description = "The rig of another boat.", HelpName = "NAME" };
        var day = new Option<DateOnly?>("--to-day") { Description = "The rig it had on a day, as 2026-11-25.", HelpName = "DAY", CustomParser = DayArgument.Read };
        Option<string?> crew = CrewOption.Make("--to-crew", $"What a crew wants by its targets: {Crews.Choice}.");
        var exchange = new Option<bool>("--exchange-riggers")
        {
            Description = "Let riggers that are alike go to other seats of their side, where that needs fewer steps; most are made for one seat.",
        };
        var command = new Command(
            "change",
            "Plan the way from a boat's rig to another: the fewest steps in working order, with parts, what each does, and what to read again. Exit status: 0 nothing to do, 1 there is, 2 the input is wrong, 74 the store cannot be used.")
        {
            kept, boat, day, crew, exchange,
        };
        options.AddTo(command);
        command.Validators.Add(result =>
        {
            int given = (result.GetValue(kept) is null ? 0 : 1) + (result.GetValue(boat) is null ? 0 : 1)
                + (result.GetValue(day) is null ? 0 : 1) + (result.GetValue(crew) is null ? 0 : 1);
            if (given != 1)
            {
                result.AddError("Say which rig to come to, by one of --to, --to-boat, --to-day and --to-crew.");
            }
        });
        command.SetAction(result =>
        {
            ChangingRequest request = options.Of(result);
            return ChangingTeller.Tell(terminal, request, rigs => ChangeRun.Told(rigs, request.Boat, new(
                result.GetValue(kept), result.GetValue(boat), result.GetValue(day), Crews.OfWord(result.GetValue(crew)), result.GetValue(exchange))));
        });
        return command;
    }
}
