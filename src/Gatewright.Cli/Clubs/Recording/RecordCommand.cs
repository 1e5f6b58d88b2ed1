using System.CommandLine;
using Gatewright.Cli.Clubs.Telling;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;

namespace Gatewright.Cli.Clubs.Recording;

/// <summary>The grammar of <c>gatewright record</c>.</summary>
internal static class RecordCommand
{
    public static Command Of(Terminal terminal)
    {
        var files = new Argument<string[]>("FILE")
        {
            Description = "Files of readings, all of one shed; - or a pipe is standard input.",
            Arity = ArgumentArity.ZeroOrMore,
        };
        var member = new Option<string>("--member")
        {
            Description = "The id of the member who records: of one of the club's, where it has any.",
            HelpName = "ID",
            Required = true,
        };
        var stores = new Option<string?>("--stores")
        {
            Description = "What lies on the shelf, counted: a CSV file of part, size and count.",
            HelpName = "FILE.csv",
        };
        var oars = new Option<string?>("--oars")
        {
            Description = "Oars, sets and what was read of them: a CSV file.",
            HelpName = "FILE.csv",
        };
        var newClub = new Option<string?>("--new-club")
        {
            Description = "Make the club of --club, and call it this.",
            HelpName = "NAME",
        };
        var store = StoreOptions.OfAClub();
        var manner = new MannerOptions();
        var command = new Command(
            "record",
            "Record files of readings in a club's journal, for good. What is on record already is not recorded twice. Exit status: 0 recorded, 2 the input is wrong and nothing was, 74 the store cannot be used.")
        {
            files, member, stores, oars, newClub,
        };
        store.AddTo(command);
        manner.AddTo(command);
        MistypedOption.Refuse(command, files);
        command.SetAction((result, cancellation) => ClubTeller.TellAsync(terminal, manner.Of(result), () => new RecordRun(terminal).RunAsync(
            new(
                result.GetValue(files) ?? [],
                result.GetValue(stores),
                result.GetValue(member)!,
                result.GetValue(newClub),
                store.Of(result))
            {
                Oars = result.GetValue(oars),
            },
            cancellation)));
        return command;
    }
}
