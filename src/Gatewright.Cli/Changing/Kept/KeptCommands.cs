using System.CommandLine;
using Gatewright.Cli.Clubs.Telling;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;

namespace Gatewright.Cli.Changing.Kept;

/// <summary>The grammar of <c>gatewright change list</c>, <c>show</c>, <c>done</c>, <c>close</c> and <c>drop</c>.</summary>
internal static class KeptCommands
{
    /// <summary>Who may record these, for whoever may not.</summary>
    public const string WhoMay = "its keepers and helpers plan and do changes of a rig";

    private const string Statuses = " Exit status: 0 done, 2 the input is wrong and nothing was recorded, 74 the store cannot be used.";

    /// <summary>Lists them.</summary>
    public static Command List(Terminal terminal)
    {
        var boat = new Option<string?>("--boat") { Description = "Only those of this boat.", HelpName = "NAME" };
        var all = new Option<bool>("--all") { Description = "Those that are closed or were dropped, too." };
        var command = new Command("list", "List the changes of rig that stand among a club's jobs: how far each is, and what is left to read.") { boat, all };
        return Set(command, terminal, (result, place) => KeptRun.ListAsync(place, result.GetValue(boat), result.GetValue(all)));
    }

    /// <summary>Shows one.</summary>
    public static Command Show(Terminal terminal)
    {
        Argument<string> job = Job();
        var command = new Command("show", "Show a change that stands among a club's jobs: its steps, its parts, what to read again, what to mind.") { job };
        return Set(command, terminal, (result, place) => KeptRun.ShowAsync(place, result.GetValue(job)!));
    }

    /// <summary>Ticks steps of one.</summary>
    public static Command Done(Terminal terminal)
    {
        Argument<string> job = Job();
        var steps = new Argument<int[]>("STEP") { Description = "Its steps, by number from 1.", Arity = ArgumentArity.OneOrMore };
        Option<string> member = Member("The id of the member who did them.");
        var undo = new Option<bool>("--undo") { Description = "Take the ticks back: they are not done after all." };
        var command = new Command(
            "done",
            "Tick steps of a change: what they set is on record as set, not measured; riggers and oars are where they went; parts go from the shelf." + Statuses)
        {
            job, steps, member, undo,
        };
        return Set(command, terminal, (result, place) => KeptRun.DoneAsync(
            place, result.GetValue(job)!, result.GetValue(steps)!, result.GetValue(undo), result.GetValue(member)!));
    }

    /// <summary>Closes one as it is.</summary>
    public static Command Close(Terminal terminal)
    {
        Argument<string> job = Job();
        Option<string> member = Member("The id of the member who closes it.");
        var command = new Command(
            "close",
            "Close a change as it is, with steps to do or readings to take: what was set and not read since stays unsure until somebody reads it." + Statuses)
        {
            job, member,
        };
        return Set(command, terminal, (result, place) => KeptRun.CloseAsync(place, result.GetValue(job)!, result.GetValue(member)!));
    }

    /// <summary>Drops one.</summary>
    public static Command Drop(Terminal terminal)
    {
        Argument<string> job = Job();
        Option<string> member = Member("The id of the member who drops it.");
        var reason = new Option<string?>("--reason") { Description = "Why, for those who look back.", HelpName = "TEXT" };
        var command = new Command("drop", "Give a change up: steps that were done stay done, the parts of the others are promised to it no more." + Statuses)
        {
            job, member, reason,
        };
        return Set(command, terminal, (result, place) => KeptRun.DropAsync(place, result.GetValue(job)!, result.GetValue(reason), result.GetValue(member)!));
    }

    /// <summary>Who records.</summary>
    public static Option<string> Member(string description) => new("--member") { Description = description, HelpName = "ID", Required = true };

    private static Argument<string> Job() => new("JOB") { Description = "The change's key, as list tells it." };

    private static Command Set(Command command, Terminal terminal, Func<ParseResult, StorePlace, Task<Answer>> run)
    {
        var store = StoreOptions.OfAClub();
        var manner = new MannerOptions();
        store.AddTo(command);
        manner.AddTo(command);
        command.SetAction((result, _) => ClubTeller.TellAsync(terminal, manner.Of(result), () => run(result, store.Of(result))));
        return command;
    }
}
