using System.CommandLine;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;

namespace Gatewright.Cli.Mend;

/// <summary>The grammar of <c>gatewright mend</c>.</summary>
internal static class MendCommand
{
    public static Command Of(Terminal terminal)
    {
        var files = new Argument<string[]>("FILE")
        {
            Description = "Files of readings, all of one shed; - or a pipe is standard input.",
            Arity = ArgumentArity.ZeroOrMore,
        };
        var stores = new Option<string?>("--stores")
        {
            Description = "What lies on the shelf: a CSV file of part, size and count. Without it the club's own shelf, or a bare one, and all is bought.",
            HelpName = "FILE.csv",
        };
        Option<string?> standard = StandardOption.MakeForAShed();
        Option<string?> chances = ChancesOption.Make();
        Option<string[]> boats = Names("--boat", "Only the boat of this name; give it again for another.");
        Option<string[]> backstays = Names("--backstay", "A boat whose riggers have backstays that can be set; give it again for another.");
        var store = StoreOptions.OfAClub(StoreOptions.InsteadOfFiles);
        var form = new FormOptions("docs/mend-format.md");
        Option<int?> width = WidthOption.Make();

        var command = new Command(
            "mend",
            "Plan the mending of a whole shed with what lies on the shelf, and say what to buy for the rest. Exit status: 0 all good, 1 something needs attention, 2 the input is wrong, 74 the store cannot be used.")
        {
            files, stores, standard, chances, boats, backstays, width,
        };
        store.AddTo(command);
        store.Exclude(command, files);
        form.AddTo(command);
        MistypedOption.Refuse(command, files);
        command.SetAction(result => new MendRun(terminal).Run(new(
            result.GetValue(files) ?? [],
            result.GetValue(stores),
            result.GetValue(standard),
            result.GetValue(chances),
            result.GetValue(boats) ?? [],
            store.OfGiven(result),
            result.GetValue(backstays) ?? [],
            form.Of(result),
            result.GetValue(width))));
        return command;
    }

    private static Option<string[]> Names(string name, string description) => new(name)
    {
        Description = description,
        HelpName = "NAME",
    };
}
