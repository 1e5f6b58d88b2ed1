using System.CommandLine;
using Gatewright.Cli.Clubs.Telling;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;

namespace Gatewright.Cli.Clubs.Exporting;

/// <summary>The grammar of <c>gatewright club export</c>.</summary>
internal static class ExportCommand
{
    public static Command Of(Terminal terminal)
    {
        var file = new Argument<string?>("FILE.zip")
        {
            Description = "The club's file to write: docs/club-file.md describes it.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var tables = new Option<string?>("--csv")
        {
            Description = "Write the club as tables for a spreadsheet into this folder instead.",
            HelpName = "FOLDER",
        };
        var replace = new Option<bool>("--replace") { Description = "Replace what is there by that name." };
        var store = StoreOptions.OfAClub();
        var manner = new MannerOptions();
        var command = new Command("export", "Write a club, with its photos, as one file that can be read without this program; or as tables.")
        {
            file, tables, replace,
        };
        store.AddTo(command);
        manner.AddTo(command);
        command.Validators.Add(result =>
        {
            if (result.GetValue(file) is null == result.GetValue(tables) is null)
            {
                result.AddError("Say where to: FILE.zip for the club's file, or --csv FOLDER for tables.");
            }
        });
        command.SetAction((result, cancellation) => ClubTeller.TellAsync(terminal, manner.Of(result), () =>
            result.GetValue(file) is { } zip
                ? ExportRun.FileAsync(store.Of(result), zip, result.GetValue(replace), cancellation)
                : ExportRun.TablesAsync(store.Of(result), result.GetValue(tables)!, result.GetValue(replace), cancellation)));
        return command;
    }
}
