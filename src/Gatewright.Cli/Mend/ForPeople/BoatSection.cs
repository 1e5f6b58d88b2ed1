using System.Globalization;
using Gatewright.Cli.Drawing;
using Gatewright.Cli.Mend.Words;
using Gatewright.Core.Judging;
using Gatewright.Planning;
using Gatewright.Planning.Told;
using static Gatewright.Words.Wording;

namespace Gatewright.Cli.Mend.ForPeople;

/// <summary>One boat that is not good: what comes of it, and each job at its gate.</summary>
internal static class BoatSection
{
    private const int Indent = 10;

    public static void Write(Page page, PlannedBoat boat)
    {
        page.Add(BoatHeading.Of(boat.Check.Verdict, page.Width));
        page.Paragraph(OutcomeWords.Of(boat));
        Write(page, boat, "today", boat.Jobs);
        Write(page, boat, "once the parts are there", boat.AfterBuying);
        Lead(page, "again", OutcomeWords.GatesToReadAgain(boat));
        Lead(page, "next", PlanDocument.Next(boat, English));
        Lead(page, "mind", JobWords.Mind(boat.Jobs.Concat(boat.AfterBuying)));
        if (English.Cautions.For(boat.Check.Verdict) is { } caution)
        {
            page.Paragraph(
                caution, Indent, new Line().Add(" ").Add(boat.Check.Verdict.Verdict.Sign(), boat.Check.Verdict.Verdict.Ink()));
        }

        page.Blank();
    }

    private static void Write(Page page, PlannedBoat boat, string when, IReadOnlyList<MendingJob> jobs)
    {
        foreach (MendingJob job in jobs)
        {
            page.Add(new Line().Add(" ").Add(job.Gate.ToString(), Ink.Strong).Add($", {when}", Ink.Quiet));
            Write(page, boat.Check.Settings.Standard, job);
        }
    }

    private static void Write(Page page, Standard standard, MendingJob job)
    {
        const int MinutesWidth = 4;
        string minutes = job.Option.Minutes.ToString(CultureInfo.InvariantCulture).PadLeft(MinutesWidth) + " min";
        page.Paragraph(English.Work.Instruction(job.Option.Steps), Indent, new Line().Add(minutes, Ink.Quiet));
        foreach (string note in JobWords.Notes(job, standard))
        {
            page.Paragraph(note, Indent);
        }

        string takes = JobWords.Takes(job) is { } parts ? $"Takes {parts}. " : string.Empty;
        page.Paragraph($"{takes}Then expect {JobWords.Expect(job)}.", Indent, ink: Ink.Quiet);
    }

    private static void Lead(Page page, string word, string? text)
    {
        if (!string.IsNullOrEmpty(text))
        {
            page.Paragraph(text, Indent, new Line().Add(" ").Add(word, Ink.Strong));
        }
    }
}
