using Gatewright.Core.Rig;
using Gatewright.Core.Stroke;

namespace Gatewright.Core.Tests.Stroke;

public class MeasuredSeatTests
{
    private static readonly BoatClass Four = BoatClass.Parse("4-");
    private static readonly RigTargets Targets = RigTargets.Starting(Four, null);

    /// <remarks>116 written for both: the length is wrong, but by the figures alone the inboard might be.</remarks>
    [Fact]
    public void Of_an_oar_no_longer_than_its_inboard_neither_is_taken()
    {
        MeasuredSeat seat = Seat(116, 116);

        Assert.Equal([RigMeasure.Inboard, RigMeasure.OarLength], seat.Assumed);
        Assert.Equal(85, seat.Rig.Width.Centimetres);
        Assert.Equal(Target(RigMeasure.Inboard).Value, seat.Rig.Inboard.Centimetres, 1e-9);
        Assert.Equal(Target(RigMeasure.OarLength).Value, seat.Rig.OarLength.Centimetres, 1e-9);
        Assert.Equal(Target(RigMeasure.OarLength).Tolerance / Math.Sqrt(3), seat.Covariance.U(2), 1e-9);
        Assert.Equal(0, seat.Covariance[1, 2]);
    }

    [Fact]
    public void An_oar_longer_than_its_inboard_is_taken_as_it_was_measured()
    {
        MeasuredSeat seat = Seat(116, 374);

        Assert.Empty(seat.Assumed);
        Assert.Equal((116, 374), (seat.Rig.Inboard.Centimetres, seat.Rig.OarLength.Centimetres));
    }

    /// <remarks>Entries of before may hold any figure.</remarks>
    [Theory]
    [InlineData(0)]
    [InlineData(-85)]
    public void A_spread_that_is_none_is_not_taken(double spread)
    {
        MeasuredSeat seat = Seat(116, 374, spread);

        Assert.Equal([RigMeasure.Spread], seat.Assumed);
        Assert.Equal(Target(RigMeasure.Spread).Value, seat.Rig.Width.Centimetres, 1e-9);
    }

    [Fact]
    public void An_inboard_that_is_none_is_not_taken() => Assert.Equal([RigMeasure.Inboard, RigMeasure.OarLength], Seat(0, 374).Assumed);

    [Theory]
    [InlineData(RigMeasure.OarLength, 199.9)]
    [InlineData(RigMeasure.Inboard, 140.1)]
    [InlineData(RigMeasure.Spread, 0)]
    public void No_target_is_set_that_a_seat_could_not_have(RigMeasure measure, double value) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Targets.With(new(measure, RigAspect.Value, value, 1, RigSource.Boat)));

    /// <summary>The longest inboard in the shortest oar still leaves an outboard.</summary>
    [Fact]
    public void Any_targets_that_can_be_set_have_a_gearing()
    {
        RigTargets edge = Targets.With(new(RigMeasure.Inboard, RigAspect.Value, 140, 1, RigSource.Boat)).With(new(RigMeasure.OarLength, RigAspect.Value, 200, 1, RigSource.Boat));

        Assert.Equal(60, MeasuredSeat.Of(RigFigures.Of([]), edge, 1).Rig.Outboard.Centimetres, 1e-9);
    }

    private static MeasuredSeat Seat(double inboard, double length, double spread = 85)
    {
        var oar = new RigPlace(1, Side.Starboard);
        RigReading[] readings =
        [
            new(RigMeasure.Spread, new(1, null), spread),
            new(RigMeasure.Inboard, oar, inboard),
            new(RigMeasure.OarLength, oar, length),
            new(RigMeasure.WorkThrough, new(1, null), 15),
        ];
        return MeasuredSeat.Of(RigFigures.Of(readings), Targets, 1);
    }

    private static RigTarget Target(RigMeasure measure) => Targets.Find(measure, RigAspect.Value, new(1, Side.Port))!;
}
