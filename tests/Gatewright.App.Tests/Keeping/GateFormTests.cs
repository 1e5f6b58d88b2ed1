using System.Globalization;
using Bunit;
using Gatewright.App.Keeping.Boats;
using Gatewright.App.Tests.World;
using Gatewright.Core;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Views;

namespace Gatewright.App.Tests.Keeping;

/// <summary>Inserts and leans of gates, in the form of their boat; and a boat that is put on no rack.</summary>
public sealed class GateFormTests
{
    public GateFormTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    [Fact]
    public async Task All_gates_are_set_to_the_same_and_one_to_something_else()
    {
        await using ClubOnDevice club = await ClubOnDevice.StartAsync();
        await club.InHand.RecordAsync([.. new BoatForm { Name = "Grebe", Class = "2x" }.Facts("grebe")]);
        IRenderedComponent<BoatFormPage> page = Page(club);

        await page.TypeAsync("#all-insert", "4");
        await page.TypeAsync("#all-target-out", "-0,5");
        await page.PressAsync("#set-all");
        await page.TypeAsync("#insert-2-port", "5.5");
        await page.SendAsync();

        Assert.Equal(4, club.Recorded<ThingSet>().Count(s => s.Thing == Things.Gate));
        ThingView gate = new(club.InHand.Club, Things.Gate, "grebe/2/port");
        Assert.Equal(("5.5", null, "-0.5"), (gate["insert"], gate["target-aft"], gate["target-out"]));
        Assert.Equal("4", new ThingView(club.InHand.Club, Things.Gate, "grebe/1/starboard")["insert"]);
    }

    [Fact]
    public async Task What_is_no_angle_is_said_and_nothing_is_recorded()
    {
        await using ClubOnDevice club = await ClubOnDevice.StartAsync();
        await club.InHand.RecordAsync([.. new BoatForm { Name = "Grebe", Class = "2x" }.Facts("grebe")]);
        IRenderedComponent<BoatFormPage> page = Page(club);

        await page.TypeAsync("#insert-1-port", "40");
        await page.SendAsync();

        Assert.Equal("true", page.Find("#insert-1-port").GetAttribute("aria-invalid"));
        Assert.Contains("15", page.Find("#gates-wrong").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain(club.Recorded<ThingSet>(), s => s.Thing == Things.Gate);
    }

    [Fact]
    public async Task Only_the_gate_that_changed_is_recorded_and_emptied_fields_are_taken_away()
    {
        await using ClubOnDevice club = await ClubOnDevice.StartAsync();
        var form = new BoatForm { Name = "Grebe", Class = "2x" };
        form.PartsOf(new(1, Side.Port))["insert"] = "4.0";
        await club.InHand.RecordAsync([.. form.Facts("grebe")]);
        BoatForm again = BoatForm.Of(club.InHand.Club, "grebe");
        Assert.Empty(again.Facts("grebe"));

        again.PartsOf(new(1, Side.Port))["insert"] = " ";
        ThingSet set = Assert.IsType<ThingSet>(Assert.Single(again.Facts("grebe")));
        Assert.Equal(("grebe/1/port", null), (set.Key, set.Fields["insert"]));
    }

    [Fact]
    public void A_rigger_that_is_put_on_the_other_side_takes_its_gate_with_it()
    {
        var form = new BoatForm { Name = "Grebe", Class = "2-" };
        GatePlace stroke = form.Gates[1];
        form.PartsOf(stroke)["insert"] = "5";
        form.Turn(stroke);

        Assert.NotEqual(stroke, form.Gates[1]);
        Assert.Equal("5", form.PartsOf(form.Gates[1])["insert"]);
    }

    [Fact]
    public async Task A_boat_once_laid_on_a_rack_can_be_put_on_none()
    {
        await using ClubOnDevice club = await ClubOnDevice.StartAsync();
        await club.InHand.RecordAsync([.. new BoatForm { Name = "Grebe", Class = "2x" }.Facts("grebe"),
            new ThingSet(Things.Rack, "a1", new Dictionary<string, string?> { ["name"] = "A 1" }),
            new BoatLaid("l1", "grebe", Lie.Inverted, LevelBasis.Rack, Rack: "a1")]);
        IRenderedComponent<BoatFormPage> page = Page(club);
        Assert.Equal("a1", page.Find("#rack").GetAttribute("value"));

        await page.ChooseAsync("#rack", string.Empty);
        await page.SendAsync();

        Assert.Null(BoatBerth.Of(new(club.InHand.Club, "grebe")).Rack);
    }

    private static IRenderedComponent<BoatFormPage> Page(ClubOnDevice club) => club.Page.Render<BoatFormPage>(p => p.Add(b => b.Key, "grebe"));
}
