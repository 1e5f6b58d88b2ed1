using System.CommandLine;
using Gatewright.Cli.Clubs.Telling;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;

namespace Gatewright.Cli.Clubs.Listing;

/// <summary>The grammar of <c>gatewright club list</c>.</summary>
internal static class ListCommand
{
    public static Command Of(Terminal terminal)
    {
        var store = StoreOptions.OfAStore();
        var manner = new MannerOptions();
        var command = new Command("list", "List the clubs of a store: id, name, entries, members, the day of the last entry.");
        store.AddTo(command);
        manner.AddTo(command);
        command.SetAction((result, cancellation) => ClubTeller.TellAsync(
            terminal, manner.Of(result), () => ListRun.RunAsync(store.Of(result), cancellation)));
        return command;
    }
}
