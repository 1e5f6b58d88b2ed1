using System.Globalization;
using Gatewright.Cli.Drawing;
using Gatewright.Core.Diagnosing;
using Gatewright.Journal.Learning;
using Gatewright.Words;

namespace Gatewright.Cli.Chances.Words;

/// <summary>What a table is and what was done to it, in words.</summary>
internal static class ToldWords
{
    public const string Chances = "How often each cause is met, before anything is read";
    public const string Weights = "How much the start weighs against a club's own jobs";
    public const string Reports = "How likely each report is";

    /// <summary>The first sentences.</summary>
    public static IReadOnlyList<string> Heading(Told told) => told switch
    {
        Told.Learnt learnt => [Learnt(learnt), .. Changes(learnt.Before, learnt.Table)],
        Told.Reset reset =>
        [
            $"{reset.File} is back to the defaults. As it was, it is kept in {reset.Copy}.",
            Forgotten(reset.Forgotten),
            .. Changes(reset.Forgotten, reset.Table),
        ],
        _ => [Shown(told)],
    };

    private static string Shown(Told told) => told.File is null
        ? "The defaults: this project's judgement, nothing of it measured or published."
        : told.Table.Jobs.Count == 0
            ? $"{told.File}: it has learnt from no job yet."
            : $"{told.File}: it has learnt from {Jobs(told.Table.Jobs)}.";

    private static string Learnt(Told.Learnt learnt)
    {
        string added = learnt.Added == 0 ? "Nothing new" : Figures.Count(learnt.Added, "new job");
        string again = learnt.Again == 0 ? string.Empty
            : $" {Figures.Count(learnt.Again, "row")} told what was known, and changed nothing.";
        return $"{added} for {learnt.File}, which has now learnt from {Jobs(learnt.Table.Jobs)}.{again}";
    }

    private static string Forgotten(ClubChances table)
    {
        int set = ChanceNumbers.All.Count(number => !number.Get(table).Equals(number.Default));
        return (table.Jobs.Count, set) switch
        {
            (0, 0) => "There was nothing to forget: it had learnt from no job, and every number was the default.",
            (_, 0) => $"Forgotten: {Jobs(table.Jobs)}.",
            (0, _) => $"Forgotten: {Figures.Count(set, "number")} that had been set.",
            _ => $"Forgotten: {Jobs(table.Jobs)}; and {Figures.Count(set, "number")} that had been set.",
        };
    }

    /// <summary>"208 jobs from 2026-04-04 to 2026-10-31 (gates 200, oars 0, levels 6, gauges 2)".</summary>
    private static string Jobs(JobRecord jobs)
    {
        if (jobs.Count == 0)
        {
            return "no job";
        }

        FoundCauses found = jobs.Found;
        return string.Create(CultureInfo.InvariantCulture,
            $"{Figures.Count(jobs.Count, "job")} from {Language.English.Day(jobs.Jobs.First().Day)} to {Language.English.Day(jobs.Jobs.Last().Day)} (gates {found.GatesChecked}, oars {found.OarsChecked}, levels {found.BoatsChecked}, gauges {found.GaugesChecked})");
    }

    /// <summary>"chances.pinOut: 0.015, now 0.0174."</summary>
    private static IEnumerable<string> Changes(ClubChances before, ClubChances after) => ChanceNumbers.All
        .Where(number => NumberWords.Figure(number.Now(before)) != NumberWords.Figure(number.Now(after)))
        .Select(number => $"{number.Key}: was {NumberWords.Figure(number.Now(before))}, now {NumberWords.Figure(number.Now(after))}.");
}
