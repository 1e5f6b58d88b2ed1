using Bunit;
using Gatewright.Core;
using Gatewright.Core.Geometry;
using Gatewright.Core.Mending;
using Gatewright.Drawings.Remedies;
using Gatewright.Drawings.Tests.Gallery;

namespace Gatewright.Drawings.Tests.Remedies;

public sealed class RemedyPictureTests : BunitContext
{
    public static TheoryData<RemedyKind> Kinds { get; } = [.. RemedyKinds.All];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_remedy_has_a_picture_with_a_name(RemedyKind kind)
    {
        IRenderedComponent<RemedyPicture> picture = Draw(kind, Side.Port, GateState.FromDegrees(1, 0, -2));

        Assert.Equal("what to do", picture.Find("svg[role=img]").GetAttribute("aria-label"));
        Assert.NotEmpty(picture.FindAll(".gw-way"));
    }

    [Theory]
    // From astern port is on the left: the way from the hull goes left on port, right on starboard.
    [InlineData(Side.Port, 0, 2, -1)]
    [InlineData(Side.Port, 0, -2, 1)]
    [InlineData(Side.Starboard, 0, 2, 1)]
    [InlineData(Side.Starboard, 0, -2, -1)]
    // From outside the stern is on the right of a port gate, on the left of a starboard one.
    [InlineData(Side.Port, 2, 0, 1)]
    [InlineData(Side.Port, -2, 0, -1)]
    [InlineData(Side.Starboard, 2, 0, -1)]
    [InlineData(Side.Starboard, -2, 0, 1)]
    public void The_arrow_goes_the_way_the_pins_top_goes(Side side, double aft, double @out, int right)
    {
        IRenderedComponent<RemedyPicture> picture = Draw(RemedyKind.PinFootShim, side, GateState.FromDegrees(0, aft, @out));

        Assert.Equal($"scale({right} 1)", picture.Find(".gw-way").ParentElement!.GetAttribute("transform"));
    }

    [Theory]
    [InlineData(0, 2, "-22")]
    [InlineData(0, -2, "14")]
    public void A_shim_goes_under_the_edge_that_the_top_moves_away_from(double aft, double @out, string edge)
    {
        // Drawn for a positive way on the right, then mirrored: the left edge is that towards the hull.
        IRenderedComponent<RemedyPicture> picture = Draw(RemedyKind.PinFootShim, Side.Starboard, GateState.FromDegrees(0, aft, @out));

        Assert.Equal(edge, picture.Find("rect.gw-part").GetAttribute("x"));
    }

    [Theory]
    [InlineData(2, "-26")]
    [InlineData(-2, "3")]
    public void A_washer_behind_the_upper_bolt_brings_the_top_out(double @out, string y)
    {
        IRenderedComponent<RemedyPicture> picture = Draw(RemedyKind.PlateWasher, Side.Port, GateState.FromDegrees(0, 0, @out));

        Assert.Equal(y, picture.Find("rect.gw-part").GetAttribute("y"));
    }

    [Fact]
    public void The_words_are_those_of_the_view()
    {
        IRenderedComponent<RemedyPicture> across = Draw(RemedyKind.PinFootShim, Side.Port, GateState.FromDegrees(0, 0, 2));
        Assert.Equal(["3 mm", "away", "hull"], across.FindAll("text").Select(t => t.TextContent));

        IRenderedComponent<RemedyPicture> along = Draw(RemedyKind.Backstay, Side.Port, GateState.FromDegrees(0, 2, 0));
        Assert.Equal(["3 mm", "bow", "stern"], along.FindAll("text").Select(t => t.TextContent));
    }

    /// <summary>A pin that is meant to lean is not drawn plumb once it is mended.</summary>
    [Theory]
    [InlineData(Side.Starboard)]
    [InlineData(Side.Port)]
    public void The_pin_is_drawn_from_where_it_stands_to_where_it_is_to_stand(Side side)
    {
        IRenderedComponent<RemedyPicture> picture = Render<RemedyPicture>(p => p
            .Add(c => c.Name, "what to do").Add(c => c.Kind, RemedyKind.PinFootShim).Add(c => c.Side, side)
            .Add(c => c.Change, GateState.FromDegrees(0, 0, -2))
            .Add(c => c.Before, GateState.FromDegrees(0, 0.5, 3)).Add(c => c.After, GateState.FromDegrees(0, 0.5, 1)));

        int outwards = side == Side.Starboard ? 1 : -1;
        Assert.Equal($"rotate({outwards})", picture.Find(".gw-settle").GetAttribute("transform"));
        Assert.Contains("rotate(3", picture.Find(".gw-guess").GetAttribute("transform"), StringComparison.Ordinal);
        Assert.Equal($"scale({-outwards} 1)", picture.Find(".gw-way").ParentElement!.GetAttribute("transform"));
    }

    private IRenderedComponent<RemedyPicture> Draw(RemedyKind kind, Side side, GateState change) => Render<RemedyPicture>(p => p
        .Add(c => c.Name, "what to do").Add(c => c.Kind, kind).Add(c => c.Side, side).Add(c => c.Change, change)
        .Add(c => c.Sleeve, SleeveError.FromDegrees(3)).Add(c => c.Amount, "3 mm").Add(c => c.Labels, Samples.Labels));
}
