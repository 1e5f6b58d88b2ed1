using FsCheck.Xunit;
using Gatewright.Core.Geometry;
using Gatewright.Core.Oars;
using Gatewright.Core.Tests.Support;

namespace Gatewright.Core.Tests.Oars;

/// <summary>A sleeve read with the blade on the gunwale.</summary>
public class GunwaleCheckTests
{
    /// <summary>Worked by hand: with no roll the two turns are about one axis, and angles about one axis add.</summary>
    [Theory]
    [InlineData(2, 1, Lie.Upright, OarLaid.HandleOut, 3)]
    [InlineData(2, 1, Lie.Upright, OarLaid.Across, 1)]
    [InlineData(2, 1, Lie.Inverted, OarLaid.HandleOut, 1)]
    [InlineData(2, 1, Lie.Inverted, OarLaid.Across, 3)]
    [InlineData(-2, 0, Lie.Upright, OarLaid.HandleOut, -2)]
    public void The_rise_to_the_bow_enters_whole(double sleeve, double bowHigh, Lie lie, OarLaid laid, double shown) =>
        Close.To(shown, GunwaleCheck.Shown(SleeveError.FromDegrees(sleeve), HullAttitude.FromDegrees(bowHigh, 0), lie, laid).Degrees, 1e-12);

    /// <summary>
    /// By turning a real flat: the blade along the keel, the flat turned from it about the shaft, the oar swung end for end where it
    /// lies across, the hull tilted; then the flat's rise is the height of its end over its length.
    /// </summary>
    [Property]
    public void It_is_the_rise_of_a_flat_that_is_turned_in_space(sbyte sleeve, sbyte bowHigh, sbyte portLow, bool isAcross)
    {
        (double e, double b, double r) = (sleeve / 20.0, bowHigh / 60.0, portLow / 60.0);
        OarLaid laid = isAcross ? OarLaid.Across : OarLaid.HandleOut;

        // The flat's rising end is the bow end with the handle out, and the stern end lying across.
        double way = isAcross ? -1 : 1;
        var along = new Vector3(way * Cos(e), 0, Sin(e));
        var up = new Vector3(Sin(b), -Sin(r), Math.Sqrt(1 - (Sin(b) * Sin(b)) - (Sin(r) * Sin(r))));

        double rise = Math.Asin(along.Dot(up)) * 180 / Math.PI;

        Close.To(rise, GunwaleCheck.Shown(SleeveError.FromDegrees(e), HullAttitude.FromDegrees(b, r), Lie.Upright, laid).Degrees, 1e-10);
    }

    [Property]
    public void Taking_the_level_out_undoes_it(sbyte sleeve, sbyte bowHigh, sbyte portLow, bool isInverted, bool isAcross)
    {
        (Lie lie, OarLaid laid) = (isInverted ? Lie.Inverted : Lie.Upright, isAcross ? OarLaid.Across : OarLaid.HandleOut);
        var hull = HullAttitude.FromDegrees(bowHigh / 30.0, portLow / 30.0);
        var error = SleeveError.FromDegrees(sleeve / 20.0);

        Close.To(error.Degrees, GunwaleCheck.Of(GunwaleCheck.Shown(error, hull, lie, laid), hull, lie, laid).Degrees, 1e-10);
    }

    /// <summary>What is said of the roll: at most 0.005° for sleeves and rolls of up to 3°.</summary>
    [Fact]
    public void The_roll_hardly_enters()
    {
        double level = GunwaleCheck.Shown(SleeveError.FromDegrees(3), HullAttitude.Level, Lie.Upright, OarLaid.HandleOut).Degrees;
        double rolled = GunwaleCheck.Shown(SleeveError.FromDegrees(3), HullAttitude.FromDegrees(0, 3), Lie.Upright, OarLaid.HandleOut).Degrees;

        Assert.InRange(Math.Abs(level - rolled), 0.001, 0.005);
    }

    /// <summary>The diagnosis of a boat takes a sleeve with the handle out: ε + β upright, ε − β inverted.</summary>
    [Theory]
    [InlineData(Lie.Upright)]
    [InlineData(Lie.Inverted)]
    public void It_follows_the_level_as_the_readings_of_a_boat_do(Lie lie)
    {
        Assert.Equal(PitchSlopes.At(default, Side.Port, lie).BowHigh, GunwaleCheck.RiseSlope(lie, OarLaid.HandleOut));
        Assert.Equal(lie == Lie.Upright, OarLaid.HandleOut.IsPositiveToBow(lie));
    }

    private static double Sin(double degrees) => Math.Sin(degrees * Math.PI / 180);

    private static double Cos(double degrees) => Math.Cos(degrees * Math.PI / 180);
}
