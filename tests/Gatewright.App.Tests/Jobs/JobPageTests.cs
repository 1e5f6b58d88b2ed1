using System.Globalization;
using Bunit;
using Gatewright.App.Jobs;
using Gatewright.App.Tests.World;
using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Jobs;

namespace Gatewright.App.Tests.Jobs;

/// <summary>On a job one undoes what one did oneself; what another did, a keeper does.</summary>
public class JobPageTests
{
    public JobPageTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    private static readonly Fact[] Planned =
    [
        new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "2-" }),
        new StockCounted("insert", 4, 3),
        new JobPlanned("j", "teal", Cause.GatePitch, "insert-swap", ["Fit the insert", "Look at it"], [new("insert", 4, 1)], [], 1, Side.Starboard),
    ];

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

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

    /// <summary>A gate that reads as the work should leave it proves nothing of work that nobody is known to have done.</summary>
    [Theory]
    [InlineData(false, "no step is marked as done")]
    [InlineData(true, "did what it was to do")]
    public async Task What_reads_as_expected_is_laid_to_work_that_was_begun(bool isBegun, string says)
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.RecordElsewhereAsync([
            Planned[0],
            new JobPlanned("j", "teal", Cause.GatePitch, "insert-swap", ["Fit the insert"], [], [new(Station.Abeam, 4, 3, 5)], 1, Side.Starboard),
            .. isBegun ? [new StepDone("j", 0)] : Array.Empty<Fact>(),
            new BoatLaid("again", "teal", Lie.Upright, LevelBasis.Read, 0, 0),
            new ReadingTaken("again", "teal", ReadItem.Gate, 1, Side.Starboard, 4, Station.Abeam, Job: "j"),
        ]);

        IRenderedComponent<JobPage> page = Page(club);

        page.WaitForAssertion(() => Assert.Contains(says, page.Find("#proof ~ p:not([role])").TextContent, StringComparison.Ordinal), Patience);
        Assert.Equal(isBegun ? ["gate-pitch"] : [], page.FindAll("input[name=found][checked]").Select(i => i.GetAttribute("value")));
    }

    private static IRenderedComponent<JobPage> Page(ClubOfTwo club)
    {
        IRenderedComponent<JobPage> page = club.Page.Render<JobPage>(p => p.Add(j => j.Id, "j"));
        page.WaitForElement("#drop");
        return page;
    }
}
