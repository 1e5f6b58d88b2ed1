using System.CommandLine;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;

namespace Gatewright.Cli.Chances;

/// <summary>The grammar of <c>gatewright chances</c>.</summary>
internal static class ChancesCommand
{
    private const string Page = "docs/chances.md";

    public static Command Of(Terminal terminal)
    {
        Option<string?> chances = ChancesOption.Make();
        var form = new FormOptions(Page);
        Option<int?> width = WidthOption.Make();
        var command = new Command("chances", "Show the chances of causes and the likelihoods of reports that every why rests on, and where each comes from.")
        {
            chances, width, Learn(terminal), Reset(terminal),
        };
        form.AddTo(command);
        command.SetAction(result => new ChancesRun(terminal).Show(new(
            result.GetValue(chances), [], form.Of(result), result.GetValue(width))));
        return command;
    }

    private static Command Learn(Terminal terminal)
    {
        var jobs = new Argument<string[]>("JOBS")
        {
            Description = "Files of finished jobs: what was checked, and what was found; several causes at one gate in one row, gate-pitch + pin-aft.",
            Arity = ArgumentArity.OneOrMore,
        };
        Option<string> chances = Required("The table to teach; made from the defaults where it is not there.");
        var form = new FormOptions(Page);
        Option<int?> width = WidthOption.Make();
        var command = new Command("learn", "Teach the table of chances by finished jobs. A job that it knows already changes nothing.")
        {
            jobs, chances, width,
        };
        form.AddTo(command);
        MistypedOption.Refuse(command, jobs);
        command.SetAction(result => new ChancesRun(terminal).Learn(new(
            result.GetValue(chances), result.GetValue(jobs) ?? [], form.Of(result), result.GetValue(width))));
        return command;
    }

    private static Command Reset(Terminal terminal)
    {
        Option<string> chances = Required("The table to set back to the defaults; a copy of it is kept beside it.");
        var form = new FormOptions(Page);
        Option<int?> width = WidthOption.Make();
        var command = new Command("reset", "Set a table of chances back to the defaults, and say what is forgotten.")
        {
            chances, width,
        };
        form.AddTo(command);
        command.SetAction(result => new ChancesRun(terminal).Reset(new(
            result.GetValue(chances), [], form.Of(result), result.GetValue(width))));
        return command;
    }

    private static Option<string> Required(string description) => new("--chances")
    {
        Description = description,
        HelpName = "FILE.json",
        Required = true,
    };
}
