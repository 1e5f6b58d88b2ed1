using System.CommandLine;
using Gatewright.Cli.Clubs.BackingUp;
using Gatewright.Cli.Clubs.Exporting;
using Gatewright.Cli.Clubs.Importing;
using Gatewright.Cli.Clubs.Listing;
using Gatewright.Cli.Clubs.Looking;
using Gatewright.Cli.Clubs.Verifying;
using Gatewright.Cli.Terminals;

namespace Gatewright.Cli.Clubs;

/// <summary>The grammar of <c>gatewright club</c>: each thing it does is in a folder of its own.</summary>
internal static class ClubCommand
{
    public static Command Of(Terminal terminal) => new(
        "club", "Look after the clubs of a store: list, look back, export, import, verify, back up, restore. Exit status 74: the store cannot be used.")
    {
        ListCommand.Of(terminal),
        ChangesCommand.Of(terminal),
        DayCommand.Of(terminal),
        ExportCommand.Of(terminal),
        ImportCommand.Of(terminal),
        VerifyCommand.Of(terminal),
        BackupCommand.Of(terminal),
        RestoreCommand.Of(terminal),
    };
}
