using System.Globalization;
using Bunit;
using Gatewright.App.Boat;
using Gatewright.App.Jobs;
using Gatewright.App.Round;
using Gatewright.App.Shed;
using Gatewright.App.Tests.World;
using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Rounds;
using Gatewright.Journal.Views;
using Gatewright.Words;

namespace Gatewright.App.Tests.Boat;

/// <summary>A boat that somebody holds in German is held for an English sentence to an English reader, on every page that says why.</summary>
public sealed class HoldsInEitherLanguageTests
{
    private const string English = "A knock at seat 1 starboard";
    private static readonly Held ByAGerman = new("teal", "Ein Stoß an Platz 1 Steuerbord", new Dictionary<string, string> { ["en"] = English });
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    public HoldsInEitherLanguageTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    [Fact]
    public async Task The_boat_s_page_says_why_in_the_reader_s_language()
    {
        await using BoatInHand boat = await BoatInHand.StartAsync();
        await boat.ReadAsync(DateOnly.FromDateTime(DateTime.Now), 4);
        await boat.RecordAsync(ByAGerman);

        IRenderedComponent<BoatPage> page = boat.Page();

        Assert.Contains(English, page.Find("section.held").TextContent, StringComparison.Ordinal);
        Assert.Contains(English, page.Find("section[aria-labelledby=happened]").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("Stoß", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_shed_says_why_in_the_reader_s_language()
    {
        await using ClubOfTwo club = await ReadAsync(4, ByAGerman);

        IRenderedComponent<ShedBoat> boat = club.Page.Render<ShedBoat>(p => p.Add(b => b.Row, new ShedRow(new(club.InHand.Club, "teal"), null, null)));

        Assert.Contains(English, boat.Find(".held-word").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_job_that_is_done_says_in_the_reader_s_language_why_its_boat_is_still_held()
    {
        await using ClubOfTwo club = await ReadAsync(4, ByAGerman, new JobPlanned("j", "teal", Cause.GatePitch, "insert-swap", ["Fit it"], [], [], 1, Side.Starboard), new JobDone("j"));

        IRenderedComponent<JobPage> page = club.Page.Render<JobPage>(p => p.Add(j => j.Id, "j"));

        page.WaitForAssertion(() => Assert.Contains(English, page.Find(".held").TextContent, StringComparison.Ordinal), Patience);
    }

    [Fact]
    public async Task The_story_of_a_held_boat_says_why_in_the_reader_s_language()
    {
        await using ClubOfTwo club = await ReadAsync(0, ByAGerman);
        IRenderedComponent<ReadPage> page = await StoryAsync(club);

        Assert.Contains(English, page.Find("#ashore").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_a_boat_is_held_for_after_a_round_is_put_down_in_both_languages()
    {
        await using ClubOfTwo club = await ReadAsync(0);
        IRenderedComponent<ReadPage> page = await StoryAsync(club);

        await page.PressAsync("#hold");

        Held hold = (Held)Assert.Single(new BoatView(club.InHand.Club, "teal").Holds).Fact;
        Assert.StartsWith("Seat 1 starboard reads 0.0° ± ", hold.In(Language.English), StringComparison.Ordinal);
        Assert.StartsWith("Platz 1 Steuerbord zeigt im Mittelzug 0,0° ± ", hold.In(Language.German), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_boat_is_held_for_the_gate_that_keeps_it_ashore_not_for_another_that_only_wants_mending()
    {
        await using ClubOfTwo club = await ReadAsync(8, new ReadingTaken("l", "teal", ReadItem.Gate, 2, Side.Port, 2.2m, Station.Abeam));
        IRenderedComponent<ReadPage> page = await StoryAsync(club);

        await page.PressAsync("#hold");

        Held hold = (Held)Assert.Single(new BoatView(club.InHand.Club, "teal").Holds).Fact;
        Assert.StartsWith("Seat 2 port reads 2.2° ± ", hold.In(Language.English), StringComparison.Ordinal);
    }

    /// <summary>A pair with bow's gate read in a round, and what else is on record.</summary>
    private static async Task<ClubOfTwo> ReadAsync(decimal value, params Fact[] further)
    {
        ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        RoundPlan plan = RoundPlan.None.Begun("round", DateOnly.FromDateTime(DateTime.Today), ["teal"]);
        await club.Device.SetAsync($"round/{club.InHand.Held.Club}", plan.Write());
        await club.InHand.RecordAsync(
        [
            new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "2-" }),
            new RoundStarted("round"),
            new BoatLaid("l", "teal", Lie.Upright, LevelBasis.Read, 0, 0, Round: "round"),
            new ReadingTaken("l", "teal", ReadItem.Gate, 1, Side.Starboard, value, Station.Abeam),
            .. further,
        ]);
        return club;
    }

    private static async Task<IRenderedComponent<ReadPage>> StoryAsync(ClubOfTwo club)
    {
        IRenderedComponent<ReadPage> page = club.Page.Render<ReadPage>(p => p.Add(r => r.Round, "round").Add(r => r.Boat, "teal"));
        if (club.InHand.Club.All().Count(r => r.Fact is ReadingTaken) < 2)
        {
            // Where both gates are read the story comes by itself.
            await page.PressAsync("#more");
            await page.PressAsync("#to-story");
        }

        page.WaitForElement("#ashore", Patience);
        return page;
    }
}
