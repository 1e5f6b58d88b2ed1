using Bunit;
using Gatewright.Core;
using Gatewright.Core.Geometry;
using Gatewright.Drawings.Gates;
using Gatewright.Drawings.Teaching;
using Gatewright.Drawings.Tests.Gallery;
using Gatewright.Drawings.Tests.Gates;

namespace Gatewright.Drawings.Tests.Teaching;

public sealed class SceneTests : BunitContext
{
    private static readonly GateState Gate = GateState.FromDegrees(4, 0.5, 2);
    private static readonly HullAttitude Hull = HullAttitude.FromDegrees(0.6, 1);

    public static TheoryData<Side, double> Moments { get; } =
        [.. from side in Enum.GetValues<Side>() from at in (double[])[62, 20, 0, -43] select (side, at)];

    [Theory]
    [MemberData(nameof(Moments))]
    public void Every_drawn_angle_is_that_of_the_exact_geometry(Side side, double at)
    {
        var angle = OarAngle.FromDegrees(at);
        var sleeve = SleeveError.FromDegrees(1.5);
        IRenderedComponent<StrokeScene> scene = Render<StrokeScene>(p => p
            .Add(c => c.Gate, Gate).Add(c => c.Side, side).Add(c => c.At, angle).Add(c => c.Hull, Hull).Add(c => c.Sleeve, sleeve)
            .Add(c => c.Text, Samples.Scene));
        double[] turns = [.. scene.FindAll(".gw-settle").Select(GateFromSideTests.TurnOf)];
        int stern = side.Sign();
        double face = PitchGeometry.At(angle, Gate, side, Hull).Degrees;
        double blade = PitchGeometry.At(angle, Gate, side, Hull, Lie.Upright, sleeve).Degrees;
        double inverted = PitchGeometry.At(angle, Gate, side, Hull, Lie.Inverted).Degrees;

        // Written to a ten thousandth of a degree.
        Assert.Equal(at, turns[0], 0.00005);
        Assert.Equal(stern * blade, turns[1], 0.00005);
        Assert.Equal(stern * face, turns[3], 0.00005);
        Assert.Equal(stern * blade, turns[4], 0.00005);
        Assert.Contains(turns, t => Math.Abs(t - (stern * inverted)) < 0.00005);
        Assert.NotEqual(face, inverted, 0.1);
    }

    [Theory]
    [MemberData(nameof(Moments))]
    public void The_pin_leans_in_the_view_as_its_two_leans_say(Side side, double at)
    {
        var scene = new SceneGeometry(Gate, side, OarAngle.FromDegrees(at));
        double radians = at * Math.PI / 180;

        // a cos θ + o sin θ, within what the first order is good for.
        Assert.Equal((0.5 * Math.Cos(radians)) + (2 * Math.Sin(radians)), scene.Pin.Degrees, 0.04);
    }

    [Theory]
    [InlineData(Side.Port, Lie.Upright, 3)]
    [InlineData(Side.Starboard, Lie.Upright, 1)]
    [InlineData(Side.Port, Lie.Inverted, 1)]
    [InlineData(Side.Starboard, Lie.Inverted, 3)]
    public void A_side_that_is_low_leans_out(Side side, Lie lie, double expected) =>
        Assert.Equal(expected, new SceneGeometry(Gate, side, default, Hull, lie).PinAcross.Degrees, 9);

    [Theory]
    [InlineData(SceneViews.All, 6)]
    [InlineData(SceneViews.FromSide | SceneViews.Blade, 2)]
    public void A_scene_shows_the_pictures_that_are_asked_for(SceneViews views, int pictures)
    {
        IRenderedComponent<StrokeScene> scene = Render<StrokeScene>(p => p
            .Add(c => c.Gate, Gate).Add(c => c.Side, Side.Port).Add(c => c.Text, Samples.Scene).Add(c => c.Views, views));

        Assert.Equal(pictures, scene.FindAll("figure > svg").Count);
        Assert.All(scene.FindAll("figcaption"), caption => Assert.NotEmpty(caption.TextContent));
    }

    [Fact]
    public void A_scene_is_exaggerated_only_where_it_says_so()
    {
        IRenderedComponent<StrokeScene> scene = Render<StrokeScene>(p => p
            .Add(c => c.Gate, Gate).Add(c => c.Side, Side.Port).Add(c => c.Text, Samples.Scene).Add(c => c.Exaggeration, 4));
        double plain = GateFromSideTests.TurnOf(scene.FindAll(".gw-settle")[3]);

        scene.Render(p => p.Add(c => c.ExaggerationText, "angles × 4"));

        Assert.Equal(new GateSideGeometry(Side.Port).Turn(PitchGeometry.At(default, Gate, Side.Port).Angle), plain, 0.00005);
        Assert.Equal(4 * plain, GateFromSideTests.TurnOf(scene.FindAll(".gw-settle")[3]), 0.0005);
        Assert.Equal(5, scene.FindAll("svg text").Count(t => t.TextContent == "angles × 4"));
    }
}
