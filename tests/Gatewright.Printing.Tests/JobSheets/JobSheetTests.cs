using Gatewright.Core.Mending;
using Gatewright.Journal.Changing;
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

    [Fact]
    public void A_change_s_steps_stand_in_the_language_that_is_printed()
    {
        ExampleClub club = ExampleClub.Shed();
        club.With(Printed.Change(club.Key("Nuthatch")) with
        {
            Steps = [new("Seat 2: set span.", 2, [], Texts: new Dictionary<string, string> { ["de"] = "Platz 2: Dollenabstand einstellen." }), new("Seat 3: an older step.", 3, [])],
        });
        RigChange change = RigChanges.Of(club.Club).Single();
        string Said(Language language)
        {
            using var pdf = new Poppler(JobSheetPrint.Of(club.Club, [(change, null)], ExampleClub.Imprint(language)));
            return pdf.Said();
        }

        Assert.Contains("Seat 2: set span.", Said(Language.English), StringComparison.Ordinal);
        Assert.Contains("Platz 2: Dollenabstand einstellen.", Said(Language.German), StringComparison.Ordinal);
        Assert.Contains("Seat 3: an older step.", Said(Language.German), StringComparison.Ordinal);
    }

    [Fact]
    public void A_change_of_the_rig_has_its_steps_parts_cautions_and_what_to_read()
    {
        RigChange change = RigChanges.Of(Printed.Full.Club).Single();
        using var pdf = new Poppler(JobSheetPrint.Of(Printed.Full.Club, [(change, null)], ExampleClub.Imprint()));
        string said = pdf.Said();

        Assert.Contains("Change to Regatta", said, StringComparison.Ordinal);
        Assert.All(change.Plan.Steps, step => Assert.Contains(step.Text, said, StringComparison.Ordinal));
        Assert.Contains("1 × insert", said, StringComparison.Ordinal);
        Assert.Contains("Seat 2: span, 160.0 cm to 161.0 cm", said, StringComparison.Ordinal);
        Assert.Contains("Seat 3 port: pitch at the catch", said, StringComparison.Ordinal);
        Assert.All(Wording.English.Cautions.Each(change.Cautions), caution => Assert.Contains(caution, said, StringComparison.Ordinal));
    }

    /// <summary>A caution that is read after the step comes too late.</summary>
    [Fact]
    public void What_is_to_be_minded_comes_before_the_steps()
    {
        JobView job = Printed.Jobs(Printed.Full)[0];
        BoatStanding boat = Printed.Full.Boats().Single(b => b.View.Key == job.Plan.Boat);
        RigChange change = RigChanges.Of(Printed.Full.Club).Single();
        using var ofJob = new Poppler(JobSheetPrint.Of(Printed.Full.Club, [(job, boat)], ExampleClub.Imprint()));
        using var ofChange = new Poppler(JobSheetPrint.Of(Printed.Full.Club, [(change, null)], ExampleClub.Imprint()));
        Assert.All([ofJob, ofChange], pdf =>
        {
            IReadOnlyList<Word> words = pdf.Pages()[0].Words;
            Assert.True(words.First(w => w.Text == "Mind").Top < words.First(w => w.Text == "Steps").Top);
        });
    }

    /// <summary>The unit stands behind the box; a step that was done is ticked, so that its sheet has more ink.</summary>
    [Fact]
    public void A_change_s_boxes_have_their_units_and_its_done_steps_a_tick()
    {
        ExampleClub done = Printed.Afresh().With(new StepDone("change-1", 1));
        using var open = new Poppler(JobSheetPrint.Of(Printed.Full.Club, [(RigChanges.Of(Printed.Full.Club).Single(), null)], ExampleClub.Imprint()));
        using var ticked = new Poppler(JobSheetPrint.Of(done.Club, [(RigChanges.Of(done.Club).Single(), null)], ExampleClub.Imprint()));
        Page page = open.Pages()[0];

        // "Seat 2: span" in centimetres, "Seat 3 port: pitch at the catch" in degrees.
        Assert.Equal("cm", page.Words.Where(w => w.Left > 150 && w.Text is "cm" or "°").OrderBy(w => w.Top).First(w => w.Left > 150).Text);
        Assert.Equal("°", page.Words.Where(w => w.Left > 150 && w.Text is "cm" or "°").OrderBy(w => w.Top).Last(w => w.Left > 150).Text);
        Assert.True(Ticks(open) < Ticks(ticked));

        // The band of the two steps alone: what else is on the sheet differs by its parts.
        static int Ticks(Poppler pdf)
        {
            double step = pdf.Pages()[0].Words.First(w => w.Text == "Steps").Bottom;
            GreyPicture picture = pdf.Pictures(100, "change-steps")[0];
            int dots = 0;
            for (int y = (int)(step / 25.4 * 100); y < (int)((step + 15) / 25.4 * 100); y++)
            {
                for (int x = 0; x < picture.Width; x++)
                {
                    dots += picture.Dots[(y * picture.Width) + x] < 128 ? 1 : 0;
                }
            }

            return dots;
        }
    }

    [Fact]
    public void What_was_read_of_a_change_is_not_asked_for_again()
    {
        ExampleClub read = Printed.Afresh().With(new StepDone("change-1", 0), new MeasureTaken(Printed.Full.Key("Nuthatch"), "span", 2, 160.4m, "cm"));
        using var pdf = new Poppler(JobSheetPrint.Of(read.Club, [(RigChanges.Of(read.Club).Single(), null)], ExampleClub.Imprint()));

        Assert.DoesNotContain("Seat 2: span, 160 cm", pdf.Said(), StringComparison.Ordinal);
    }

    /// <summary>Put down in English, read in German: the steps are those that the same remedy has there.</summary>
    [Fact]
    public void The_steps_stand_in_the_language_of_the_sheet()
    {
        var german = Wording.In(Language.German);
        int told = 0;
        foreach (JobView job in Printed.Jobs(Printed.Full))
        {
            if (JobRemedy.Of(Printed.Full.Club, job, ClubSettings.Of(Printed.Full.Club)) is not { } remedy)
            {
                continue;
            }

            told++;
            using var pdf = new Poppler(JobSheetPrint.Of(Printed.Full.Club, [(job, null)], ExampleClub.Imprint(Language.German)));
            string said = pdf.Said();

            Assert.All(german.Remedies.Steps(remedy), step => Assert.Contains(step, said, StringComparison.Ordinal));
            Assert.All(job.Plan.Steps, step => Assert.DoesNotContain(step, said, StringComparison.Ordinal));
        }

        Assert.True(told > 0, "No job of the example has a remedy.");
    }

    /// <summary>Words of a person's own are nobody's to translate.</summary>
    [Fact]
    public void Steps_that_the_remedy_does_not_make_stay_as_they_were_put_down()
    {
        JobView open = Printed.Jobs(Printed.Full)[0];
        ExampleClub own = Printed.Afresh().With(open.Plan with { Job = "own", Steps = ["Ask the boatbuilder first.", .. open.Plan.Steps] });
        JobView job = Printed.Jobs(own).Single(j => j.Plan.Job == "own");
        using var pdf = new Poppler(JobSheetPrint.Of(own.Club, [(job, null)], ExampleClub.Imprint(Language.German)));
        string said = pdf.Said();

        Assert.All(job.Plan.Steps, step => Assert.Contains(step, said, StringComparison.Ordinal));
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
