using System.Globalization;
using Bunit;
using Gatewright.App.Frame;
using Gatewright.App.Keeping.Boats;
using Gatewright.App.Keeping.Gauges;
using Gatewright.App.Keeping.Racks;
using Gatewright.App.Keeping.Settings;
using Gatewright.App.Keeping.Standards;
using Gatewright.App.Keeping.Stores;
using Gatewright.App.Tests.World;
using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Views;

namespace Gatewright.App.Tests.Keeping;

public class KeepingPagesTests
{
    [Fact]
    public async Task A_boat_that_is_not_right_yet_says_all_of_it_and_loses_nothing()
    {
        await using ClubOnDevice club = await ClubOnDevice.StartAsync();
        IRenderedComponent<BoatFormPage> page = club.Page.Render<BoatFormPage>(p => p.Add(b => b.Key, "new"));
        await page.TypeAsync("#code", "B-7");
        await page.SendAsync();

        Assert.Equal(["name", "class"], Invalid(page));
        Assert.Equal("B-7", page.Find("#code").GetAttribute("value"));
        Assert.NotNull(page.Find("[role=alert]"));
        Assert.DoesNotContain(club.Recorded<ThingSet>(), s => s.Thing == Things.Boat);
    }

    [Theory]
    [InlineData("en", "2026-05-04")]
    [InlineData("de", "04.05.2026")]
    public async Task A_rack_says_the_day_its_level_was_read_as_every_page_says_a_day(string language, string day)
    {
        (CultureInfo culture, CultureInfo texts) = (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture);
        try
        {
            AppCulture.Begin(language);
            AppCulture.BeginFigures();
            await using ClubOnDevice club = await ClubOnDevice.StartAsync();
            await club.InHand.RecordAsync(
                new ThingSet(Things.Rack, "a", new Dictionary<string, string?> { ["name"] = "A" }),
                new RackLevelRead("a", 0.3m, 0, new(2026, 5, 4)));

            Assert.Contains(day, club.Page.Render<RacksPage>().Markup, StringComparison.Ordinal);
        }
        finally
        {
            (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = (culture, texts);
            (CultureInfo.DefaultThreadCurrentCulture, CultureInfo.DefaultThreadCurrentUICulture) = (null, null);
        }
    }

    [Theory]
    [InlineData(1, "found once in 1 look at gates")]
    [InlineData(2, "found 2 times in 2 looks at gates")]
    public async Task What_was_found_once_was_not_found_1_times(int jobs, string said)
    {
        CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");
        await using ClubOnDevice club = await ClubOnDevice.StartAsync();
        await club.InHand.RecordAsync([
            new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "2-" }),
            .. Enumerable.Range(1, jobs).SelectMany(i => new Fact[]
            {
                new JobPlanned($"j{i}", "teal", Cause.GatePitch, "insert-swap", [], [], [], 1, Side.Starboard),
                JobDone.Of($"j{i}", [Cause.GatePitch]),
            }),
        ]);

        IRenderedComponent<LearntChances> page = club.Page.Render<LearntChances>();

        page.WaitForAssertion(() => Assert.Contains(said, page.Find(".chances li").TextContent, StringComparison.Ordinal));
    }

    [Fact]
    public async Task What_was_wrong_is_no_longer_said_once_it_is_put_right()
    {
        await using ClubOnDevice club = await ClubOnDevice.StartAsync();
        IRenderedComponent<BoatFormPage> page = club.Page.Render<BoatFormPage>(p => p.Add(b => b.Key, "new"));
        await page.SendAsync();
        await page.TypeAsync("#name", "Grebe");

        Assert.Equal(["class"], Invalid(page));
    }

    [Fact]
    public async Task From_an_empty_shed_a_rack_and_a_boat_on_it_come_to_be()
    {
        await using ClubOnDevice club = await ClubOnDevice.StartAsync();
        IRenderedComponent<RackPage> rack = club.Page.Render<RackPage>(p => p.Add(r => r.Key, "new"));
        await rack.TypeAsync("#name", "Left, low");
        await rack.SendAsync();
        RackView made = Assert.Single(RackView.All(club.InHand.Club));
        Assert.StartsWith("left-low-", made.Key, StringComparison.Ordinal);

        IRenderedComponent<BoatFormPage> boat = club.Page.Render<BoatFormPage>(p => p.Add(b => b.Key, "new"));
        await boat.TypeAsync("#name", "Grebe");
        await boat.ChooseAsync("#class", "4+");
        await boat.ChooseAsync("#rack", made.Key);
        await boat.SendAsync();
        string key = Assert.Single(club.InHand.Shed.Keys);
        Assert.Equal(made.Key, BoatBerth.Of(new(club.InHand.Club, key)).Rack);
        Assert.Equal(4, club.Recorded<ThingSet>().Count(s => s.Thing == Things.Seat));
    }

    [Fact]
    public async Task What_the_disk_does_not_take_is_said_and_stays_typed()
    {
        await using ClubOnDevice club = await ClubOnDevice.StartAsync();
        IRenderedComponent<GaugePage> page = club.Page.Render<GaugePage>(p => p.Add(g => g.Key, "new"));
        await page.TypeAsync("#name", "Dial");
        club.Shelf.IsFull = true;
        await page.SendAsync();

        // In the reader's language, whichever the test runs in.
        string said = CultureInfo.CurrentUICulture.TwoLetterISOLanguageName == "de" ? "keinen Platz" : "gives no more room";
        Assert.Contains(said, page.Find("[role=alert]").TextContent, StringComparison.Ordinal);
        Assert.Equal("Dial", page.Find("#name").GetAttribute("value"));
    }

    [Fact]
    public async Task What_another_changes_meanwhile_does_not_undo_what_is_being_typed()
    {
        await using ClubOnDevice club = await ClubOnDevice.StartAsync();
        await club.InHand.RecordAsync(new ThingSet(Things.Rack, "a", new Dictionary<string, string?> { ["name"] = "A" }));
        IRenderedComponent<RackPage> page = club.Page.Render<RackPage>(p => p.Add(r => r.Key, "a"));
        await page.TypeAsync("#name", "A, left");
        await club.InHand.RecordAsync(new ThingSet(Things.Rack, "a", new Dictionary<string, string?> { ["bed"] = "soft" }));

        Assert.Equal("A, left", page.Find("#name").GetAttribute("value"));
        await page.SendAsync();
        Assert.Equal(("A, left", "soft"), (new ThingView(club.InHand.Club, Things.Rack, "a")["name"], new ThingView(club.InHand.Club, Things.Rack, "a")["bed"]));
    }

    [Fact]
    public async Task Two_readings_of_a_gauge_show_its_zero_before_they_are_kept()
    {
        await using ClubOnDevice club = await ClubOnDevice.StartAsync();
        await club.InHand.RecordAsync(new ThingSet(Things.Gauge, "dial", new Dictionary<string, string?> { ["name"] = "Dial" }));
        IRenderedComponent<GaugePage> page = club.Page.Render<GaugePage>(p => p.Add(g => g.Key, "dial"));
        await page.TypeAsync("#first", "2.3");
        await page.TypeAsync("#turned", "1.9");
        await page.ChooseAsync("input[name=turned-way]", "on", 1);

        // Half of 2.3 and −1.9: the same example as where the zero is worked out.
        Assert.Contains("+0.2", page.Find(".big").TextContent.Replace(',', '.'), StringComparison.Ordinal);
        Assert.Empty(club.Recorded<GaugeReversed>());
        await page.SendAsync("form", 1);
        Assert.Equal(new GaugeReversed("dial", 2.3m, -1.9m), Assert.Single(club.Recorded<GaugeReversed>()));
    }

    [Fact]
    public async Task A_standard_out_of_order_is_not_kept_and_says_where()
    {
        await using ClubOnDevice club = await ClubOnDevice.StartAsync();
        IRenderedComponent<StandardPage> page = club.Page.Render<StandardPage>(p => p.Add(s => s.Key, "new"));
        await page.TypeAsync("#name", string.Empty);
        await page.TypeAsync("#catch-floor", "4");
        await page.TypeAsync("#abeam-lowest", "9");
        await page.SendAsync();

        Assert.Equal(["name", "catch-floor", "abeam-lowest"], Invalid(page).OrderBy(i => i == "name" ? 0 : i == "catch-floor" ? 1 : 2));
        Assert.DoesNotContain(club.Recorded<ThingSet>(), s => s.Thing == Things.Standard);
    }

    [Fact]
    public async Task Parts_are_counted_and_changed_where_they_stand()
    {
        await using ClubOnDevice club = await ClubOnDevice.StartAsync();
        IRenderedComponent<StoresPage> page = club.Page.Render<StoresPage>();
        await page.TypeAsync("#size", "4");
        await page.TypeAsync("#count", "3");
        await page.SendAsync("#add-part form");
        await page.PressAsync(".steps button");

        Assert.Equal(2, StoresView.Of(club.InHand.Club)[("insert", 4)]);
        Assert.Equal("2", page.Find(".count").TextContent);
    }

    private static IEnumerable<string> Invalid<T>(IRenderedComponent<T> page)
        where T : Microsoft.AspNetCore.Components.IComponent =>
        page.FindAll("[aria-invalid=true]").Select(e => e.Id!);
}
