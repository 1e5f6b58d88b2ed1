using System.CommandLine;
using System.CommandLine.Parsing;
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
        var boatClass = new Option<string?>("--class") { Description = "The class of boat.", HelpName = "CLASS" };
        boatClass.AcceptOnlyFromAmong([.. BoatClass.All.Select(c => c.Name)]);
        Option<string?> crew = CrewOption.Make($"Who rows it: {Crews.Choice}. Without it, targets wide enough for women and men.");
        var boat = new Option<string?>("--boat") { Description = "Instead of a class, a boat of the club: its own targets before those of its class and crew.", HelpName = "NAME" };
        var set = new Option<string[]>("--set")
        {
            Description = "Set a target of the club, for the class and crew or the boat: MEASURE=VALUE+-TOLERANCE, such as span=159+-1 or height/port=16+-1; MEASURE= takes it away. Give it again for another.",
            HelpName = "TARGET",
        };
        var member = new Option<string?>("--member") { Description = "With --set: the id of the member who sets it.", HelpName = "ID" };
        var store = StoreOptions.OfAClub("A club in a store, for what it has set itself: its id, which may be left out with --data or --database where the store has one club.");
        var form = new FormOptions();
        Option<int?> width = WidthOption.Make();
        var command = new Command(
            "targets",
            "List the targets of the rig by class and crew, or of a boat: value, tolerance, and where each comes from; how each measure is taken, and how sure it usually is. Sets a club's own.")
        {
            boatClass, crew, boat, set, member, width,
        };
        store.AddTo(command);
        form.AddTo(command);
        command.Validators.Add(Check);
        command.SetAction(result => new TargetsRun(terminal).Run(new(
            BoatClass.TryParse(result.GetValue(boatClass)),
            Crews.OfWord(result.GetValue(crew)),
            result.GetValue(boat),
            result.GetValue(set) ?? [],
            result.GetValue(member),
            store.OfGiven(result),
            form.Of(result),
            result.GetValue(width))));
        return command;

        void Check(CommandResult result)
        {
            if (result.GetValue(boatClass) is null == result.GetValue(boat) is null)
            {
                result.AddError("--class and --boat: give one of them.");
            }

            bool isOfAClub = store.AreGiven(result);
            if (!isOfAClub && (result.GetValue(boat) is not null || result.GetValue(set) is { Length: > 0 }))
            {
                result.AddError("--boat and --set are of a club: name it with --club, --data or --database.");
            }

            if (result.GetValue(set) is { Length: > 0 } && result.GetValue(member) is null)
            {
                result.AddError("--set: say who sets it, with --member.");
            }
        }
    }
}
