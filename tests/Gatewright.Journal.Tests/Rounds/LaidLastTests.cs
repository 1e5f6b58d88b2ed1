using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Jobs;
using Gatewright.Journal.Rounds;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Tests.Rounds;

/// <summary>Two devices say how a boat lies while they are out of touch: it lies as it was laid last, whatever was put right after that.</summary>
public sealed class LaidLastTests
{
    private readonly RoundClubs _clubs = RoundClubs.Of("2-");

    [Fact]
    public void What_is_put_right_of_a_lying_before_the_move_does_not_lay_the_boat_back()
    {
        BoatLaid here = Laid("here", RoundClubs.Round);
        BoatLaid there = Laid("there", RoundClubs.Round) with { Lie = Lie.Inverted, Moved = true };
        _clubs.Add(here, there, here with { Level = LevelBasis.BubbleCentred });

        Assert.Equal(there, _clubs.InRound.Laid);
        Assert.Equal(there, BoatBerth.Of(_clubs.View).Last);
        Assert.Equal(Laying.Of(there), Laying.Usual(_clubs.Club, _clubs.InRound));
    }

    [Fact]
    public void What_is_put_right_of_the_lying_begun_last_holds()
    {
        BoatLaid there = Laid("there", RoundClubs.Round) with { Level = LevelBasis.BubbleCentred };
        _clubs.Add(Laid("here", RoundClubs.Round), Laid("there", RoundClubs.Round), there);

        Assert.Equal(there, _clubs.InRound.Laid);
    }

    [Fact]
    public void Nor_does_it_where_a_job_is_proven()
    {
        _clubs.Add(new JobPlanned("j", RoundClubs.Boat, Cause.PinOut, "shim", [], [], [], 1, Side.Starboard));
        BoatLaid here = Laid("here", null);
        BoatLaid there = Laid("there", null) with { Lie = Lie.Inverted };
        _clubs.Add(here, there, here with { Level = LevelBasis.BubbleCentred });

        Assert.Equal(there, new RecheckTaken(_clubs.Club, _clubs.View.Jobs[0]).Laid);
    }

    private static BoatLaid Laid(string lying, string? round) => new(lying, RoundClubs.Boat, Lie.Upright, LevelBasis.ByEye, Round: round);
}
