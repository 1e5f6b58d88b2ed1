using System.CommandLine;
using Gatewright.Cli.Clubs.Keeping;
using Gatewright.Cli.Clubs.Telling;
using Gatewright.Cli.Clubs.Verifying;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;
using Gatewright.Store;
using Gatewright.Store.Backup;
using Gatewright.Store.Checking;

namespace Gatewright.Cli.Clubs.BackingUp;

/// <summary>The grammar of <c>gatewright club backup</c>, and its run.</summary>
internal static class BackupCommand
{
    public static Command Of(Terminal terminal)
    {
        var file = new Argument<string>("FILE") { Description = "The backup to write; there must be none of that name." };
        var store = StoreOptions.OfAStore();
        var manner = new MannerOptions();
        var command = new Command(
            "backup",
            "Write a backup of a whole store, accounts and all, as it is at one moment; others may go on working. Exit status: 0 written, 1 written, and there are faults in it.")
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
        StoreLocation location = StoreFinder.Kept(place);
        StoreReport report = await StoreBackup.TakeAsync(location, file, DateTimeOffset.UtcNow, cancellation).ConfigureAwait(false);
        return StoreFindings.Told("backed-up", $"The store {location.Name} is in {file}", location.Name, file, report);
    }
}
