using System.Globalization;
using Bunit;
using Gatewright.App.Jobs;
using Gatewright.App.Tests.World;
using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Rounds;

namespace Gatewright.App.Tests.Jobs;

/// <summary>Which gauge a re-check is read with is said by whoever reads it.</summary>
public class RecheckPageTests
{
    private static readonly Fact[] Planned =
    [
        new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "2-" }),
        new ThingSet(Things.Gauge, "dial", new Dictionary<string, string?> { ["name"] = "Dial" }),
        new BoatLaid("l", "teal", Lie.Upright, LevelBasis.ByEye),
        new ReadingTaken("l", "teal", ReadItem.Gate, 1, Side.Starboard, 6, Station.Abeam, null, "dial"),
        new JobPlanned("j", "teal", Cause.GatePitch, "insert-swap", ["Fit the insert"], [], [new(Station.Abeam, 4, 3, 5)], 1, Side.Starboard),
    ];

    [Fact]
    public async Task No_gauge_is_put_in_that_nobody_chose()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.RecordElsewhereAsync(Planned);
        IRenderedComponent<RecheckPage> page = Page(club);

        Assert.Equal(["", "dial"], page.FindAll("#gauge option").Select(o => o.GetAttribute("value")));
        await page.PressAsync(".pad-here button");

        Assert.Null(Read(club).Gauge);
    }

    [Fact]
    public async Task The_gauge_of_the_round_goes_on()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.RecordElsewhereAsync(Planned);
        await club.Device.SetAsync("round/c", (RoundPlan.None with { Gauge = "dial" }).Write());

        await Page(club).PressAsync(".pad-here button");

        Assert.Equal("dial", Read(club).Gauge);
    }

    [Fact]
    public async Task A_gauge_that_is_chosen_stands_in_the_reading()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.RecordElsewhereAsync(Planned);
        IRenderedComponent<RecheckPage> page = Page(club);
        await page.ChooseAsync("#gauge", "dial");

        await page.PressAsync(".pad-here button");

        Assert.Equal("dial", Read(club).Gauge);
    }

    [Theory]
    [InlineData(0.4, "5.0° entered; 4.6° with the boat's level taken out")]
    [InlineData(0, null)]
    public async Task What_is_told_and_was_not_entered_says_why(double bowHigh, string? said)
    {
        CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.RecordElsewhereAsync([
            .. Planned,
            new BoatLaid("again", "teal", Lie.Upright, LevelBasis.Read, (decimal)bowHigh, 0),
            new ReadingTaken("again", "teal", ReadItem.Gate, 1, Side.Starboard, 5, Station.Abeam, Job: "j"),
        ]);

        Assert.Equal(said, Page(club).FindAll(".now .entered").Select(e => e.TextContent).SingleOrDefault());
    }

    private static ReadingTaken Read(ClubOfTwo club) =>
        Assert.Single(club.InHand.Club.All().Select(r => r.Fact).OfType<ReadingTaken>(), r => r.Job == "j");

    private static IRenderedComponent<RecheckPage> Page(ClubOfTwo club)
    {
        IRenderedComponent<RecheckPage> page = club.Page.Render<RecheckPage>(p => p.Add(j => j.Id, "j"));
        page.WaitForElement(".pad-here");
        return page;
    }
}
