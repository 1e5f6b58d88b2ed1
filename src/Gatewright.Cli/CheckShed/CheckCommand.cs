using System.CommandLine;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;

namespace Gatewright.Cli.CheckShed;

/// <summary>The grammar of <c>gatewright check</c>.</summary>
internal static class CheckCommand
{
    public static Command Of(Terminal terminal)
    {
        var files = new Argument<string[]>("FILE")
        {
            Description = "Files of readings, all of one shed; - or a pipe is standard input.",
            Arity = ArgumentArity.ZeroOrMore,
        };
        Option<string?> standard = StandardOption.MakeForAShed();
        Option<string?> chances = ChancesOption.Make();
        var boats = new Option<string[]>("--boat")
        {
            Description = "Only the boat of this name; give it again for another.",
            HelpName = "NAME",
        };
        var all = new Option<bool>("--all") { Description = "Draw sound boats in full, too." };
        var explain = new Option<bool>("--explain") { Description = "Say where the uncertainty of each reading that decided something comes from." };
        var store = StoreOptions.OfAClub(StoreOptions.InsteadOfFiles);
        var form = new FormOptions();
        Option<int?> width = WidthOption.Make();

        var command = new Command(
            "check",
            "Judge the gates of a shed's boats from files of readings, or of a club's in a store. Exit status: 0 all good, 1 something needs attention, 2 the input is wrong, 74 the store cannot be used.")
        {
            files, standard, chances, boats, all, explain, width,
        };
        store.AddTo(command);
        store.Exclude(command, files);
        form.AddTo(command);
        MistypedOption.Refuse(command, files);
        command.SetAction(result => new CheckRun(terminal).Run(new(
            result.GetValue(files) ?? [],
            result.GetValue(standard),
            result.GetValue(chances),
            result.GetValue(boats) ?? [],
            store.OfGiven(result),
            form.Of(result),
            result.GetValue(all),
            result.GetValue(explain),
            result.GetValue(width))));
        return command;
    }
}
