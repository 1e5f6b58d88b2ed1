using System.CommandLine;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;

namespace Gatewright.Cli.Oars;

/// <summary>What was asked of <c>gatewright oars</c>.</summary>
/// <param name="Files">Files of oars; "-" is standard input.</param>
/// <param name="Sets">Names of the sets; none means all.</param>
/// <param name="Match">How many oars to match from all that are asked for; null for none.</param>
/// <param name="Place">A club in a store instead of files.</param>
/// <param name="Form">In which form to answer.</param>
/// <param name="Width">Columns to write in; null leaves it to the terminal.</param>
internal sealed record OarsRequest(
    IReadOnlyList<string> Files, IReadOnlyList<string> Sets, int? Match, StorePlace? Place, Form Form, int? Width);

/// <summary>The grammar of <c>gatewright oars</c>.</summary>
internal static class OarsCommand
{
    public static Command Of(Terminal terminal)
    {
        var files = new Argument<string[]>("FILE")
        {
            Description = "Files of oars; - or a pipe is standard input.",
            Arity = ArgumentArity.ZeroOrMore,
        };
        var sets = new Option<string[]>("--set")
        {
            Description = "Only the set of this name; give it again for another.",
            HelpName = "NAME",
        };
        var match = new Option<int?>("--match")
        {
            Description = "Also say which so many oars of those asked for are most alike in length, inboard and sleeve.",
            HelpName = "COUNT",
        };
        match.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<int?>() is < 2 or > 40)
            {
                result.AddError("--match: give a number from 2 to 40.");
            }
        });
        var store = StoreOptions.OfAClub(StoreOptions.InsteadOfFiles);
        var form = new FormOptions();
        Option<int?> width = WidthOption.Make();
        var command = new Command(
            "oars",
            "Compare the oars of each set: sleeves read on the gunwale, lengths, inboards, weights; which stands out, and how to turn its sleeve. Exit status: 0 all good, 1 something needs attention, 2 the input is wrong, 74 the store cannot be used.")
        {
            files, sets, match, width,
        };
        store.AddTo(command);
        store.Exclude(command, files);
        form.AddTo(command);
        MistypedOption.Refuse(command, files);
        command.SetAction(result => new OarsRun(terminal).Run(new(
            result.GetValue(files) ?? [],
            result.GetValue(sets) ?? [],
            result.GetValue(match),
            store.OfGiven(result),
            form.Of(result),
            result.GetValue(width))));
        return command;
    }
}
