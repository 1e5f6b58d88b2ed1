using System.CommandLine;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;
using Gatewright.Core.Load;

namespace Gatewright.Cli.Balances;

/// <summary>The grammar of <c>gatewright balance</c>.</summary>
internal static class BalanceCommand
{
    public static Command Of(Terminal terminal)
    {
        var files = new Argument<string[]>("FILE")
        {
            Description = "Files of readings, all of one shed; - or a pipe is standard input.",
            Arity = ArgumentArity.ZeroOrMore,
        };
        Option<string?> chances = ChancesOption.Make();
        var boats = new Option<string[]>("--boat") { Description = "Only the boat of this name; give it again for another.", HelpName = "NAME" };
        string words = string.Join(", ", DriveProfile.All.Select(p => p.Name));
        var pull = new Option<string>("--pull") { Description = $"Whose pull: {words}.", HelpName = "PULL", DefaultValueFactory = _ => DriveProfile.Men.Name };
        pull.AcceptOnlyFromAmong([.. DriveProfile.All.Select(p => p.Name)]);
        var store = StoreOptions.OfAClub(StoreOptions.InsteadOfFiles);
        var form = new FormOptions();
        Option<int?> width = WidthOption.Make();
        var command = new Command(
            "balance",
            "What a boat's gates do to it on the water, by a model: the roll moment through the drive, each seat's handle load beside the others', and which gate to mend first, or whose sleeve to turn. For differences and directions; it judges nothing.")
        {
            files, chances, boats, pull, width,
        };
        store.AddTo(command);
        store.Exclude(command, files);
        form.AddTo(command);
        MistypedOption.Refuse(command, files);
        command.SetAction(result => new BalanceRun(terminal).Run(new(
            result.GetValue(files) ?? [],
            result.GetValue(chances),
            result.GetValue(boats) ?? [],
            DriveProfile.OfWord(result.GetValue(pull)!)!,
            store.OfGiven(result),
            form.Of(result),
            result.GetValue(width))));
        return command;
    }
}

/// <summary>What was asked of <c>gatewright balance</c>.</summary>
/// <param name="Files">Files of readings; "-" is standard input.</param>
/// <param name="Chances">A file with the club's table of chances; null for the defaults.</param>
/// <param name="Boats">Names of the boats; none means all.</param>
/// <param name="Pull">How hard is pulled.</param>
/// <param name="Place">A club in a store instead of files.</param>
/// <param name="Form">In which form to answer.</param>
/// <param name="Width">Columns to write in; null leaves it to the terminal.</param>
internal sealed record BalanceRequest(
    IReadOnlyList<string> Files, string? Chances, IReadOnlyList<string> Boats, DriveProfile Pull, StorePlace? Place, Form Form, int? Width);
