using Gatewright.Core.Load;
using Gatewright.Core.Rig;

namespace Gatewright.Core.Tests.Load;

public class SeatsOnWaterTests
{
    private static readonly BoatClass Eight = BoatClass.Parse("8+");

    [Theory]
    [InlineData(Crew.Women)]
    [InlineData(Crew.Men)]
    public void What_nobody_measured_is_what_it_is_to_be_for_whoever_rows_the_boat(Crew crew)
    {
        var targets = RigTargets.Starting(Eight, crew);
        var spread = new RigReading(RigMeasure.Spread, new(3, null), 83.1);

        var seats = SeatsOnWater.Of(targets, [spread], _ => null);

        Assert.Equal(83.1, seats.Rig(3).Rig.Get(RigMeasure.Spread).Centimetres, 6);
        Assert.Equal(targets.Find(RigMeasure.OarLength, RigAspect.Value, new(3, null))!.Value, seats.Rig(3).Rig.Get(RigMeasure.OarLength).Centimetres, 6);
        Assert.NotEqual(seats.Rig(3).Rig, SeatsOnWater.Of(RigTargets.Starting(Eight, null), [spread], _ => null).Rig(3).Rig);
    }
}
