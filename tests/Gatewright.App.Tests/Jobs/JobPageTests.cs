using System.Globalization;
using Bunit;
using Gatewright.App.Jobs;
using Gatewright.App.Tests.World;
using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Jobs;
using Gatewright.Journal.Views;

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

    /// <summary>Of work that nobody marked as done nothing is said; what is expected holds once all of it is.</summary>
    [Theory]
    [InlineData(0, 4, "no step is marked as done")]
    [InlineData(0, 1, "No step is marked as done, and the gate does not read")]
    [InlineData(1, 4, "1 of 2 steps are marked as done, and the gate reads as it should once all are")]
    [InlineData(1, 1, "1 of 2 steps are marked as done. What is expected holds once all are")]
    [InlineData(2, 4, "The work did what it was to do")]
    [InlineData(2, 1, "The gate has changed, but not as predicted")]
    public async Task What_is_said_of_a_re_check_goes_by_how_much_was_done(int steps, int reads, string says)
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.RecordElsewhereAsync([
            Planned[0],
            new JobPlanned("j", "teal", Cause.GatePitch, "insert-swap", ["Fit the insert", "Look at it"], [], [new(Station.Abeam, 4, 3, 5)], 1, Side.Starboard),
            .. Enumerable.Range(0, steps).Select(step => new StepDone("j", step)),
            new BoatLaid("again", "teal", Lie.Upright, LevelBasis.Read, 0, 0),
            new ReadingTaken("again", "teal", ReadItem.Gate, 1, Side.Starboard, reads, Station.Abeam, Job: "j"),
        ]);

        IRenderedComponent<JobPage> page = Page(club);

        page.WaitForAssertion(() => Assert.Contains(says, page.Find("#proof ~ p:not([role])").TextContent, StringComparison.Ordinal), Patience);
        Assert.Equal(steps == 2 && reads == 4 ? ["gate-pitch"] : [], page.FindAll("input[name=found][checked]").Select(i => i.GetAttribute("value")));
    }

    [Theory]
    [InlineData(0, false)]
    [InlineData(1, true)]
    public async Task Whoever_gives_up_a_job_that_was_begun_is_told_that_its_gate_is_to_be_read(int steps, bool isTold)
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.RecordElsewhereAsync([.. Planned, .. Enumerable.Range(0, steps).Select(step => new StepDone("j", step))]);
        IRenderedComponent<JobPage> page = Page(club);
        Assert.Equal(isTold, page.FindAll("details p.caution").Any(p => p.TextContent.StartsWith("1 of 2 steps were done", StringComparison.Ordinal)));

        await page.PressAsync("#drop");

        page.WaitForElement("#closed");
        Assert.Equal(isTold, page.Markup.Contains("To be read again: seat 1 starboard", StringComparison.Ordinal));
    }

    /// <summary>The hold stands on the page; what was told of another place does not.</summary>
    [Fact]
    public async Task A_release_after_a_job_lifts_the_holds_that_stand_there_and_sees_to_no_damage_elsewhere()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.RecordElsewhereAsync([
            .. Planned,
            new Held("teal", "no insert"),
            new Noted(Things.Boat, "teal", "Damage", new DamageTold()),
            new JobDone("j", Cause.GatePitch),
            new BoatLaid("again", "teal", Lie.Upright, LevelBasis.Read, 0, 0),
            .. Stations.All.Select(at => new ReadingTaken("again", "teal", ReadItem.Gate, 1, Side.Starboard, 4, at)),
        ]);
        IRenderedComponent<JobPage> page = club.Page.Render<JobPage>(p => p.Add(j => j.Id, "j"));
        page.WaitForElement("#release-reason", Patience);

        await page.TypeAsync("#release-reason", "fitted");
        await page.PressAsync("#release");

        page.WaitForAssertion(() => Assert.Empty(page.FindAll("#release")), Patience);
        var boat = new BoatView(club.InHand.Club, "teal");
        Assert.Equal((0, true), (boat.Holds.Count, OpenReports.HasDamage(boat)));
    }

    [Fact]
    public async Task Who_gives_up_an_exchange_of_riggers_is_told_that_both_gates_are_changed()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.RecordElsewhereAsync(
            Planned[0],
            new JobPlanned("j", "teal", Cause.WrongSeat, "exchange-riggers", ["Exchange them"], [], [], 1, Side.Starboard, 2, Side.Port),
            new StepDone("j", 0));

        IRenderedComponent<JobPage> page = Page(club);

        Assert.Contains("seat 1 starboard, seat 2 port count as changed", page.Find("details .caution").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_boat_is_not_called_good_after_a_job_while_another_gate_of_it_is_to_be_read()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.RecordElsewhereAsync([
            .. Planned,
            new BoatLaid("before", "teal", Lie.Upright, LevelBasis.Read, 0, 0),
            new ReadingTaken("before", "teal", ReadItem.Gate, 2, Side.Port, 4, Station.Abeam),
            new JobDone("j", Cause.GatePitch),
            new BoatLaid("again", "teal", Lie.Upright, LevelBasis.Read, 0, 0),
            new ReadingTaken("again", "teal", ReadItem.Gate, 1, Side.Starboard, 4, Station.Abeam),
            new GateMended("teal", 2, Side.Port),
        ]);

        IRenderedComponent<JobPage> page = club.Page.Render<JobPage>(p => p.Add(j => j.Id, "j"));

        page.WaitForAssertion(() => Assert.Contains("The boat is now: to be read again.", page.Markup, StringComparison.Ordinal), Patience);
    }

    private static IRenderedComponent<JobPage> Page(ClubOfTwo club)
    {
        IRenderedComponent<JobPage> page = club.Page.Render<JobPage>(p => p.Add(j => j.Id, "j"));
        page.WaitForElement("#drop");
        return page;
    }
}
