using System.CommandLine;
using Gatewright.Cli.Clubs.Keeping;
using Gatewright.Cli.Clubs.Telling;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;
using Gatewright.Store;
using Gatewright.Store.Checking;

namespace Gatewright.Cli.Clubs.Verifying;

/// <summary>The grammar of <c>gatewright club verify</c>, and its run.</summary>
internal static class VerifyCommand
{
    public static Command Of(Terminal terminal)
    {
        var store = StoreOptions.OfAStore();
        var manner = new MannerOptions();
        var command = new Command(
            "verify",
            "Look a store through for anything that is not as it was written; others may go on working. Exit status: 0 sound, 1 there are faults.");
        store.AddTo(command);
        manner.AddTo(command);
        command.SetAction((result, cancellation) => ClubTeller.TellAsync(
            terminal, manner.Of(result), () => RunAsync(store.Of(result), cancellation)));
        return command;
    }

    private static async Task<Answer> RunAsync(StorePlace place, CancellationToken cancellation)
    {
        StoreLocation location = StoreFinder.Kept(place);
        StoreReport report = await StoreCheck.RunAsync(location, StoreCheck.UsualMost, cancellation).ConfigureAwait(false);
        return StoreFindings.Told("verified", $"The store {location.Name}", location.Name, null, report);
    }
}
