using System.Globalization;
using Bunit;
using Gatewright.App.Round;
using Gatewright.App.Tests.World;
using Gatewright.Core;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Rounds;
using Gatewright.Journal.Views;
using Gatewright.Words;

namespace Gatewright.App.Tests.Round;

/// <summary>A round speaks of a boat as the shed does: what kept it ashore before it was changed does so until it is read.</summary>
public sealed class ChangedUnreadInRoundTests
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);
    private static readonly DateOnly Today = DateOnly.FromDateTime(DateTime.Today);

    public ChangedUnreadInRoundTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    [Theory]
    [InlineData(0, true)]
    [InlineData(4, false)]
    public async Task The_round_s_end_says_of_a_changed_gate_what_the_shed_says(double before, bool staysAshore)
    {
        await using ClubOfTwo club = await ChangedAsync((decimal)before, isReadSince: true);

        IRenderedComponent<RoundPage> page = club.Page.Render<RoundPage>(p => p.Add(r => r.Round, "round"));

        page.WaitForAssertion(() => Assert.Equal("to be read again", page.Find(".about b").TextContent), Patience);
        Assert.Equal(staysAshore ? ["It is to stay ashore."] : [], page.FindAll(".held-word").Select(w => w.TextContent));
    }

    [Fact]
    public async Task A_boat_that_the_round_has_not_come_to_stays_ashore_at_its_end_too()
    {
        await using ClubOfTwo club = await ChangedAsync(0, isReadSince: false);

        IRenderedComponent<RoundPage> page = club.Page.Render<RoundPage>(p => p.Add(r => r.Round, "round"));

        page.WaitForElement(".held-word", Patience);
        Assert.Equal("not read", page.Find(".about").TextContent);
    }

    [Fact]
    public async Task Its_story_names_the_gate_says_no_good_and_holds_it_for_that()
    {
        await using ClubOfTwo club = await ChangedAsync(0, isReadSince: true);
        IRenderedComponent<ReadPage> page = await StoryAsync(club);

        page.WaitForElement("#ashore", Patience);
        Assert.Equal("To be read again", page.Find("#story span").TextContent);
        Assert.Contains("not out on the water until it is read again", page.Find("#ashore").TextContent, StringComparison.Ordinal);
        Assert.StartsWith("Seat 1 starboard was mended on", Assert.Single(page.FindAll(".changed li")).TextContent, StringComparison.Ordinal);

        await page.PressAsync("#hold");

        Held hold = (Held)Assert.Single(new BoatView(club.InHand.Club, "teal").Holds).Fact;
        Assert.Equal(
            (Wording.English.Cautions.ChangedUnread, Wording.German.Cautions.ChangedUnread), (hold.In(Language.English), hold.In(Language.German)));
    }

    [Fact]
    public async Task A_changed_gate_that_kept_nobody_ashore_is_named_and_no_more()
    {
        await using ClubOfTwo club = await ChangedAsync(4, isReadSince: true);
        IRenderedComponent<ReadPage> page = await StoryAsync(club);

        page.WaitForElement(".changed li", Patience);
        Assert.Equal("To be read again", page.Find("#story span").TextContent);
        Assert.Empty(page.FindAll("#ashore"));
    }

    /// <summary>A pair on a round, bow's gate read the day before and mended since; and stroke's, which is good, read in the round or not.</summary>
    private static async Task<ClubOfTwo> ChangedAsync(decimal before, bool isReadSince)
    {
        ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        RoundPlan plan = RoundPlan.None.Begun("round", Today, ["teal"]);
        await club.Device.SetAsync($"round/{club.InHand.Held.Club}", plan.Write());
        await club.InHand.RecordAsync(
        [
            new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "2-" }),
            new BoatLaid("before", "teal", Lie.Upright, LevelBasis.Read, 0, 0, Date: Today.AddDays(-1)),
            new ReadingTaken("before", "teal", ReadItem.Gate, 1, Side.Starboard, before, Station.Abeam),
            new GateMended("teal", 1, Side.Starboard),
            new RoundStarted("round"),
        ]);
        if (isReadSince)
        {
            await club.InHand.RecordAsync(
                new BoatLaid("l", "teal", Lie.Upright, LevelBasis.Read, 0, 0, Round: "round"),
                new ReadingTaken("l", "teal", ReadItem.Gate, 2, Side.Port, 4, Station.Abeam));
        }

        return club;
    }

    private static async Task<IRenderedComponent<ReadPage>> StoryAsync(ClubOfTwo club)
    {
        IRenderedComponent<ReadPage> page = club.Page.Render<ReadPage>(p => p.Add(r => r.Round, "round").Add(r => r.Boat, "teal"));
        await page.PressAsync("#more");
        await page.PressAsync("#to-story");
        return page;
    }
}
