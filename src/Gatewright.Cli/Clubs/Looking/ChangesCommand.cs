using System.CommandLine;
using Gatewright.Cli.Clubs.Telling;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;

namespace Gatewright.Cli.Clubs.Looking;

/// <summary>The grammar of <c>gatewright club changes</c>.</summary>
internal static class ChangesCommand
{
    public static Command Of(Terminal terminal)
    {
        var from = new Option<DateOnly?>("--from")
        {
            Description = "The first day that counts, as 2026-11-25.",
            HelpName = "DAY",
            Required = true,
            CustomParser = DayArgument.Read,
        };
        var to = new Option<DateOnly?>("--to")
        {
            Description = "The last day that counts; without it today, by universal time.",
            HelpName = "DAY",
            CustomParser = DayArgument.Read,
        };
        var store = StoreOptions.OfAClub();
        var manner = new MannerOptions();
        var command = new Command("changes", "Tell what came to a club from one day to another, both counted, and who recorded it.") { from, to };
        store.AddTo(command);
        manner.AddTo(command);
        command.Validators.Add(result =>
        {
            if (result.GetValue(from) > (result.GetValue(to) ?? DateOnly.MaxValue))
            {
                result.AddError("--from and --to: the last day is before the first.");
            }
        });
        command.SetAction((result, cancellation) => ClubTeller.TellAsync(terminal, manner.Of(result), () => ChangesRun.RunAsync(
            store.Of(result),
            result.GetValue(from)!.Value,
            result.GetValue(to) ?? DateOnly.FromDateTime(DateTime.UtcNow),
            cancellation)));
        return command;
    }
}
