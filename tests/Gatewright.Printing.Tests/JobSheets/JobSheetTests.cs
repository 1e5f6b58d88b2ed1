using Gatewright.Core.Mending;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Jobs;
using Gatewright.Journal.Standing;
using Gatewright.Journal.Views;
using Gatewright.Printing.JobSheets;
using Gatewright.Printing.Tests.World;
using Gatewright.Words;

namespace Gatewright.Printing.Tests.JobSheets;

public class JobSheetTests
{
    [Fact]
    public void Each_job_has_its_cause_steps_parts_cautions_and_what_to_expect()
    {
        Wording say = Wording.English;
        foreach (JobView job in Printed.Jobs(Printed.Full))
        {
            BoatStanding boat = Printed.Full.Boats().Single(b => b.View.Key == job.Plan.Boat);
            using var pdf = new Poppler(JobSheetPrint.Of(Printed.Full.Club, [(job, boat)], ExampleClub.Imprint()));
            string said = pdf.Said();

            Assert.Contains(boat.View.Name, said, StringComparison.Ordinal);
            Assert.Contains(say.Names.Cause(job.Plan.Cause), said, StringComparison.Ordinal);
            Assert.NotEmpty(job.Plan.Steps);
            Assert.All(job.Plan.Steps, step => Assert.Contains(step, said, StringComparison.Ordinal));
            Assert.All(job.Plan.Parts, part => Assert.Contains(say.Names.Part(new PartCount(JobPart.PartOf(part), part.Count)), said, StringComparison.Ordinal));
            Assert.All(
                say.Cautions.Each(JobCautions.Of(JobCautions.Remedies(job), boat)),
                caution => Assert.Contains(caution, said, StringComparison.Ordinal));
            foreach (ExpectedAt expected in job.Plan.Expected)
            {
                string band = $"{say.Figures.Degrees((double)expected.From)}° to {say.Figures.Degrees((double)expected.To)}°";
                Assert.Contains($"{Sentence.Capital(say.Names.Station(expected.Station))} expect {band}", said, StringComparison.Ordinal);
            }
        }
    }

    /// <summary>A step that was done is ticked: its box has more ink in it than one that was not.</summary>
    [Fact]
    public void A_step_that_was_done_is_ticked()
    {
        JobView open = Printed.Jobs(Printed.Full)[0];
        ExampleClub done = Printed.Afresh().With(new StepDone(open.Plan.Job, 0));
        JobView ticked = Printed.Jobs(done).Single(j => j.Plan.Job == open.Plan.Job);

        Assert.True(Ink(Printed.Full, open) < Ink(done, ticked));

        static int Ink(ExampleClub club, JobView job)
        {
            using var pdf = new Poppler(JobSheetPrint.Of(club.Club, [(job, null)], ExampleClub.Imprint()));
            return pdf.Pictures(60, "ticked")[0].Dots.Count(d => d < 128);
        }
    }

    [Fact]
    public void Without_a_job_it_says_so()
    {
        using var pdf = new Poppler(JobSheetPrint.Of(Printed.Full.Club, [], ExampleClub.Imprint()));
        Assert.Contains("There is no job to print.", pdf.Said(), StringComparison.Ordinal);
    }
}
