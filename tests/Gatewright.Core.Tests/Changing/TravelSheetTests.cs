using Gatewright.Core.Changing;
using Gatewright.Core.Judging;
using Gatewright.Core.Mending;
using Gatewright.Core.Rig;

namespace Gatewright.Core.Tests.Changing;

public class TravelSheetTests
{
    [Fact]
    public void Riggers_come_off_by_sides_in_turn()
    {
        TravelSheet sheet = TravelSheet.Of(Rigs.Even("4-").Marked(), Standard.Club, ChangeSettings.Default);

        Assert.Equal(["2P", "1S", "4P", "3S"], sheet.Off.Select(r => r.Mark!));
    }

    [Theory]
    [InlineData("8+", 8, 4, 4)]
    [InlineData("4x", 8, 2, 4)]
    [InlineData("1x", 2, 1, 2)]
    [InlineData("2-", 2, 2, 2)]
    public void The_quick_check_reads_each_gate_once_and_measures_the_ends_of_both_sides(string boatClass, int gates, int widths, int heights)
    {
        TravelSheet sheet = TravelSheet.Of(Rigs.Even(boatClass), Standard.Club, ChangeSettings.Default);

        Assert.Equal(gates, sheet.Check.Count(r => r.Item == RigItem.PitchCatch));
        Assert.Equal(widths, sheet.Check.Count(r => r.Item is RigItem.Spread or RigItem.Span));
        Assert.Equal(heights, sheet.Check.Count(r => r.Item == RigItem.Height));
    }

    /// <remarks>u: before 0.1, back on 0.3, measured again 0.296 (a spread taken once): √(0.01 + 0.09 + 0.0875) = 0.433.</remarks>
    [Fact]
    public void What_a_reading_should_show_allows_for_both_readings_and_for_putting_on_again()
    {
        QuickReading spread = TravelSheet.Of(Rigs.Even("4-"), Standard.Club, ChangeSettings.Default).Check.First(r => r.Item == RigItem.Spread);

        Assert.Equal(new(1, null), spread.Place);
        Assert.Equal(85, spread.Expected!.Value.Value);
        Assert.Equal(0.433, spread.Expected.Value.U, 0.001);
        Assert.Equal(85 - (1.96 * 0.433), spread.Lowest!.Value, 0.001);
    }

    [Fact]
    public void Of_what_was_never_read_nothing_is_expected()
    {
        QuickReading pitch = TravelSheet.Of(Rigs.Even("4-"), Standard.Club, ChangeSettings.Default).Check[0];

        Assert.Equal((RigItem.PitchCatch, null, null), (pitch.Item, pitch.Expected, pitch.Lowest));
    }

    /// <remarks>
    /// u: before 0.375, back on 0.3, read again 0.375: 0.610, so that 3.0 reaches down to 1.8; 4.0 only to 2.8. The floor of 2 at the
    /// catch is common practice.
    /// </remarks>
    [Theory]
    [InlineData(3, true)]
    [InlineData(4, false)]
    public void Where_an_unchanged_catch_may_be_below_the_floor_the_floor_is_told(double before, bool reaches)
    {
        RigOfBoat rig = Rigs.Even("4-").With(RigItem.PitchCatch, new(1, Side.Starboard), before, 0.375);

        QuickReading pitch = TravelSheet.Of(rig, Standard.Club, ChangeSettings.Default).Check[0];

        Assert.Equal((2, reaches), (pitch.Floor!.Value, pitch.ReachesBelowFloor));
        Assert.Equal(reaches, pitch.Lowest < 2);
    }

    /// <remarks>
    /// 2 + 1.644854 · 0.375 = 2.61682 must be read to be surely above 2; with 1.96 · 0.610 below it, 3.81 is the lowest that says nothing of
    /// the floor. 3.8 before with 0.375: Φ(4.8) is all but 1.
    /// </remarks>
    [Theory]
    [InlineData(3.0, true)]
    [InlineData(3.8, true)]
    [InlineData(3.83, false)]
    public void Where_an_unchanged_catch_is_not_surely_above_the_floor_that_is_told(double before, bool isNear)
    {
        RigOfBoat rig = Rigs.Even("4-").With(RigItem.PitchCatch, new(1, Side.Starboard), before, 0.375);

        QuickReading pitch = TravelSheet.Of(rig, Standard.Club, ChangeSettings.Default).Check[0];

        Assert.Equal(2.61682, pitch.SurelyAbove!.Value, 0.00001);
        Assert.Equal((isNear, new RigEstimate(before, 0.375)), (pitch.IsNearFloor, pitch.Before));
    }

    /// <remarks>Φ(−1) = 0.158655.</remarks>
    [Theory]
    [InlineData(2, 0.4, 0.5)]
    [InlineData(1.6, 0.4, 0.158655)]
    [InlineData(2.1, 0, 1)]
    [InlineData(2, 0, 0)]
    public void How_surely_it_was_above_the_floor_follows_from_its_uncertainty(double before, double u, double probability) =>
        Assert.Equal(probability, new QuickReading(RigItem.PitchCatch, new(1, Side.Port), new(before, 1), 2, new(before, u)).AboveFloorBefore!.Value, 1e-6);

    [Fact]
    public void A_measure_has_no_floor_to_be_near() =>
        Assert.All(TravelSheet.Of(Rigs.Even("4-"), Standard.Club, ChangeSettings.Default).Check, r => Assert.Equal(r.Item == RigItem.PitchCatch, r.IsNearFloor));

    [Fact]
    public void The_floor_is_that_of_the_boats_standard_and_of_the_catch_alone()
    {
        Standard stiff = Standard.Club with { Catch = StationLimits.FromDegrees(3, 5, 2.5) };

        TravelSheet sheet = TravelSheet.Of(Rigs.Even("4-"), stiff, ChangeSettings.Default);

        Assert.All(sheet.Check, r => Assert.Equal(r.Item == RigItem.PitchCatch ? 2.5 : null, r.Floor));
    }

    [Fact]
    public void It_says_whose_word_comes_first() => Assert.Equal(Caution.Defer, TravelSheet.Cautions[^1]);
}
