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
        await page.Find(".pad-here button").ClickAsync(new());

        Assert.Null(Read(club).Gauge);
    }

    [Fact]
    public async Task The_gauge_of_the_round_goes_on()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.RecordElsewhereAsync(Planned);
        await club.Device.SetAsync("round/c", (RoundPlan.None with { Gauge = "dial" }).Write());

        await Page(club).Find(".pad-here button").ClickAsync(new());

        Assert.Equal("dial", Read(club).Gauge);
    }

    [Fact]
    public async Task A_gauge_that_is_chosen_stands_in_the_reading()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.RecordElsewhereAsync(Planned);
        IRenderedComponent<RecheckPage> page = Page(club);
        await page.Find("#gauge").ChangeAsync(new() { Value = "dial" });

        await page.Find(".pad-here button").ClickAsync(new());

        Assert.Equal("dial", Read(club).Gauge);
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
