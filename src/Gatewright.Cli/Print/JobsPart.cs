using System.CommandLine;
using Gatewright.Cli.Clubs.Telling;
using Gatewright.Cli.Terminals;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Changing;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Jobs;
using Gatewright.Journal.Views;
using Gatewright.Printing.JobSheets;

namespace Gatewright.Cli.Print;

/// <summary>The grammar of <c>gatewright print job</c>.</summary>
internal static class JobsPart
{
    public static Command Of(Terminal terminal)
    {
        var jobs = new Option<string[]>("--job")
        {
            Description = "Only the job of this key; give it again for another. Without it, all that are open.",
            HelpName = "KEY",
        };
        var command = new Command("job", "Job sheets: a club's open jobs and changes of rig, a page each, with steps to tick and the re-check to write down.") { jobs };
        new PrintOptions().Set(command, terminal, result => new("job", (shed, errors) => Make(shed, result.GetValue(jobs) ?? [], errors)));
        return command;
    }

    private static PrintedWork? Make(PrintedShed shed, string[] keys, List<InputProblem> errors)
    {
        List<IWork> all = [.. ClubJobs.Of(shed.Club).All, .. RigChanges.Of(shed.Club)];
        List<IWork> open = [.. all.Where(w => IsOpen(w) && shed.Boats.Any(b => b.View.Key == w.Boat))];
        foreach (string key in keys.Where(key => all.TrueForAll(w => w.Key != key)))
        {
            string known = open.Count == 0 ? "it has none that is open" : $"those open are {string.Join(", ", open.Select(w => w.Key))}";
            errors.Add(new("--job", null, null, key, $"is no job of this club: {known}."));
        }

        if (errors.Count > 0)
        {
            return null;
        }

        List<IWork> chosen = keys.Length == 0 ? open : [.. keys.Select(key => all.Find(w => w.Key == key)!)];
        return new(
            JobSheetPrint.Of(shed.Club, [.. chosen.Select(j => (j, shed.Boats.FirstOrDefault(b => b.View.Key == j.Boat)))], shed.Imprint),
            chosen.Count,
            Counted.Of(chosen.Count, "job sheet"));
    }

    private static bool IsOpen(IWork work) => work switch
    {
        JobView job => job.IsOpen,
        RigChange change => change.IsOpen(MeasuringSettings.Default),
        _ => false,
    };
}
