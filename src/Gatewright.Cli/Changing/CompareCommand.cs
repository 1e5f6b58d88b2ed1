using System.CommandLine;
using Gatewright.Cli.Clubs.Looking;
using Gatewright.Cli.Terminals;

namespace Gatewright.Cli.Changing;

/// <summary>The grammar of <c>gatewright compare</c>.</summary>
internal static class CompareCommand
{
    public static Command Of(Terminal terminal)
    {
        var options = new ChangingOptions("The first boat; it may be left out where there is one.");
        var with = new Option<string?>("--with") { Description = "The second boat; without it the first on another day.", HelpName = "NAME" };
        Option<DateOnly?> on = Day("--on", "The first's day, as 2026-11-25; without it today.");
        Option<DateOnly?> and = Day("--and", "The second's day; without it today.");
        var command = new Command(
            "compare",
            "Lay two rigs side by side, of two boats or of one on two days: what differs by more than the uncertainty of the difference, and what cannot be told. Exit status: 0 nothing differs, 1 something does, 2 the input is wrong, 74 the store cannot be used.")
        {
            with, on, and,
        };
        options.AddTo(command);
        command.Validators.Add(result =>
        {
            if (result.GetValue(with) is null && result.GetValue(on) == result.GetValue(and))
            {
                result.AddError("Say what to compare with: another boat by --with, or days by --on and --and.");
            }
        });
        command.SetAction(result =>
        {
            ChangingRequest request = options.Of(result);
            return ChangingTeller.Tell(terminal, request, rigs => CompareRun.Told(
                rigs, request.Boat, result.GetValue(with), result.GetValue(on), result.GetValue(and)));
        });
        return command;
    }

    private static Option<DateOnly?> Day(string name, string description) =>
        new(name) { Description = description, HelpName = "DAY", CustomParser = DayArgument.Read };
}
