using AngleSharp.Dom;
using Bunit;
using Gatewright.Core;
using Gatewright.Core.Geometry;
using Gatewright.Core.Judging;
using Gatewright.Drawings.Plan;
using Gatewright.Drawings.Tests.Gallery;

namespace Gatewright.Drawings.Tests.Plan;

public sealed class HullPlanTests : BunitContext
{
    public static TheoryData<string> Classes { get; } = [.. BoatClass.All.Select(c => c.Name)];

    [Theory]
    [MemberData(nameof(Classes))]
    public void Each_gate_is_one_button_with_the_name_it_was_given_from_bow_to_stern(string name)
    {
        var boatClass = BoatClass.Parse(name);
        IReadOnlyList<PlanGate> gates = Samples.Gates(boatClass);
        IRenderedComponent<HullPlan> plan = Draw(boatClass, gates);

        Assert.Equal(
            gates.OrderBy(g => g.Place).Select(g => g.Name),
            plan.FindAll("button").Select(b => b.GetAttribute("aria-label")!));
        Assert.Equal("group", plan.Find(".gw-plan").GetAttribute("role"));
    }

    [Fact]
    public void Touching_a_gate_tells_which()
    {
        var touched = new List<GatePlace>();
        var boatClass = BoatClass.Parse("4x");
        IRenderedComponent<HullPlan> plan = Draw(boatClass, Samples.Gates(boatClass), touched.Add);

        plan.FindAll("button")[5].Click();

        Assert.Equal([new GatePlace(3, Side.Starboard)], touched);
    }

    /// <summary>Riggers are written as text: what stands in a figure is a figure, whatever signs are in it.</summary>
    [Fact]
    public void A_figure_with_signs_of_markup_in_it_stays_a_figure()
    {
        var gate = new PlanGate(new(1, Side.Port), "gate", Verdict.Good, "<4.0° & \"more\"", "<b>±</b> 0.4");
        IRenderedComponent<HullPlan> plan = Draw(BoatClass.Parse("2-"), [gate]);

        Assert.Equal("<4.0° & \"more\"", plan.Find(".gw-value").TextContent);
        Assert.Equal("<b>±</b> 0.4", plan.Find(".gw-detail").TextContent);
        Assert.Empty(plan.FindAll("b"));
    }

    [Fact]
    public void The_lit_gate_alone_is_the_current_step_and_shows_its_oar()
    {
        var boatClass = BoatClass.Parse("8+");
        IRenderedComponent<HullPlan> plan = Render<HullPlan>(p => p
            .Add(c => c.Class, boatClass)
            .Add(c => c.Gates, Samples.Gates(boatClass))
            .Add(c => c.LitGate, new GatePlace(3, Side.Starboard))
            .Add(c => c.OarAt, OarAngle.FromDegrees(55))
            .Add(c => c.OnGate, _ => { }));

        IElement current = Assert.Single(plan.FindAll("button[aria-current]"));
        Assert.StartsWith("seat 3 starboard", current.GetAttribute("aria-label"), StringComparison.Ordinal);
        Assert.Single(plan.FindAll(".gw-shaft"));
        Assert.Single(plan.FindAll(".gw-lit"));
    }

    [Fact]
    public void Without_a_listener_it_is_a_picture_with_a_name()
    {
        var boatClass = BoatClass.Parse("4-");
        IRenderedComponent<HullPlan> plan = Render<HullPlan>(p => p
            .Add(c => c.Class, boatClass).Add(c => c.Gates, Samples.Gates(boatClass)).Add(c => c.Name, "Wren in plan"));

        Assert.Empty(plan.FindAll("button"));
        Assert.Equal("Wren in plan", plan.Find("svg[role=img]").GetAttribute("aria-label"));
    }

    [Fact]
    public void A_thumbnail_is_never_touched_and_has_no_words()
    {
        var boatClass = BoatClass.Parse("8x+");
        IRenderedComponent<HullPlan> plan = Render<HullPlan>(p => p
            .Add(c => c.Class, boatClass).Add(c => c.Gates, Samples.Gates(boatClass)).Add(c => c.Size, PlanSize.Small)
            .Add(c => c.Labels, Samples.Labels).Add(c => c.OnGate, _ => { }));

        Assert.Empty(plan.FindAll("button"));
        Assert.Equal("", plan.Find("svg").TextContent.Trim());
        Assert.Equal("true", plan.Find("svg").GetAttribute("aria-hidden"));
    }

    [Fact]
    public void A_gate_on_the_other_side_is_drawn_there()
    {
        IRenderedComponent<HullPlan> plan = Draw(BoatClass.Parse("2-"), [new(new(1, Side.Port), "one"), new(new(2, Side.Port), "two", Verdict.Good)]);

        Assert.All(plan.FindAll("button"), b => Assert.Contains("gw-port", b.ClassList));
        Assert.Single(plan.FindAll(".gw-good"));
        Assert.Single(plan.FindAll(".gw-not-read"));
    }

    [Fact]
    public void A_reading_changes_its_gate_and_the_light_moves_on()
    {
        GatePlace[] places = [new(1, Side.Starboard), new(2, Side.Port)];
        IRenderedComponent<HullPlan> plan = Render<HullPlan>(p => p
            .Add(c => c.Class, BoatClass.Parse("2-")).Add(c => c.Gates, [new(places[0], "one"), new(places[1], "two")])
            .Add(c => c.LitGate, places[0]).Add(c => c.OnGate, _ => { }));
        string lit = plan.Find(".gw-lit").GetAttribute("y")!;

        plan.Render(p => p.Add(c => c.Gates, [new(places[0], "one, 4.0", Verdict.Good, "4.0°", null, true), new(places[1], "two")]).Add(c => c.LitGate, places[1]));

        Assert.Equal("4.0°", plan.Find(".gw-value").TextContent);
        Assert.Equal(["one, 4.0", "two"], plan.FindAll("button").Select(b => b.GetAttribute("aria-label")!));
        Assert.NotEqual(lit, plan.Find(".gw-lit").GetAttribute("y"));
        Assert.Equal("two", plan.Find("button[aria-current]").GetAttribute("aria-label"));

        plan.Render(p => p.Add(c => c.Class, BoatClass.Parse("2+")).Add(c => c.LitGate, (GatePlace?)null));
        Assert.Empty(plan.FindAll(".gw-lit"));
        Assert.NotEqual(PlanGeometry.Of(BoatClass.Parse("2-"), PlanSize.Roomy).Outline, plan.Find(".gw-hull").GetAttribute("d"));
    }

    /// <summary>Of a first drawing nobody asks whether it is needed; it is remembered all the same, and the plan's rows with it.</summary>
    [Fact]
    public void What_was_drawn_once_is_not_drawn_again_until_something_looks_otherwise()
    {
        var boatClass = BoatClass.Parse("8+");
        IReadOnlyList<PlanGate> gates = Samples.Gates(boatClass);
        IRenderedComponent<HullPlan> plan = Draw(boatClass, gates);
        int[] drawn() => [plan.RenderCount, .. plan.FindComponents<PlanPlaces>().Select(p => p.RenderCount)];
        int[] once = drawn();

        plan.Render(p => p.Add(c => c.Gates, gates));
        Assert.Equal(once, drawn());

        plan.Render(p => p.Add(c => c.LitGate, new GatePlace(3, Side.Starboard)));
        Assert.Equal(["1", "2", "3", "4", "5", "6", "7", "8"], plan.FindComponents<PlanPlaces>().Select(p => $"{p.Instance.Seat}"));
        Assert.Equal([1, 1, 2, 1, 1, 1, 1, 1], plan.FindComponents<PlanPlaces>().Select(p => p.RenderCount));
    }

    private IRenderedComponent<HullPlan> Draw(BoatClass boatClass, IReadOnlyList<PlanGate> gates, Action<GatePlace>? touched = null) =>
        Render<HullPlan>(p => p
            .Add(c => c.Class, boatClass).Add(c => c.Gates, gates).Add(c => c.Name, "plan").Add(c => c.OnGate, touched ?? (_ => { })));
}
