using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Reporting;
using Gatewright.Journal.Standing;
using Gatewright.Journal.Tests.Jobs;

namespace Gatewright.Journal.Tests.Reporting;

/// <summary>What is told reaches the diagnosis.</summary>
public sealed class ReportEffectTests
{
    private static readonly GatePlace Gate = new(1, Side.Starboard);

    [Fact]
    public async Task A_crab_makes_a_low_gate_likelier_to_be_wrong()
    {
        Telling club = Doubtful();
        BoatStanding before = await club.StandingAsync();
        var crab = new Reported("teal", ReportKind.CrabEarly, 1, Side.Starboard);
        club.Tell(crab);

        ReportEffect effect = ReportEffect.Of(before, await club.StandingAsync(), crab);

        Assert.Equal(Gate, effect.Gate);
        Assert.False(effect.IsToBeReadAgain);
        Assert.True(effect.Now!.Wrong > effect.Before!.Wrong, $"{effect.Before.Wrong} → {effect.Now.Wrong}");
    }

    [Fact]
    public async Task After_a_knock_what_was_read_of_the_gate_no_longer_counts()
    {
        Telling club = Telling.WrongInsert();
        BoatStanding before = await club.StandingAsync();
        var knock = new Reported("teal", ReportKind.Knock, 1, Side.Starboard);
        club.Tell(knock);

        ReportEffect effect = ReportEffect.Of(before, await club.StandingAsync(), knock);

        Assert.True(effect.IsToBeReadAgain);
        Assert.NotNull(effect.Before);
        Assert.Null(effect.Now);
    }

    [Fact]
    public async Task A_boat_down_to_one_side_is_weighed_as_a_whole()
    {
        Telling club = Doubtful();
        BoatStanding before = await club.StandingAsync();
        var down = new Reported("teal", ReportKind.DownToOneSide, null, Side.Starboard);
        club.Tell(down);

        ReportEffect effect = ReportEffect.Of(before, await club.StandingAsync(), down);

        Assert.Null(effect.Gate);
        Assert.NotNull(effect.Boat);
    }

    [Fact]
    public async Task Of_a_boat_that_nobody_read_nothing_is_known_before_or_after()
    {
        var club = new Telling();
        club.Boat("teal", "2x");
        BoatStanding before = await club.StandingAsync();
        var crab = new Reported("teal", ReportKind.CrabAtFinish, 1, Side.Port);
        club.Tell(crab);

        ReportEffect effect = ReportEffect.Of(before, await club.StandingAsync(), crab);

        Assert.Equal((false, null, null, null), (effect.IsToBeReadAgain, effect.Before, effect.Now, effect.Boat));
    }

    /// <summary>A gate that reads a little low, so that either may be true.</summary>
    private static Telling Doubtful()
    {
        var club = new Telling();
        club.Boat("teal", "2x");
        foreach (GatePlace gate in new GatePlace[] { new(1, Side.Port), new(2, Side.Port), new(2, Side.Starboard) })
        {
            club.Read("teal", gate, 4, 4, 4);
        }

        club.Read("teal", Gate, 3, 3, 3);
        return club;
    }
}
