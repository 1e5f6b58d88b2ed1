using System.Globalization;
using AngleSharp.Dom;
using Bunit;
using Gatewright.Core;
using Gatewright.Core.Geometry;
using Gatewright.Core.Judging;
using Gatewright.Drawings.Gates;

namespace Gatewright.Drawings.Tests.Gates;

public sealed class GateFromSideTests : BunitContext
{
    /// <summary>Angles are written to a ten thousandth of a degree.</summary>
    private const double Written = 0.00005;

    [Theory]
    [InlineData(Side.Port, 4.0, 0, 1)]
    [InlineData(Side.Port, -1.5, 3, 1)]
    [InlineData(Side.Starboard, 4.0, 0, -1)]
    [InlineData(Side.Starboard, 6.25, -1, -1)]
    public void Pin_blade_and_face_are_turned_by_their_true_angles(Side side, double pitch, double sleeve, int sternIsRight)
    {
        IRenderedComponent<GateFromSide> gate = Render<GateFromSide>(p => p
            .Add(c => c.Name, "gate").Add(c => c.Side, side).Add(c => c.Pitch, Pitch.FromDegrees(pitch))
            .Add(c => c.Sleeve, SleeveError.FromDegrees(sleeve)).Add(c => c.PinAft, LeanAft.FromDegrees(0.7)));

        Assert.Equal(sternIsRight * (pitch + sleeve), TurnOf(gate.FindAll(".gw-settle")[0]), Written);
        Assert.Equal(sternIsRight * 0.7, TurnOf(gate.FindAll(".gw-settle")[1]), Written);
        Assert.Equal(sternIsRight * pitch, TurnOf(gate.FindAll(".gw-settle")[2]), Written);
        Assert.Equal(sternIsRight * pitch, TurnOf(gate.Find(".gw-pointer")), Written);
    }

    [Fact]
    public void What_is_drawn_is_the_pitch_that_the_geometry_gives()
    {
        Pitch pitch = PitchGeometry.At(OarAngle.FromDegrees(60), GateState.FromDegrees(4, 0, 1), Side.Port);
        IRenderedComponent<GateFromSide> gate = Render<GateFromSide>(p => p.Add(c => c.Name, "gate").Add(c => c.Side, Side.Port).Add(c => c.Pitch, pitch));

        // The worked example of PitchGeometry: 4° in the gate, the pin 1° out, 60° towards the catch.
        Assert.Equal(4.87, TurnOf(gate.Find(".gw-pointer")), 0.005);
        Assert.Equal(pitch.Degrees, TurnOf(gate.Find(".gw-pointer")), Written);
    }

    [Theory]
    [InlineData(null, 5)]
    [InlineData("", 5)]
    [InlineData("angles × 3", 15)]
    public void Nothing_is_exaggerated_without_a_label_that_says_so(string? label, double turn)
    {
        IRenderedComponent<GateFromSide> gate = Render<GateFromSide>(p => p
            .Add(c => c.Name, "gate").Add(c => c.Side, Side.Port).Add(c => c.Pitch, Pitch.FromDegrees(5))
            .Add(c => c.Exaggeration, 3).Add(c => c.ExaggerationText, label));

        Assert.Equal(turn, TurnOf(gate.Find(".gw-pointer")), Written);
        Assert.Equal(!string.IsNullOrEmpty(label), gate.Markup.Contains("× 3", StringComparison.Ordinal));
    }

    [Fact]
    public void A_pin_whose_lean_is_not_known_has_a_broken_outline()
    {
        IRenderedComponent<GateFromSide> gate = Render<GateFromSide>(p => p.Add(c => c.Name, "gate").Add(c => c.Side, Side.Port).Add(c => c.Pitch, Pitch.FromDegrees(4)));
        Assert.Single(gate.FindAll(".gw-guess"));

        gate.Render(p => p.Add(c => c.PinAft, LeanAft.FromDegrees(0)));
        Assert.Empty(gate.FindAll(".gw-guess"));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    public void The_two_sides_are_mirrored_about_the_plumb_line(double exaggeration)
    {
        var port = new GateSideGeometry(Side.Port, exaggeration);
        var starboard = new GateSideGeometry(Side.Starboard, exaggeration);

        Assert.All(port.Degrees.Select(d => Angle.FromDegrees(d)), lean =>
        {
            Assert.Equal(GateSideGeometry.Width, port.OnScale(lean).X + starboard.OnScale(lean).X, 9);
            Assert.Equal(port.OnScale(lean).Y, starboard.OnScale(lean).Y, 9);
        });
    }

    [Fact]
    public void A_lean_to_the_stern_is_to_the_right_on_port_as_seen_from_outside()
    {
        Spot four = new GateSideGeometry(Side.Port).OnScale(Angle.FromDegrees(4));

        // sin 4° = 0.0697565, on a scale of 170 units.
        Assert.Equal(0.0697565 * 170, four.X - GateSideGeometry.Middle.X, 4);
    }

    [Fact]
    public void The_wedge_spans_the_limits()
    {
        IRenderedComponent<GateFromSide> gate = Render<GateFromSide>(p => p
            .Add(c => c.Name, "gate").Add(c => c.Side, Side.Port).Add(c => c.Pitch, Pitch.FromDegrees(4)).Add(c => c.Limits, Standard.Club.Catch));

        string wedge = gate.Find(".gw-within").GetAttribute("d")!;
        double[] numbers = [.. wedge.Split(['M', 'L', 'A', 'Z', ' '], StringSplitOptions.RemoveEmptyEntries).Select(n => double.Parse(n, CultureInfo.InvariantCulture))];
        Assert.Equal(3, AngleTo(numbers[2], numbers[3]), 0.01);
        Assert.Equal(5, AngleTo(numbers[^2], numbers[^1]), 0.01);
    }

    internal static double TurnOf(IElement element)
    {
        string transform = element.GetAttribute("transform")!;
        int start = transform.LastIndexOf("rotate(", StringComparison.Ordinal) + "rotate(".Length;
        return double.Parse(transform[start..transform.IndexOf(')', start)], CultureInfo.InvariantCulture);
    }

    private static double AngleTo(double x, double y) =>
        Math.Atan2(x - GateSideGeometry.Middle.X, GateSideGeometry.Middle.Y - y) * 180 / Math.PI;
}
