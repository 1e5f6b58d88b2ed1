using System.Globalization;
using Bunit;
using Gatewright.App.Keeping.Oars;
using Gatewright.App.Tests.World;
using Gatewright.Core;
using Gatewright.Core.Measuring;
using Gatewright.Core.Oars;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Oars;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Gatewright.App.Tests.Keeping;

public class OarsPagesTests
{
    public OarsPagesTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    [Fact]
    public async Task A_set_and_an_oar_of_it_come_to_be()
    {
        await using ClubOnDevice club = await ClubOnDevice.StartAsync();
        IRenderedComponent<OarSetPage> set = club.Page.Render<OarSetPage>(p => p.Add(s => s.Key, "new"));
        await set.TypeAsync("#name", "Moraine");
        await set.ChooseAsync("#blade", "macon");
        await set.SendAsync();
        string key = Assert.Single(new OarsView(club.InHand.Club).Sets).Key!;

        club.Page.Services.GetRequiredService<NavigationManager>().NavigateTo("oars/new?set=" + key);
        IRenderedComponent<OarFormPage> oar = club.Page.Render<OarFormPage>();
        await oar.TypeAsync("#name", "Moraine 1");
        await oar.ChooseAsync("#side", "port");
        await oar.TypeAsync("#length", "375,5");
        await oar.SendAsync();

        OarView made = Assert.Single(new OarsView(club.InHand.Club).Sets.Single().Oars);
        Assert.Equal(("Moraine 1", Side.Port, "macon", 375.5), (made.Title, made.Side, made.Blade, made.Oar.Length!.Value));
        Assert.Equal(375.5m, Assert.Single(club.Recorded<OarRead>()).Value);
    }

    [Fact]
    public async Task A_set_whose_oars_have_a_shape_and_an_oar_whose_set_has_one_do_not_say_that_none_is_said()
    {
        await using ClubOnDevice club = await WithSetAsync();
        await club.InHand.RecordAsync([.. new[] { "o1", "o2", "o3" }.Select(o => new ThingSet(Things.Oar, o, new Dictionary<string, string?> { ["blade"] = "macon" }))]);
        string shape() => club.Page.Render<OarSetPage>(p => p.Add(s => s.Key, "s1")).Find("#blade option[selected]").TextContent;
        Assert.StartsWith("As its oars: ", shape(), StringComparison.Ordinal);

        await club.InHand.RecordAsync(
            new ThingSet(Things.OarSet, "s1", new Dictionary<string, string?> { ["blade"] = "cleaver" }),
            new ThingSet(Things.Oar, "o1", new Dictionary<string, string?> { ["blade"] = null }));
        Assert.StartsWith("As its set: ", club.Page.Render<OarFormPage>(p => p.Add(o => o.Key, "o1")).Find("#blade option[selected]").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("As its", shape(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_oar_that_is_not_right_yet_says_all_of_it_and_records_nothing()
    {
        await using ClubOnDevice club = await ClubOnDevice.StartAsync();
        IRenderedComponent<OarFormPage> oar = club.Page.Render<OarFormPage>();
        await oar.TypeAsync("#seat", "3");
        await oar.TypeAsync("#inboard", "886");
        await oar.SendAsync();

        Assert.Equal(["name", "seat", "inboard"], oar.FindAll("[aria-invalid=true]").Select(f => f.Id));
        Assert.NotNull(oar.Find("[role=alert]"));
        Assert.Empty(club.Recorded<OarRead>());
    }

    [Fact]
    public async Task Sleeves_of_a_set_are_read_a_tap_each_and_the_pad_moves_on()
    {
        await using ClubOnDevice club = await WithSetAsync();
        IRenderedComponent<GunwalePage> page = await StartedAsync(club);

        await page.PressAsync("[data-value='0.5']");
        await page.PressAsync("[data-value='3.0']");
        Assert.Contains("C", page.Find(".oars .lit").TextContent, StringComparison.Ordinal);
        await page.PressAsync("[data-value='0.0']");

        OarRead[] read = [.. club.Recorded<OarRead>()];
        Assert.Equal([("o1", 0.5m), ("o2", 3m), ("o3", 0m)], read.Select(r => (r.Oar, r.Value)));
        Assert.Single(read.Select(r => r.Session).Distinct());
        Assert.All(read, r => Assert.Equal((OarItem.Sleeve, Lie.Upright, LevelBasis.ByEye, OarLaid.HandleOut), (r.Item, r.Lie, r.Level, r.Laid)));
        Assert.Empty(page.FindAll("#pad"));
        Assert.NotNull(page.Find("a[href='oars/set/s1']"));
    }

    [Fact]
    public async Task Undo_takes_the_last_back_and_stands_there_again()
    {
        await using ClubOnDevice club = await WithSetAsync();
        IRenderedComponent<GunwalePage> page = await StartedAsync(club);
        await page.PressAsync("[data-value='0.5']");
        await page.PressAsync("[data-value='3.0']");
        await page.PressAsync("#undo");

        Assert.Single(club.Recorded<Retracted>());
        Assert.Null(new OarsView(club.InHand.Club).Oar("o2")!.Oar.Sleeve);
        Assert.Contains("B", page.Find(".now b").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Tenths_are_typed_with_either_mark_and_an_oar_read_again_is_put_right()
    {
        await using ClubOnDevice club = await WithSetAsync();
        IRenderedComponent<GunwalePage> page = await StartedAsync(club);
        await page.TypeAsync("#typed", "0,3");
        await page.PressAsync("#turn-sign");
        await page.PressAsync("#record-typed");
        await page.PressAsync(".oars li button");
        await page.PressAsync("[data-value='1.0']");

        Assert.Equal([-0.3m, 1m], club.Recorded<OarRead>().Select(r => r.Value));
        Assert.Single(new OarsView(club.InHand.Club).Oar("o1")!.Readings);
    }

    [Fact]
    public async Task A_set_page_marks_what_stands_out_and_says_how_to_turn_it()
    {
        await using ClubOnDevice club = await WithSetAsync();
        await club.InHand.RecordAsync(Sleeve("o1", 0), Sleeve("o2", 3.5m), Sleeve("o3", 0));
        IRenderedComponent<OarSetPage> page = club.Page.Render<OarSetPage>(p => p.Add(s => s.Key, "s1"));

        Assert.Equal("adjust", Assert.Single(page.FindAll("td .mark .hidden-words")).TextContent);
        Assert.Contains("towards the bow", page.Find(".caution").TextContent, StringComparison.Ordinal);
        Assert.Equal("oars/o2", page.FindAll("tbody tr")[1].QuerySelector("a")!.GetAttribute("href"));
    }

    [Fact]
    public async Task A_set_page_says_which_go_best_together_and_which_goes_to_which_gate()
    {
        await using ClubOnDevice club = await WithSetAsync();
        await club.InHand.RecordAsync([
            .. new[] { ("o1", "port", 1m), ("o2", "starboard", 0m), ("o3", "port", 0m) }.SelectMany(o => new Fact[]
            {
                new ThingSet(Things.Oar, o.Item1, new Dictionary<string, string?> { ["side"] = o.Item2 }),
                Sleeve(o.Item1, o.Item3), new OarRead(o.Item1, OarItem.Length, 375), new OarRead(o.Item1, OarItem.Inboard, 114),
            }),
            new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "2-" }),
            new BoatLaid("l", "teal", Lie.Upright, LevelBasis.Read, 0, 0),
            new Gatewright.Journal.Facts.ReadingTaken("l", "teal", ReadItem.Gate, 1, Side.Starboard, 4.5m, Station.Abeam),
            new Gatewright.Journal.Facts.ReadingTaken("l", "teal", ReadItem.Gate, 2, Side.Port, 3.5m, Station.Abeam),
        ]);
        IRenderedComponent<OarSetPage> page = club.Page.Render<OarSetPage>(p => p.Add(s => s.Key, "s1"));
        await page.TypeAsync("#match-count", "2");

        Assert.Equal("The two most alike: B, C, apart by 0.0 of the tolerance.", page.Find("#matched").TextContent);
        await page.ChooseAsync("#match-boat", "teal");

        // The flatter gate, on port, takes the port oar that adds a degree; the other is left over.
        page.WaitForAssertion(() => Assert.Equal(["B", "A"], page.FindAll("#seating tbody td a").Select(a => a.TextContent)), TimeSpan.FromSeconds(10));
        Assert.Contains("4.5°", page.Find("#seating tbody tr:last-child .figure").TextContent, StringComparison.Ordinal);
        Assert.Equal(["so far in no boat", "so far in no boat"], page.FindAll("#seating tbody small").Select(small => small.TextContent));

        // Accepted, it is on record: who is rowed where, by whom, since when.
        await page.PressAsync("#give");
        page.WaitForAssertion(() => Assert.Contains("The oars have their places on record.", page.Find("#given").TextContent, StringComparison.Ordinal));
        Assert.Empty(page.FindAll("#give"));
        Assert.Empty(page.FindAll("#seating tbody small"));
        OarView[] rowed = [.. new OarsView(club.InHand.Club).InBoat("teal")];
        Assert.Equal([("B", 1), ("A", 2)], rowed.Select(o => (o.Title, o.Seat!.Value)));
        Assert.All(rowed, oar => Assert.Equal(club.InHand.Held.Member, oar.Placed!.Member));

        await page.TypeAsync("#match-count", "4");
        Assert.Empty(page.FindAll("#matched"));
        Assert.NotNull(page.Find("#match-count[aria-invalid]"));
    }

    [Fact]
    public async Task Where_no_oar_can_be_given_it_says_why_and_what_to_enter()
    {
        await using ClubOnDevice club = await WithSetAsync();
        await club.InHand.RecordAsync([
            new ThingSet(Things.Oar, "o1", new Dictionary<string, string?> { ["side"] = "port" }), Sleeve("o1", 1), Sleeve("o2", 0),
            new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "2-" }),
            new BoatLaid("l", "teal", Lie.Upright, LevelBasis.Read, 0, 0),
            new Gatewright.Journal.Facts.ReadingTaken("l", "teal", ReadItem.Gate, 1, Side.Starboard, 4.5m, Station.Abeam),
            new Gatewright.Journal.Facts.ReadingTaken("l", "teal", ReadItem.Gate, 2, Side.Port, 3.5m, Station.Catch),
        ]);
        IRenderedComponent<SeatOars> page = club.Page.Render<SeatOars>(p => p.Add(s => s.Set, new OarsView(club.InHand.Club).Sets.Single()));

        await page.ChooseAsync("#match-boat", "teal");

        page.WaitForAssertion(() => Assert.Contains("No oar can be given to a gate of Teal yet.", page.Find("#seating").TextContent, StringComparison.Ordinal), TimeSpan.FromSeconds(10));
        Assert.StartsWith("Not read abeam, so that no oar can be chosen for them: seat 2 port.", page.Find("#not-read").TextContent.Trim(), StringComparison.Ordinal);
        Assert.Contains("teal", page.Find("#not-read a").GetAttribute("href"), StringComparison.Ordinal);
        Assert.Equal("Without an oar of their side whose sleeve was read: seat 1 starboard.", page.Find("#without").TextContent);
        Assert.StartsWith("Left out, since their sleeve was never read: C.", page.Find("#sleeveless").TextContent.Trim(), StringComparison.Ordinal);
        Assert.Equal("Left out, since their side is not said, which is entered on the oar's own page: B, C.", page.Find("#sideless").TextContent);
    }

    private static OarRead Sleeve(string oar, decimal value) => new(oar, OarItem.Sleeve, value, Session: "x");

    private static async Task<ClubOnDevice> WithSetAsync()
    {
        ClubOnDevice club = await ClubOnDevice.StartAsync();
        await club.InHand.RecordAsync([
            new ThingSet(Things.OarSet, "s1", new Dictionary<string, string?> { ["name"] = "Moraine" }),
            .. new[] { ("o1", "A"), ("o2", "B"), ("o3", "C") }.Select(o =>
                new ThingSet(Things.Oar, o.Item1, new Dictionary<string, string?> { ["name"] = o.Item2, ["set"] = "s1" })),
        ]);
        return club;
    }

    private static async Task<IRenderedComponent<GunwalePage>> StartedAsync(ClubOnDevice club)
    {
        club.Page.Services.GetRequiredService<NavigationManager>().NavigateTo("oars/read?set=s1");
        IRenderedComponent<GunwalePage> page = club.Page.Render<GunwalePage>();
        await page.SendAsync();
        return page;
    }
}
