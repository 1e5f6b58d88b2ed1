using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Jobs;
using Gatewright.Journal.Standing;

namespace Gatewright.Journal.Tests.Jobs;

public sealed class JobOrderTests
{
    private static readonly GatePlace Gate = new(1, Side.Port);

    /// <summary>A boat held ashore, one below a floor, one out of limits, one good: planned the other way round.</summary>
    [Fact]
    public async Task Jobs_on_boats_to_stay_ashore_come_first_then_the_worst_verdict_then_the_oldest()
    {
        var club = new Telling();
        Boat(club, "good", 4);
        Boat(club, "adjust-later", 6.5m);
        Boat(club, "adjust", 6.5m);
        Boat(club, "stop", 0);
        Boat(club, "held", 4);
        club.Tell(new Held("held", "a crack"));
        foreach (string boat in new[] { "good", "adjust", "adjust-later", "stop", "held" })
        {
            club.Tell(Plan(boat));
        }

        var shed = ShedVerdicts.Of(club.Club);
        var jobs = new List<UrgentJob>();
        foreach (var job in ClubJobs.Of(club.Club).Open)
        {
            jobs.Add(new(job, await shed.BoatAsync(job.Plan.Boat)));
        }

        Assert.Equal(
            ["stop", "held", "adjust", "adjust-later", "good"],
            UrgentJob.InOrder(jobs).Select(j => j.Job.Boat));
    }

    [Fact]
    public async Task Gates_that_are_not_good_wait_until_a_job_on_them_is_open()
    {
        Telling club = Telling.WrongInsert();
        WaitingBoat? waiting = WaitingBoat.Of(await club.StandingAsync());
        Assert.Equal([Telling.Wrong], waiting!.Gates.Select(g => g.Gate));

        club.Tell(await JobStoryTests.PlannedAsync(club));
        Assert.Null(WaitingBoat.Of(await club.StandingAsync()));

        club.Tell(new JobDropped("j1"));
        Assert.NotNull(WaitingBoat.Of(await club.StandingAsync()));
    }

    [Fact]
    public async Task A_job_on_the_whole_boat_keeps_all_its_gates_from_waiting()
    {
        Telling club = Telling.WrongInsert();
        club.Tell(new JobPlanned("j1", "teal", Cause.HullLevel, "level-again", ["Read the level."], [], []));

        Assert.Null(WaitingBoat.Of(await club.StandingAsync()));
    }

    [Fact]
    public void Finished_and_dropped_jobs_stand_from_a_day_on_the_latest_first()
    {
        var club = new Telling();
        club.Tell(Plan("a"), new JobDone("job-a"));
        club.Wait(10);
        club.Tell(Plan("b"), new JobDone("job-b"));
        club.Wait(10);
        club.Tell(Plan("c"), new JobDropped("job-c"), Plan("d"));

        var jobs = ClubJobs.Of(club.Club);

        Assert.Equal(["c", "b"], jobs.Closed(new(2026, 5, 10)).Select(j => j.Plan.Boat));
        Assert.Equal(["d"], jobs.Open.Select(j => j.Plan.Boat));
    }

    private static void Boat(Telling club, string key, decimal pitch)
    {
        club.Boat(key, "1x");
        club.Read(key, Gate, pitch, pitch, pitch);
    }

    private static JobPlanned Plan(string boat) => new("job-" + boat, boat, Cause.GatePitch, "insert-swap", ["Swap it."], [], [], 1, Side.Port);
}
