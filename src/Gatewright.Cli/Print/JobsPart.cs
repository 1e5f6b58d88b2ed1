using System.CommandLine;
using Gatewright.Cli.Clubs.Telling;
using Gatewright.Cli.Terminals;
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
        var command = new Command("job", "Job sheets: a club's open jobs, a page each, with steps to tick and the re-check to write down.") { jobs };
        new PrintOptions().Set(command, terminal, result => new("job", (shed, errors) => Make(shed, result.GetValue(jobs) ?? [], errors)));
        return command;
    }

    private static PrintedWork? Make(PrintedShed shed, string[] keys, List<InputProblem> errors)
    {
        var all = ClubJobs.Of(shed.Club);
        List<JobView> open = [.. all.Open.Where(j => shed.Boats.Any(b => b.View.Key == j.Plan.Boat))];
        foreach (string key in keys.Where(key => all.Find(key) is null))
        {
            string known = open.Count == 0 ? "it has none that is open" : $"those open are {string.Join(", ", open.Select(j => j.Plan.Job))}";
            errors.Add(new("--job", null, null, key, $"is no job of this club: {known}."));
        }

        if (errors.Count > 0)
        {
            return null;
        }

        List<JobView> chosen = keys.Length == 0 ? open : [.. keys.Select(key => all.Find(key)!)];
        return new(
            JobSheetPrint.Of(shed.Club, [.. chosen.Select(j => (j, shed.Boats.FirstOrDefault(b => b.View.Key == j.Plan.Boat)))], shed.Imprint),
            chosen.Count,
            Counted.Of(chosen.Count, "job sheet"));
    }
}
