using Gatewright.Core.Changing;
using Gatewright.Core.Rig;

namespace Gatewright.Core.Tests.Changing;

public class RigComparisonTests
{
    private static readonly RigPlace SeatTwo = new(2, null);
    private static readonly RigPlace TwoPort = new(2, Side.Port);

    /// <remarks>u of the difference √(0.3² + 0.4²) = 0.5. 1.96 × 0.5 = 0.98: 1 is more, and Φ(2) = 0.97725. 0.2: between ±0.5 with 0.645.</remarks>
    [Theory]
    [InlineData(86.0, ComparedAs.Differs, 0.97725)]
    [InlineData(85.9, ComparedAs.Untold, 0.96407)]
    [InlineData(85.2, ComparedAs.Untold, 0.65542)]
    public void Apart_by_more_than_the_uncertainty_they_differ(double second, ComparedAs told, double probability)
    {
        ComparedItem item = Compared(RigItem.Spread, SeatTwo, (85, 0.3), (second, 0.4));

        Assert.Equal(told, item.As);
        Assert.Equal(second - 85, item.Difference!.Value.Value, 1e-9);
        Assert.Equal(0.5, item.Difference.Value.U, 1e-12);
        Assert.Equal(probability, item.Probability!.Value, 1e-5);
    }

    [Fact]
    public void Known_well_enough_they_are_alike() =>
        Assert.Equal(ComparedAs.Alike, Compared(RigItem.Spread, SeatTwo, (85, 0.2), (85.1, 0.2)).As);

    [Fact]
    public void The_zero_of_one_gauge_drops_out()
    {
        RigValue Read(double value, string gauge) => new(RigItem.PitchAbeam, TwoPort, new(value, 0.25), true, null, gauge, 0.2);

        // √(2 × (0.25² − 0.2²)) = 0.2121; of two gauges √(2 × 0.25²) = 0.3536.
        Assert.Equal(0.2121, RigComparison.Difference(Read(4, "G1"), Read(4.5, "G1")).U, 1e-4);
        Assert.Equal(0.3536, RigComparison.Difference(Read(4, "G1"), Read(4.5, "G2")).U, 1e-4);
    }

    [Fact]
    public void What_nobody_took_since_is_no_sign_that_nothing_changed()
    {
        var day = new DateOnly(2026, 3, 1);
        RigOfBoat rig = RigOfBoat.Of("Teal", BoatClass.Parse("2-"), Rigs.Gates(BoatClass.Parse("2-")),
            [new(RigItem.Spread, SeatTwo, new(86, 0.3), true, day)]);

        Assert.Equal(ComparedAs.NotTakenSince, Assert.Single(RigComparison.Of(rig, rig, isSameBoat: true).Items).As);
        Assert.NotEqual(ComparedAs.NotTakenSince, Assert.Single(RigComparison.Of(rig, rig, isSameBoat: false).Items).As);
    }

    [Fact]
    public void What_one_of_them_lacks_is_told()
    {
        RigOfBoat whole = Rigs.Even("2-");
        RigOfBoat bare = whole with { Values = [.. whole.Values.Where(v => v.Item != RigItem.Height)] };

        Assert.Equal(2, RigComparison.Of(whole, bare, false).Items.Count(i => i.As == ComparedAs.OneSided));
    }

    /// <summary>A pair and a four have two seats in common, whichever sides they are rigged on.</summary>
    [Fact]
    public void Boats_of_two_classes_are_compared_as_far_as_they_have_seats_in_common()
    {
        RigComparison compared = RigComparison.Of(Rigs.Even("4-"), Rigs.Even("2-"), false);

        Assert.All(compared.Items, i => Assert.InRange(i.Place.Seat, 1, 2));
        Assert.All(compared.Items, i => Assert.Equal(ComparedAs.Alike, i.As));
        Assert.Throws<ArgumentException>(() => RigComparison.Of(Rigs.Even("4-"), Rigs.Even("4x"), false));
    }

    [Fact]
    public void Riggers_that_changed_places_are_told_of_one_boat()
    {
        RigOfBoat before = Rigs.Even("4-").Marked();
        RigOfBoat after = before with
        {
            Riggers = [.. before.Gates.Select(g => new RigMark(g, Rigs.Mark(g with { Seat = g.Seat switch { 2 => 4, 4 => 2, int seat => seat } })))],
        };

        Assert.Equal([(2, "2P", "4P"), (4, "4P", "2P")], RigComparison.Of(before, after, true).Marks.Select(m => (m.At.Seat, m.First!, m.Second!)));
        Assert.Empty(RigComparison.Of(before, after, false).Marks);
    }

    private static ComparedItem Compared(RigItem item, RigPlace place, (double Value, double U) first, (double Value, double U) second) =>
        RigComparison.Of(
            Rigs.Even("4-").With(item, place, first.Value, first.U),
            Rigs.Even("4-").With(item, place, second.Value, second.U),
            isSameBoat: false).Items.Single(i => i.Item == item && i.Place == place);
}
