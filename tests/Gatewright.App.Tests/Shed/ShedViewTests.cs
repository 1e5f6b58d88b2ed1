using System.Globalization;
using Bunit;
using Gatewright.App.Shed;
using Gatewright.App.Tests.World;
using Gatewright.Core;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;

namespace Gatewright.App.Tests.Shed;

public class ShedViewTests
{
    public ShedViewTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    [Fact]
    public async Task While_a_boat_is_not_judged_yet_the_counts_say_so_and_then_no_more()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");

        // More than can be judged before the page is first drawn, on any machine.
        foreach (string key in Enumerable.Range(1, 60).Select(n => $"boat-{n}"))
        {
            await club.InHand.RecordAsync(
                new ThingSet(Things.Boat, key, new Dictionary<string, string?> { ["name"] = key, ["class"] = "1x" }),
                new BoatLaid(key, key, Lie.Upright, LevelBasis.ByEye),
                new ReadingTaken(key, key, ReadItem.Gate, 1, Side.Port, 4, Station.Abeam));
        }

        var said = new List<string>();
        IRenderedComponent<ShedView> shed = null!;

        // In one turn of the page: else the boats may have been judged before anybody looks.
        await club.Page.Renderer.Dispatcher.InvokeAsync(() =>
        {
            shed = club.Page.Render<ShedView>();
            shed.OnAfterRender += (_, _) => said.Add(shed.Find(".judging").TextContent);
            said.Add(shed.Find(".judging").TextContent);
        });
        await shed.WaitForStateAsync(() => shed.Find(".judging").TextContent.Length == 0, TimeSpan.FromSeconds(20));
        Assert.Equal("judging…", said[0]);
        Assert.DoesNotContain("judging…", shed.Markup, StringComparison.Ordinal);

        // Judged anew they are counted by what is known of them until then: nothing is announced at every change of the club.
        said.Clear();
        await club.InHand.RecordAsync(new Noted(Things.Boat, "boat-1", "a scratch"));
        await shed.WaitForStateAsync(() => said.Count > 0, TimeSpan.FromSeconds(20));
        await Task.Delay(200, Xunit.TestContext.Current.CancellationToken);
        Assert.All(said, Assert.Empty);
    }

    [Theory]
    [InlineData("r-17", "heron", "racks/lower")]
    [InlineData("Oar-3", "teal", "oars/oar-3")]
    [InlineData("https://gates.example/app/oars/oar-3", "teal", "oars/oar-3")]
    [InlineData("oar-4", null, "oars/oar-4")]
    [InlineData("h-2", "heron", null)]
    [InlineData("Teal/2", "teal", null)]
    [InlineData("2-", "teal", null)]
    [InlineData("nothing", null, null)]
    public async Task The_code_on_a_label_finds_the_boats_it_belongs_to(string code, string? boat, string? page)
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.RecordElsewhereAsync(
            Set(Things.Rack, "lower", ("name", "Lower"), ("code", "R-17")),
            Set(Things.Boat, "heron", ("name", "Heron"), ("class", "1x"), ("rack", "lower"), ("code", "H-2")),
            Set(Things.Boat, "teal", ("name", "Teal"), ("class", "2-")),
            Set(Things.Oar, "oar-3", ("name", "Red 3"), ("boat", "teal"), ("seat", "2"), ("side", "port")),
            Set(Things.Oar, "oar-4", ("name", "Red 4")));
        IRenderedComponent<ShedView> shed = club.Page.Render<ShedView>();
        shed.WaitForElement("#search");

        await shed.TypeAsync("#search", code);

        Assert.Equal(boat is null ? [] : [$"boat/{boat}"], shed.FindAll(".boat-link").Select(n => n.GetAttribute("href")));
        Assert.Equal(page, shed.FindAll("#of-label").SingleOrDefault()?.GetAttribute("href"));
    }

    /// <summary>Files name racks by a letter, and then a letter is also how the names of many boats begin.</summary>
    [Theory]
    [InlineData("b", "bittern", null)]
    [InlineData("B", "bittern heron", "racks/b")]
    [InlineData("x", "swift", "racks/x")]
    public async Task A_letter_typed_is_a_boat_s_name_before_it_is_a_rack_s(string letter, string boats, string? page)
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.RecordElsewhereAsync(
            Set(Things.Rack, "b", ("name", "B")),
            Set(Things.Rack, "x", ("name", "X")),
            Set(Things.Boat, "bittern", ("name", "Bittern"), ("class", "1x")),
            Set(Things.Boat, "heron", ("name", "Heron"), ("class", "1x"), ("rack", "b")),
            Set(Things.Boat, "swift", ("name", "Swift"), ("class", "1x"), ("rack", "x")));
        IRenderedComponent<ShedView> shed = club.Page.Render<ShedView>();
        shed.WaitForElement("#search");

        await shed.TypeAsync("#search", letter);

        Assert.Equal(boats, string.Join(' ', shed.FindAll(".boat-link").Select(n => n.GetAttribute("href")!["boat/".Length..]).Order(StringComparer.Ordinal)));
        Assert.Equal(page, shed.FindAll("#of-label").SingleOrDefault()?.GetAttribute("href"));
    }

    private static ThingSet Set(string thing, string key, params (string Field, string Value)[] fields) =>
        new(thing, key, fields.ToDictionary(f => f.Field, f => (string?)f.Value));
}
