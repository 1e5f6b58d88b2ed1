using Gatewright.Core.Rig;
using Gatewright.Core.Stroke;

namespace Gatewright.Core.Tests.Stroke;

public class MeasuredStrokeTests
{
    /// <remarks>The finish needs the heels 30 cm before the pin at the least; 0.01 cm beside it lies what has no stroke.</remarks>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void At_the_very_edge_of_what_can_be_rowed_there_is_no_stroke_that_could_be_told(bool isTyped)
    {
        SeatRig rig = SeatRig.FromCentimetres(Rowing.Sweep, 86, 115.5, 373, -29.99);
        MeasuredSeat seat = isTyped ? MeasuredSeat.Typed(rig) : new(rig, new(4, new double[16]), []);

        Assert.NotNull(StrokeGeometry.Of(rig, Reach.Usual(Rowing.Sweep), OarPoints.Usual(Rowing.Sweep)));
        Assert.Null(MeasuredStroke.Of(seat, Reach.Usual(Rowing.Sweep), OarPoints.Usual(Rowing.Sweep)));
    }

    [Fact]
    public void A_change_to_that_edge_is_none_either()
    {
        MeasuredStroke before = Strokes.Measured(SeatRig.FromCentimetres(Rowing.Sweep, 86, 115.5, 373, -25));

        Assert.NotNull(StrokeChange.Of(before, [new(RigMeasure.WorkThrough, Strokes.Cm(-4.9))]));
        Assert.Null(StrokeChange.Of(before, [new(RigMeasure.WorkThrough, Strokes.Cm(-4.995))]));
    }
}
