using System.CommandLine;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;
using Gatewright.Core.Rig;

namespace Gatewright.Cli.Rigs;

/// <summary>The grammar of <c>gatewright rig</c>.</summary>
internal static class RigCommand
{
    public static Command Of(Terminal terminal)
    {
        var files = new Argument<string[]>("FILE")
        {
            Description = "Files of readings with measures of the rig; - or a pipe is standard input.",
            Arity = ArgumentArity.ZeroOrMore,
        };
        var boats = new Option<string[]>("--boat")
        {
            Description = "Only the boat of this name; give it again for another.",
            HelpName = "NAME",
        };
        Option<string?> crew = CrewOption.Make(
            $"Who rows the boats: {Crews.Choice}. Without it what the club says, else targets wide enough for women and men.");
        var inches = new Option<bool>("--inches") { Description = "Lengths in inches; JSON stays in centimetres." };
        var store = StoreOptions.OfAClub(StoreOptions.InsteadOfFiles);
        var form = new FormOptions();
        Option<int?> width = WidthOption.Make();
        var command = new Command(
            "rig",
            "Show the measures of a shed's rigs beside their targets, and judge them: each by itself, starboard against port, seat against seat. Exit status: 0 all good, 1 something needs attention, 2 the input is wrong, 74 the store cannot be used.")
        {
            files, boats, crew, inches, width,
        };
        store.AddTo(command);
        store.Exclude(command, files);
        form.AddTo(command);
        MistypedOption.Refuse(command, files);
        command.SetAction(result => new RigRun(terminal).Run(new(
            result.GetValue(files) ?? [],
            result.GetValue(boats) ?? [],
            Crews.OfWord(result.GetValue(crew)),
            result.GetValue(inches),
            store.OfGiven(result),
            form.Of(result),
            result.GetValue(width))));
        return command;
    }
}
