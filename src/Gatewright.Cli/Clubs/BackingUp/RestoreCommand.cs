using System.CommandLine;
using Gatewright.Cli.Clubs.Keeping;
using Gatewright.Cli.Clubs.Telling;
using Gatewright.Cli.Clubs.Verifying;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;
using Gatewright.Journal.Exchange;
using Gatewright.Store;
using Gatewright.Store.Backup;
using Gatewright.Store.Checking;

namespace Gatewright.Cli.Clubs.BackingUp;

/// <summary>The grammar of <c>gatewright club restore</c>, and its run.</summary>
internal static class RestoreCommand
{
    public static Command Of(Terminal terminal)
    {
        var file = new Argument<string>("FILE") { Description = "The backup, of whichever kind of store." };
        var store = StoreOptions.OfAStore();
        var manner = new MannerOptions();
        var command = new Command(
            "restore", "Put a backup into an empty store or a new folder, whole or not at all. A store that holds anything is left as it is.")
        {
            file,
        };
        store.AddTo(command);
        manner.AddTo(command);
        command.SetAction((result, cancellation) => ClubTeller.TellAsync(
            terminal, manner.Of(result), () => RunAsync(store.Of(result), result.GetValue(file)!, cancellation)));
        return command;
    }

    private static async Task<Answer> RunAsync(StorePlace place, string file, CancellationToken cancellation)
    {
        // Looked for first, so that a slip of the finger leaves no empty folder behind.
        var errors = new List<InputProblem>();
        FileStream? there = InputFile.TryOpen(file, errors);
        if (there is null)
        {
            return new Answer.Refused(errors, 0, "Nothing was restored.");
        }

        await there.DisposeAsync().ConfigureAwait(false);
        StoreLocation location = StoreFinder.KeptOrNew(place);
        StoreReport report = await StoreRestore.RunAsync(file, location, cancellation).ConfigureAwait(false);
        return StoreFindings.Told("restored", $"{file} is in the store {location.Name}", location.Name, file, report);
    }
}
