using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Rounds;

namespace Gatewright.Journal.Tests.Rounds;

public sealed class JudgedAsReadTests
{
    [Fact]
    public void It_says_of_what_was_read_what_the_whole_check_says_and_nothing_of_the_rest()
    {
        RoundClubs clubs = RoundClubs.Of("8+");
        decimal[] values = [4, 1, 6.5m, 3, 4, 2.5m, 5, 4];
        clubs.Add(new BoatLaid("l", RoundClubs.Boat, Lie.Inverted, LevelBasis.ByEye));
        clubs.Add(clubs.Gates.Zip(values, (g, v) => new ReadingTaken("l", RoundClubs.Boat, ReadItem.Gate, g.Seat, g.Side, v, Station.Abeam)));

        BoatVerdict quick = JudgedAsRead.Of(clubs.Club, clubs.View, Station.Abeam).Verdict!;
        BoatVerdict whole = clubs.View.Record(MeasuringSettings.Default)!.Check(CheckSettings.Default).Verdict;

        Assert.Equal(
            whole.Gates.SelectMany(g => g.Reasons.Where(r => r.Read).Select(r => (g.Gate, r))),
            quick.Gates.SelectMany(g => g.Reasons.Select(r => (g.Gate, r))));
        Assert.Contains(whole.Gates, g => g.Reasons.Any(r => !r.Read));
        Assert.Equal(Verdict.Stop, quick.Gates.Single(g => g.Gate.Seat == 2).Verdict);
        Assert.All(quick.Gates, g => Assert.True(g.At(Station.Abeam).Read));
    }

    [Fact]
    public void Of_a_gate_that_was_mended_since_it_says_nothing()
    {
        RoundClubs clubs = RoundClubs.Of("2-");
        clubs.ReadAll(0, RoundClubs.Day);
        clubs.Add(new GateMended(RoundClubs.Boat, 2, Side.Port, RoundClubs.Day.AddDays(1)));

        Assert.Equal([new GatePlace(1, Side.Starboard)], JudgedAsRead.Of(clubs.Club, clubs.View, Station.Catch).Verdict!.Gates.Select(g => g.Gate));
    }

    [Fact]
    public void Of_a_boat_that_was_not_read_there_is_no_verdict()
    {
        RoundClubs clubs = RoundClubs.Of("8+");
        Assert.Null(JudgedAsRead.Of(clubs.Club, clubs.View, Station.Abeam).Verdict);
    }
}
