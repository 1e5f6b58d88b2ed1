using System.CommandLine;
using Gatewright.Cli.Clubs.Telling;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;

namespace Gatewright.Cli.Clubs.Importing;

/// <summary>The grammar of <c>gatewright club import</c>.</summary>
internal static class ImportCommand
{
    public static Command Of(Terminal terminal)
    {
        var file = new Argument<string>("FILE.zip") { Description = "The club's file, as gatewright club export writes it." };
        var anyway = new Option<bool>("--anyway") { Description = "Of a file with problems take what can be read." };
        var store = StoreOptions.OfAStore();
        var manner = new MannerOptions();
        var command = new Command(
            "import",
            "Take a club's file into a store: a new club, or what the club there lacks. What it has already stays as it is. A club keeps its id, which is part of every entry. Exit status: 0 all taken, 1 taken as far as it could be, 2 nothing taken.")
        {
            file, anyway,
        };
        store.AddTo(command);
        manner.AddTo(command);
        command.SetAction((result, cancellation) => ClubTeller.TellAsync(terminal, manner.Of(result), () =>
            ImportRun.RunAsync(store.Of(result), result.GetValue(file)!, result.GetValue(anyway), cancellation)));
        return command;
    }
}
