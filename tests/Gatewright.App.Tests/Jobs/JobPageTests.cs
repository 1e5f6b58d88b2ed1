using Bunit;
using Gatewright.App.Jobs;
using Gatewright.App.Tests.World;
using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Jobs;

namespace Gatewright.App.Tests.Jobs;

/// <summary>On a job one undoes what one did oneself; what another did, a keeper does.</summary>
public class JobPageTests
{
    private static readonly Fact[] Planned =
    [
        new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "2-" }),
        new StockCounted("insert", 4, 3),
        new JobPlanned("j", "teal", Cause.GatePitch, "insert-swap", ["Fit the insert", "Look at it"], [new("insert", 4, 1)], [], 1, Side.Starboard),
    ];

    [Theory]
    [InlineData("helper", false)]
    [InlineData("keeper", true)]
    public async Task A_step_that_another_ticked_is_unticked_by_a_keeper_alone(string role, bool may)
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync(role);
        await club.RecordElsewhereAsync([.. Planned, new StepDone("j", 0)]);

        IRenderedComponent<JobPage> page = Page(club);

        Assert.Equal([!may, false], page.FindAll(".step input").Select(i => i.HasAttribute("disabled")));
    }

    [Fact]
    public async Task A_step_that_one_ticked_oneself_one_unticks()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("helper");
        await club.RecordElsewhereAsync(Planned);
        IRenderedComponent<JobPage> page = Page(club);

        await page.ChooseAsync(".step input", true);
        page.WaitForAssertion(() => Assert.Single(page.FindAll(".step.done input:not([disabled])")));
        await page.ChooseAsync(".step input", false);

        page.WaitForAssertion(() => Assert.Empty(page.FindAll(".step.done")));
    }

    [Theory]
    [InlineData("helper", false)]
    [InlineData("keeper", true)]
    public async Task A_part_that_another_took_is_put_back_by_a_keeper_alone(string role, bool may)
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync(role);
        await club.RecordElsewhereAsync([.. Planned, new StockChanged("insert", 4, -1, "j")]);

        IRenderedComponent<JobPage> page = Page(club);

        Assert.Equal(may ? 1 : 0, page.FindAll(".parts button").Count);
        Assert.Equal(may ? 1 : 0, page.FindAll("#drop-put-back").Count);
    }

    [Fact]
    public async Task A_job_is_given_up_without_putting_back_what_another_took()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("helper");
        await club.RecordElsewhereAsync([.. Planned, new StockChanged("insert", 4, -1, "j")]);
        IRenderedComponent<JobPage> page = Page(club);

        await page.PressAsync("#drop");

        Assert.True(ClubJobs.Of(club.InHand.Club).Find("j")!.IsDropped);
        Assert.Contains(club.InHand.Club.All(), r => r.Fact is StockChanged);
    }

    [Fact]
    public async Task A_job_is_closed_with_all_that_was_found_the_planned_cause_first()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.RecordElsewhereAsync(Planned);
        IRenderedComponent<JobPage> page = Page(club);
        Assert.Empty(page.FindAll("input[name=found][checked]"));

        await page.ChooseAsync("input[name=found][value=pin-aft]", true);
        await page.ChooseAsync("input[name=found][value=gate-pitch]", true);
        await page.PressAsync("#close");

        Assert.Equal([Cause.GatePitch, Cause.PinAft], ClubJobs.Of(club.InHand.Club).Find("j")!.Found);
        page.WaitForAssertion(() => Assert.Contains(" + ", page.Find("#closed").TextContent, StringComparison.Ordinal));
    }

    private static IRenderedComponent<JobPage> Page(ClubOfTwo club)
    {
        IRenderedComponent<JobPage> page = club.Page.Render<JobPage>(p => p.Add(j => j.Id, "j"));
        page.WaitForElement("#drop");
        return page;
    }
}
