using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Mending;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Jobs;
using Gatewright.Journal.Standing;
using Gatewright.Words;

namespace Gatewright.Journal.Tests.Jobs;

/// <summary>Who exchanges two riggers changes two gates.</summary>
public sealed class ExchangedRiggersTests
{
    private static readonly GatePlace Bow = new(1, Side.Port);
    private static readonly GatePlace Stroke = new(2, Side.Port);

    private static readonly JobPlanned Planned =
        new("j", "teal", Cause.WrongSeat, "exchange-riggers", ["Exchange them", "Tighten"], [], [], 1, Side.Port, 2, Side.Port);

    [Theory]
    [InlineData(1, 2)]
    [InlineData(2, 1)]
    public void A_plan_names_the_gate_it_is_made_at_and_the_other(int at, int other)
    {
        JobPlanned plan = JobPlan.Of("j", "teal", Exchange(Stroke), new(at, Side.Port), Wording.English);

        Assert.Equal((at, Side.Port, other, Side.Port), (plan.Seat, plan.Side, plan.OtherSeat, plan.OtherSide));
    }

    [Fact]
    public void A_rigger_that_stands_end_for_end_has_no_other()
    {
        JobPlanned plan = JobPlan.Of("j", "teal", Exchange(null), Bow, Wording.English);

        Assert.Equal((null, null), (plan.OtherSeat, plan.OtherSide));
    }

    /// <summary>It was the other that kept the boat ashore: under way, given up or closed, the job does not end that, and the re-check of one gate neither.</summary>
    [Theory]
    [InlineData("under way")]
    [InlineData("given up")]
    [InlineData("closed")]
    public async Task Both_gates_are_to_be_read_again_and_keep_ashore_whom_they_kept(string how)
    {
        Telling club = Double();
        club.Tell(Planned, new StepDone("j", 0));
        club.Tell(how == "under way" ? [] : how == "closed" ? [new JobDone("j")] : [new JobDropped("j")]);
        BoatStanding boat = await club.StandingAsync();
        Assert.Equal([Bow, Stroke], boat.Changed!.Gates);
        Assert.True(boat.StaysAshore);
        Assert.Equal([Bow, Stroke], JobReadAgain.Of(boat.View.Jobs[0], boat).Gates);

        club.Tell(new BoatLaid("after", "teal", Lie.Upright, LevelBasis.Read, 0, 0));
        club.Read("teal", Bow, 4, 4, 4, lying: "after");
        Assert.Equal("2 port ashore", await StandsAsync(club));

        club.Read("teal", Stroke, 4, 4, 4, lying: "after");
        Assert.Equal("", await StandsAsync(club));
    }

    [Fact]
    public async Task The_re_check_of_one_says_that_the_other_has_gone_too()
    {
        Telling club = Double();
        club.Tell(Planned, new BoatLaid("after", "teal", Lie.Upright, LevelBasis.Read, 0, 0));
        club.Read("teal", Bow, 4, 4, 4, "j", "after");

        Assert.Equal("2 port ashore", await StandsAsync(club));
    }

    /// <summary>What an older program planned says of one gate that it is changed, and nothing of another.</summary>
    [Fact]
    public async Task A_plan_that_names_no_other_gate_changes_its_own()
    {
        Telling club = Double();
        club.Tell(Planned with { OtherSeat = null, OtherSide = null }, new StepDone("j", 0));

        Assert.Equal([Bow], (await club.StandingAsync()).Changed!.Gates);
    }

    [Fact]
    public async Task The_other_gate_does_not_wait_for_a_job_of_its_own()
    {
        Telling club = Double();
        Assert.Contains(WaitingBoat.Of(await club.StandingAsync())!.Gates, g => g.Gate == Stroke);

        club.Tell(Planned);

        Assert.DoesNotContain(WaitingBoat.Of(await club.StandingAsync())?.Gates ?? [], g => g.Gate == Stroke);
    }

    private static async Task<string> StandsAsync(Telling club)
    {
        BoatStanding boat = await club.StandingAsync();
        return string.Join(", ", boat.Changed!.Gates.Select(g => $"{g.Seat} {g.Side.Word()}")) + (boat.StaysAshore ? " ashore" : "");
    }

    /// <summary>A double, bow's port gate good, stroke's under the floor, the others good.</summary>
    private static Telling Double()
    {
        var club = new Telling();
        club.Boat("teal", "2x");
        foreach (GatePlace gate in new GatePlace[] { Bow, new(1, Side.Starboard), new(2, Side.Starboard) })
        {
            club.Read("teal", gate, 4, 4, 4);
        }

        club.Read("teal", Stroke, -2, -2, -2);
        return club;
    }

    private static Remedy Exchange(GatePlace? other) => new(
        RemedyKind.ExchangeRiggers, new(Cause.WrongSeat, Bow, other), default, [new Work.ExchangeRiggers(Bow, other)], [], 40, []);
}
