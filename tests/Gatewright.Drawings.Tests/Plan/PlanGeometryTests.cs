using Gatewright.Core;
using Gatewright.Core.Geometry;
using Gatewright.Drawings.Plan;

namespace Gatewright.Drawings.Tests.Plan;

public class PlanGeometryTests
{
    /// <summary>CSS pixels of a unit where a phone of 360 px leaves 16 px at each side.</summary>
    private const double OnAPhone = (360 - 32) / 360.0;

    public static TheoryData<string, PlanSize, CoxPlace> Plans { get; } =
        [.. from c in BoatClass.All from size in (PlanSize[])[PlanSize.Roomy, PlanSize.Compact] from cox in Enum.GetValues<CoxPlace>() select (c.Name, size, cox)];

    public static TheoryData<string> Classes { get; } = [.. BoatClass.All.Select(c => c.Name)];

    [Theory]
    [MemberData(nameof(Plans))]
    public void Every_place_can_be_hit_with_a_thumb(string name, PlanSize size, CoxPlace cox)
    {
        var plan = new PlanGeometry(BoatClass.Parse(name), size, cox);

        Assert.All(EveryPlace(plan.Class), gate =>
        {
            Box touch = plan.Touch(gate);
            Assert.True(touch.Width * OnAPhone >= 48, $"{gate}: {touch.Width * OnAPhone} px wide");
            Assert.True(touch.Height * OnAPhone >= 48, $"{gate}: {touch.Height * OnAPhone} px high");
        });
    }

    [Theory]
    [MemberData(nameof(Plans))]
    public void No_two_places_overlap_whatever_the_sides(string name, PlanSize size, CoxPlace cox)
    {
        var plan = new PlanGeometry(BoatClass.Parse(name), size, cox);
        GatePlace[] places = [.. EveryPlace(plan.Class)];

        Assert.All(
            from first in places from second in places where first < second select (first, second),
            pair => Assert.False(Overlap(plan.Touch(pair.first), plan.Touch(pair.second)), $"{pair.first} and {pair.second}"));
    }

    [Theory]
    [MemberData(nameof(Plans))]
    public void All_that_belongs_to_a_gate_lies_in_its_place(string name, PlanSize size, CoxPlace cox)
    {
        var plan = new PlanGeometry(BoatClass.Parse(name), size, cox);
        var drawing = new Box(0, 0, plan.Width, plan.Height);

        Assert.All(EveryPlace(plan.Class), gate =>
        {
            Box touch = plan.Touch(gate);
            Assert.True(Contains(drawing, new(touch.X, touch.Y)) && Contains(drawing, new(touch.Right, touch.Bottom)));
            Assert.All([plan.Pin(gate), plan.Mark(gate), plan.Figures(gate)], spot => Assert.True(Contains(touch, spot), $"{gate}: {spot}"));
        });
    }

    [Theory]
    [MemberData(nameof(Plans))]
    public void Port_is_the_mirror_of_starboard(string name, PlanSize size, CoxPlace cox)
    {
        var plan = new PlanGeometry(BoatClass.Parse(name), size, cox);

        Assert.All(Enumerable.Range(1, plan.Class.Seats), seat =>
        {
            var (port, starboard) = (new GatePlace(seat, Side.Port), new GatePlace(seat, Side.Starboard));
            Assert.True(plan.Pin(port).X < plan.Keel);
            Assert.Equal(plan.Width, plan.Pin(port).X + plan.Pin(starboard).X, 9);
            Assert.Equal(plan.Pin(port).Y, plan.Pin(starboard).Y);
            Assert.Equal(plan.Width, plan.Touch(port).X + plan.Touch(starboard).Right, 9);
        });
    }

    [Theory]
    [MemberData(nameof(Plans))]
    public void The_seats_go_from_the_bow_to_the_stern_inside_the_hull(string name, PlanSize size, CoxPlace cox)
    {
        var plan = new PlanGeometry(BoatClass.Parse(name), size, cox);
        double[] seats = [.. Enumerable.Range(1, plan.Class.Seats).Select(seat => plan.Seat(seat).Y)];

        Assert.Equal(seats.Order(), seats);
        Assert.All(seats, y => Assert.True(plan.Hull.HalfWidthAt(y) > 7, $"the seat at {y} is wider than the hull"));
        Assert.Equal(plan.Class.IsCoxed, plan.CoxMiddle is not null);
        if (plan.CoxMiddle is { } at)
        {
            Assert.Equal(cox == CoxPlace.Stern, at.Y > seats[^1]);
            Assert.True(plan.Hull.HalfWidthAt(at.Y) > 2.6);
        }
    }

    [Theory]
    [InlineData("8+")]
    [InlineData("8x+")]
    public void An_eight_leaves_a_thumbs_half_of_a_phone_free(string name)
    {
        var plan = new PlanGeometry(BoatClass.Parse(name), PlanSize.Compact);

        Assert.InRange(plan.Height * OnAPhone / 740, 0.5, 0.66);
    }

    [Theory]
    [InlineData("1x")]
    [InlineData("4+")]
    [InlineData("8x+")]
    public void Arms_start_at_the_gunwale_and_end_at_the_pin(string name)
    {
        var plan = new PlanGeometry(BoatClass.Parse(name), PlanSize.Roomy);

        Assert.All(UsualSides.Of(plan.Class).SelectMany(gate => plan.Arms(gate).Select(arm => (gate, arm))), at =>
        {
            Assert.Equal(plan.Pin(at.gate), at.arm.Pin);
            Assert.Equal(plan.Hull.HalfWidthAt(at.arm.Foot.Y), Math.Abs(at.arm.Foot.X - plan.Keel), 9);
        });
    }

    [Theory]
    [InlineData(Side.Port)]
    [InlineData(Side.Starboard)]
    public void Towards_the_catch_the_blade_goes_to_the_bow_and_the_handle_to_the_stern(Side side)
    {
        var plan = new PlanGeometry(BoatClass.Parse("2x"), PlanSize.Roomy);
        var gate = new GatePlace(1, side);
        (Spot inboard, Spot outboard) = plan.Shaft(gate, OarAngle.FromDegrees(60));
        Spot pin = plan.Pin(gate);

        Assert.True(outboard.Y < pin.Y && inboard.Y > pin.Y);
        Assert.True(Math.Abs(outboard.X - plan.Keel) > Math.Abs(inboard.X - plan.Keel));

        // 60° from abeam: tan 60° = 1.7320508.
        Assert.Equal(1.7320508, (pin.Y - outboard.Y) / Math.Abs(outboard.X - pin.X), 6);
    }

    [Theory]
    [MemberData(nameof(Classes))]
    public void Thumbnails_are_equally_high_and_their_hulls_as_long_as_the_boats_are(string name)
    {
        var eight = new PlanGeometry(BoatClass.Parse("8+"), PlanSize.Small);
        var plan = new PlanGeometry(BoatClass.Parse(name), PlanSize.Small);

        Assert.Equal(eight.Height, plan.Height, 9);
        Assert.Equal(plan.Class.Seats == 8, plan.Hull.Length > eight.Hull.Length - 1);
        Assert.All(EveryPlace(plan.Class), gate => Assert.InRange(plan.Pin(gate).X, 4, plan.Width - 4));
    }

    [Fact]
    public void Usual_sides_have_stroke_on_port_and_every_gate_once()
    {
        Assert.All(BoatClass.All, c => Assert.Equal(c.Gates, UsualSides.Of(c).Distinct().Count()));
        Assert.Equal(new GatePlace(8, Side.Port), UsualSides.Of(BoatClass.Parse("8+"))[^1]);
        Assert.Equal(new GatePlace(1, Side.Starboard), UsualSides.Of(BoatClass.Parse("2-"))[0]);
    }

    /// <summary>Both sides at every seat: whatever layout a boat has, its gates are among these.</summary>
    private static IEnumerable<GatePlace> EveryPlace(BoatClass boatClass) =>
        Enumerable.Range(1, boatClass.Seats).SelectMany(seat => new GatePlace[] { new(seat, Side.Port), new(seat, Side.Starboard) });

    private static bool Contains(Box box, Spot spot) =>
        spot.X >= box.X - 1e-9 && spot.X <= box.Right + 1e-9 && spot.Y >= box.Y - 1e-9 && spot.Y <= box.Bottom + 1e-9;

    /// <summary>Whether two rectangles share more than an edge.</summary>
    private static bool Overlap(Box one, Box other) =>
        one.X < other.Right && other.X < one.Right && one.Y < other.Bottom && other.Y < one.Bottom;
}
