using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Core.Mending;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Jobs;
using Gatewright.Journal.Standing;
using Gatewright.Journal.Tests.Replay;
using Gatewright.Journal.Views;
using Gatewright.Words;

namespace Gatewright.Journal.Tests.Jobs;

/// <summary>From a cause to a closed job, as the journal tells it.</summary>
public sealed class JobStoryTests
{
    private static readonly CheckSettings Settings = CheckSettings.Default;

    [Fact]
    public async Task A_wrong_insert_is_offered_with_its_remedy_and_becomes_a_job_with_steps_parts_and_what_to_expect()
    {
        Telling club = Telling.WrongInsert();

        JobPlanned plan = await PlannedAsync(club);

        Assert.Equal((Cause.GatePitch, "insert-swap", 1, Side.Starboard), (plan.Cause, plan.Remedy, plan.Seat, plan.Side));
        Assert.Equal([new PartUsed("insert", 4, 1)], plan.Parts);
        Assert.Contains("4°", plan.Steps[0], StringComparison.Ordinal);
        Assert.Equal([Station.Catch, Station.Abeam, Station.Finish], plan.Expected.Select(e => e.Station));
        Assert.All(plan.Expected, e => Assert.True(e.From < e.Value && e.Value < e.To, $"{e}"));

        // An insert of 4° on a pin that stands upright as far as one can tell: the new insert's own 0.3° round 4.
        Assert.All(plan.Expected, e => Assert.InRange(e.Value, 3.6m, 4.4m));
    }

    [Fact]
    public async Task Steps_are_ticked_and_unticked_each_on_its_own()
    {
        Telling club = Telling.WrongInsert();
        club.Tell(await PlannedAsync(club), new StepDone("j1", 0));
        Assert.Equal([0], Job(club).StepsDone);

        club.Tell([.. Job(club).StepRecords(0).Select(r => new Retracted(r.Entry.Id))]);

        Assert.Empty(Job(club).StepsDone);
        Assert.True(Job(club).IsOpen);
    }

    [Fact]
    public async Task A_gate_that_reads_as_predicted_is_mended_and_the_cause_is_found()
    {
        Telling club = Telling.WrongInsert();
        club.Tell(await PlannedAsync(club));
        Assert.Null(Rechecked(club).Outcome);

        club.Tell(new BoatLaid("after", "teal", Lie.Upright, LevelBasis.Read, 0, 0));
        club.Read("teal", Telling.Wrong, 4, 4, 4, "j1", "after");

        JobRecheck proof = Rechecked(club);
        Assert.Equal(RecheckOutcome.Mended, proof.Judged?.Outcome);
        Assert.All(proof.Stations, s => Assert.True(s.IsInside, $"{s.Expected.Station}"));
        Assert.Null(JobRecheck.Found(Job(club), proof.Outcome));

        club.Tell(new StepDone("j1", 0));
        Assert.Equal(Cause.GatePitch, JobRecheck.Found(Job(club), proof.Outcome));
    }

    /// <summary>What was predicted holds once all is done: before that a gate that reads so proves no cause.</summary>
    [Fact]
    public void A_job_of_which_a_step_is_left_finds_no_cause()
    {
        Telling club = Telling.WrongInsert();
        club.Tell(new JobPlanned("j1", "teal", Cause.PinAft, "straighten-pin", ["Straighten it", "Tighten it"], [], [], 1, Side.Starboard), new StepDone("j1", 0));
        Assert.Equal((1, true, false), (Job(club).StepsMarked, Job(club).IsBegun, Job(club).IsWorked));
        Assert.Null(JobRecheck.Found(Job(club), RecheckOutcome.Mended));

        club.Tell(new StepDone("j1", 1));

        Assert.Equal(Cause.PinAft, JobRecheck.Found(Job(club), RecheckOutcome.Mended));
    }

    [Fact]
    public async Task One_station_that_reads_as_predicted_proves_nothing_and_finds_no_cause()
    {
        Telling club = Telling.WrongInsert();
        club.Tell(await PlannedAsync(club));
        club.Tell(
            new BoatLaid("after", "teal", Lie.Upright, LevelBasis.Read, 0, 0),
            new ReadingTaken("after", "teal", ReadItem.Gate, Telling.Wrong.Seat, Telling.Wrong.Side, 4, Station.Abeam, null, null, "j1"));

        JobRecheck proof = Rechecked(club);

        Assert.True(proof.IsPartlyRead);
        Assert.Null(proof.Outcome);
        Assert.Null(JobRecheck.Found(Job(club), proof.Outcome));
    }

    [Theory]
    [InlineData(2, RecheckOutcome.NotMended)]
    [InlineData(7.5, RecheckOutcome.Otherwise)]
    public async Task A_gate_that_does_not_read_as_predicted_finds_no_cause(double reads, RecheckOutcome expected)
    {
        Telling club = Telling.WrongInsert();
        club.Tell(await PlannedAsync(club));
        club.Tell(new BoatLaid("after", "teal", Lie.Upright, LevelBasis.Read, 0, 0));
        club.Read("teal", Telling.Wrong, (decimal)reads, (decimal)reads, (decimal)reads, "j1", "after");

        JobRecheck proof = Rechecked(club);

        Assert.Equal(expected, proof.Judged?.Outcome);
        Assert.Null(JobRecheck.Found(Job(club), proof.Outcome));
    }

    [Fact]
    public async Task What_was_read_to_prove_a_job_speaks_for_the_gate_before_the_job_is_closed_and_after()
    {
        Telling club = Telling.WrongInsert();
        club.Tell(await PlannedAsync(club));
        Assert.Equal(Verdict.Stop, await VerdictAsync(club));
        club.Tell(new BoatLaid("after", "teal", Lie.Upright, LevelBasis.Read, 0, 0));
        club.Read("teal", Telling.Wrong, 4, 4, 4, "j1", "after");
        Assert.Equal(Verdict.Good, await VerdictAsync(club));

        club.Tell(new JobDone("j1", Cause.GatePitch));

        Assert.Equal(Verdict.Good, await VerdictAsync(club));
        Assert.True(Job(club).IsDone);
        Assert.Empty(JobReadAgain.Of(Job(club), await club.StandingAsync()).Gates);
        Assert.Equal(1, new ChancesView(club.Club).Found.GatePitch);
    }

    [Fact]
    public async Task A_job_closed_without_a_reading_leaves_its_gate_to_be_read()
    {
        Telling club = Telling.WrongInsert();
        club.Tell(await PlannedAsync(club), new JobDone("j1"));

        BoatStanding boat = await club.StandingAsync();

        Assert.Equal([Telling.Wrong], JobReadAgain.Of(Job(club), boat).Gates);
        Assert.DoesNotContain(boat.Check!.Verdict.Gates, g => g.Gate == Telling.Wrong);
    }

    [Fact]
    public async Task A_sleeve_that_was_turned_leaves_its_gate_as_it_was_read()
    {
        Telling club = Telling.WrongInsert();
        club.Tell(new JobPlanned("j1", "teal", Cause.Sleeve, "turn-sleeve", ["Turn it."], [], [], 1, Side.Starboard), new JobDone("j1", Cause.Sleeve));

        Assert.Equal(Verdict.Stop, await VerdictAsync(club));
    }

    [Fact]
    public async Task A_job_given_up_after_a_step_leaves_its_gate_to_be_read()
    {
        Telling club = Telling.WrongInsert();
        club.Tell(await PlannedAsync(club), new StepDone("j1", 0), new JobDropped("j1"));

        Assert.Equal([Telling.Wrong], JobReadAgain.Of(Job(club), await club.StandingAsync()).Gates);
    }

    /// <summary>What another job changed later changes the gate, and not what a plan rested on that was made before.</summary>
    [Fact]
    public async Task A_job_is_judged_against_what_was_known_before_it_though_an_older_one_was_given_up_since()
    {
        Telling club = Telling.WrongInsert();
        club.Tell(new JobPlanned("j0", "teal", Cause.PinAft, "straighten-pin", ["Straighten it"], [], [], Telling.Wrong.Seat, Telling.Wrong.Side));
        club.Tell(await PlannedAsync(club));

        club.Tell(new StepDone("j0", 0), new JobDropped("j0"));

        Assert.NotNull(JobRemedy.Of(club.Club, Job(club), Settings));
    }

    /// <summary>An older job that was under way then had changed the gate, though it was closed since.</summary>
    [Fact]
    public async Task A_job_is_judged_against_the_steps_that_an_older_one_had_by_then()
    {
        Telling club = Telling.WrongInsert();
        club.Tell(new JobPlanned("j0", "teal", Cause.PinAft, "straighten-pin", ["Straighten it"], [], [], Telling.Wrong.Seat, Telling.Wrong.Side), new StepDone("j0", 0));
        club.Tell(new BoatLaid("between", "teal", Lie.Upright, LevelBasis.Read, 0, 0));
        club.Read("teal", Telling.Wrong, 1, 1, 1, null, "between");
        club.Tell(await PlannedAsync(club));
        Remedy before = JobRemedy.Of(club.Club, Job(club), Settings)!;

        club.Tell(new JobDone("j0"));

        Assert.Equal(before.Before!.Mean, JobRemedy.Of(club.Club, Job(club), Settings)!.Before!.Mean);
    }

    [Fact]
    public async Task A_job_given_up_before_anything_was_done_leaves_nothing_to_be_read()
    {
        Telling club = Telling.WrongInsert();
        club.Tell(await PlannedAsync(club), new JobDropped("j1"));

        Assert.Empty(JobReadAgain.Of(Job(club), await club.StandingAsync()).Gates);
        Assert.Equal(Verdict.Stop, await VerdictAsync(club));
    }

    [Fact]
    public async Task What_is_read_after_the_plan_does_not_change_what_it_is_judged_against()
    {
        Telling club = Telling.WrongInsert();
        club.Tell(await PlannedAsync(club));
        Remedy before = JobRemedy.Of(club.Club, Job(club), Settings)!;

        club.Tell(new BoatLaid("after", "teal", Lie.Upright, LevelBasis.Read, 0, 0));
        club.Read("teal", Telling.Wrong, 4, 4, 4, "j1", "after");
        club.Read("teal", new(1, Side.Port), 6, 6, 6, null, "after");

        Assert.Equal(before.After!.Mean, JobRemedy.Of(club.Club, Job(club), Settings)!.After!.Mean);
    }

    [Fact]
    public async Task A_job_that_was_given_up_or_opened_again_says_so()
    {
        Telling club = Telling.WrongInsert();
        club.Tell(await PlannedAsync(club));
        Guid dropped = club.Tell(new JobDropped("j1", "the pin is cracked"));
        Assert.True(Job(club).IsDropped);
        Assert.Equal(new DateOnly(2026, 5, 4), Job(club).ClosedOn);

        club.Tell(new Retracted(dropped));

        Assert.True(Job(club).IsOpen);
        Assert.Null(Job(club).ClosedOn);
    }

    [Fact]
    public async Task Every_step_of_every_remedy_can_be_put_on_record()
    {
        BoatCheck check = (await Telling.WrongInsert().StandingAsync()).Check!;
        foreach (Wording say in new[] { Wording.English, Wording.German })
        {
            foreach (Cause cause in new[] { Cause.GatePitch, Cause.PinAft, Cause.PinOut, Cause.Rigger })
            {
                foreach (Remedy remedy in Remedies.For(check, new(cause, Telling.Wrong), Telling.Wrong, MendingSettings.Default))
                {
                    JobPlanned plan = JobPlan.Of("j1", "teal", remedy, Telling.Wrong, say);
                    Assert.Empty(EntryRules.Problems(Journals.Entry(1, plan, 1).Entry));
                }
            }
        }
    }

    internal static async Task<JobPlanned> PlannedAsync(Telling club, string job = "j1", string boat = "teal")
    {
        BoatCheck check = (await club.StandingAsync(boat)).Check!;
        CauseOffered likeliest = JobChoice.Of(check, Telling.Wrong, Wording.English).Causes[0];
        return JobPlan.Of(job, boat, likeliest.Remedies[0], Telling.Wrong, Wording.English);
    }

    private static JobView Job(Telling club) => ClubJobs.Of(club.Club).Find("j1")!;

    private static JobRecheck Rechecked(Telling club) =>
        JobRecheck.Judge(club.Club, Job(club), JobRemedy.Of(club.Club, Job(club), Settings), Settings);

    private static async Task<Verdict> VerdictAsync(Telling club) =>
        (await club.StandingAsync()).Check!.Verdict.Gates.Single(g => g.Gate == Telling.Wrong).Verdict;
}
