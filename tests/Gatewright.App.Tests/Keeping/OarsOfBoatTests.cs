using System.Globalization;
using AngleSharp.Dom;
using Bunit;
using Gatewright.App.Keeping.Oars;
using Gatewright.App.Tests.World;
using Gatewright.Core.Oars;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Oars;

namespace Gatewright.App.Tests.Keeping;

/// <summary>The oars on a boat's page, with who put them there and when.</summary>
public sealed class OarsOfBoatTests
{
    public OarsOfBoatTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    [Fact]
    public async Task Each_stands_at_its_gate_with_the_day_and_whoever_put_it_there()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.InHand.RecordAsync(Oar("o1", ("name", "Oar 1"), ("side", "port"), ("boat", "teal"), ("seat", "1")));
        await club.RecordElsewhereAsync(Oar("o2", ("name", "Oar 2"), ("side", "starboard"), ("boat", "teal"), ("seat", "2")));
        await club.InHand.RecordAsync(Oar("o3", ("name", "Oar 3"), ("side", "port"), ("boat", "wren"), ("seat", "1")));

        IRenderedComponent<OarsOfBoat> oars = club.Page.Render<OarsOfBoat>(p => p.Add(o => o.Club, club.InHand.Club).Add(o => o.Boat, "teal"));

        string today = DateTimeOffset.Now.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        Assert.Equal([$"Oar 1 seat 1, port you, {today}", $"Oar 2 seat 2, starboard a member, {today}"], oars.FindAll("li").Select(Spaced));

        // What is changed of an oar later, but its place, leaves whoever put it there.
        await club.RecordElsewhereAsync(Oar("o1", ("blade", "cleaver")));
        oars.Render(p => p.Add(o => o.Club, club.InHand.Club).Add(o => o.Boat, "teal"));
        Assert.StartsWith("Oar 1 seat 1, port you", Spaced(oars.Find("li")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_oar_s_page_says_who_put_it_where_it_is_rowed_and_when()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.InHand.RecordAsync(Oar("o1", ("name", "Oar 1"), ("side", "port")));
        Assert.Empty(club.Page.Render<OarPage>(p => p.Add(o => o.Key, "o1")).FindAll("#placed"));

        await club.RecordElsewhereAsync(Oar("o1", ("boat", "teal"), ("seat", "1")));
        IRenderedComponent<OarPage> page = club.Page.Render<OarPage>(p => p.Add(o => o.Key, "o1"));

        Assert.Equal($"a member, {DateTimeOffset.Now.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}", page.Find("#placed").TextContent);
    }

    [Fact]
    public async Task A_reading_can_be_taken_back_where_the_oar_is()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.InHand.RecordAsync(Oar("o1", ("name", "Oar 1")), new OarRead("o1", OarItem.Sleeve, 2, Session: "x"));
        IRenderedComponent<OarPage> page = club.Page.Render<OarPage>(p => p.Add(o => o.Key, "o1"));
        await page.PressAsync("button.quiet");

        Assert.Null(new OarsView(club.InHand.Club).Oar("o1")!.Oar.Sleeve);
    }

    private static string Spaced(IElement element) =>
        string.Join(' ', string.Join(' ', element.QuerySelectorAll("a > span:not(.mark), small").Select(e => e.TextContent)).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private static ThingSet Oar(string key, params (string Field, string? Value)[] fields) =>
        new(Things.Oar, key, fields.ToDictionary(f => f.Field, f => f.Value));
}
