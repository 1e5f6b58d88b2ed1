using System.CommandLine;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;
using Gatewright.Core;
using Gatewright.Core.Rig;

namespace Gatewright.Cli.Rigs;

/// <summary>The grammar of <c>gatewright targets</c>.</summary>
internal static class TargetsCommand
{
    public static Command Of(Terminal terminal)
    {
        var boatClass = new Option<string>("--class") { Description = "The class of boat.", HelpName = "CLASS", Required = true };
        boatClass.AcceptOnlyFromAmong([.. BoatClass.All.Select(c => c.Name)]);
        Option<string?> crew = CrewOption.Make($"Who rows it: {Crews.Choice}. Without it, targets wide enough for women and men.");
        var store = StoreOptions.OfAClub("A club in a store, for what it has set itself: its id, which may be left out with --data or --database where the store has one club.");
        var form = new FormOptions();
        Option<int?> width = WidthOption.Make();
        var command = new Command(
            "targets",
            "List the targets of the rig by class and crew: value, tolerance, and where each comes from; how each measure is taken, and how sure it usually is.")
        {
            boatClass, crew, width,
        };
        store.AddTo(command);
        form.AddTo(command);
        command.SetAction(result => new TargetsRun(terminal).Run(new(
            BoatClass.Parse(result.GetValue(boatClass)!),
            Crews.OfWord(result.GetValue(crew)),
            store.OfGiven(result),
            form.Of(result),
            result.GetValue(width))));
        return command;
    }
}

/// <summary>What was asked of <c>gatewright targets</c>.</summary>
/// <param name="Class">The class.</param>
/// <param name="Crew">Who rows it; null for women and men together.</param>
/// <param name="Place">A club in a store; null for the starting targets.</param>
/// <param name="Form">In which form to answer.</param>
/// <param name="Width">Columns to write in; null leaves it to the terminal.</param>
internal sealed record TargetsRequest(BoatClass Class, Crew? Crew, StorePlace? Place, Form Form, int? Width);
