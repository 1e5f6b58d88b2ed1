using System.Globalization;
using Bunit;
using Gatewright.App.Jobs;
using Gatewright.App.Tests.World;
using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;
using Gatewright.Core.Mending;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Jobs;
using Gatewright.Journal.Standing;
using Gatewright.Words;

namespace Gatewright.App.Tests.Jobs;

/// <summary>A line of the list says of a pin which way it leans, as the job's own page does.</summary>
public sealed class JobsPageTests
{
    // A diagnosis is worked out for each, beside other tests.
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(30);

    public JobsPageTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    [Theory]
    [InlineData(ReadItem.PinAft, 3, Cause.PinAft, "For: pin leans aft (its top to the stern)")]
    [InlineData(ReadItem.PinAft, -3, Cause.PinAft, "For: pin leans forward (its top to the bow)")]
    [InlineData(ReadItem.PinOut, 3, Cause.PinOut, "For: pin leans out (its top away from the hull)")]
    [InlineData(ReadItem.PinOut, -3, Cause.PinOut, "For: pin leans in (its top towards the hull)")]
    public async Task A_pin_s_job_says_which_way_the_pin_leans(ReadItem item, int degrees, Cause cause, string expected)
    {
        await using ClubOfTwo club = await PlannedAsync(item, degrees, cause);

        IRenderedComponent<JobsPage> list = club.Page.Render<JobsPage>();
        list.WaitForAssertion(() => Assert.Equal(expected, list.Find("#open-list .for").TextContent), Longest);

        IRenderedComponent<JobPage> page = club.Page.Render<JobPage>(p => p.Add(j => j.Id, "j"));
        page.WaitForAssertion(() => Assert.StartsWith(expected, page.Find("p.about").TextContent, StringComparison.Ordinal), Longest);
    }

    [Fact]
    public async Task Of_another_job_the_line_says_no_more_than_how_it_is_mended()
    {
        await using ClubOfTwo club = await PlannedAsync(ReadItem.GatePitch, 1, Cause.GatePitch);
        await PlanAsync(club, "pin", new(2, Side.Port), ReadItem.PinAft, 3, Cause.PinAft);

        IRenderedComponent<JobsPage> list = club.Page.Render<JobsPage>();

        // The insert's job was planned first: what would be said of it stands there once the pin's does.
        list.WaitForElement(".job a[href='job/pin'] .for", Longest);
        Assert.Single(list.FindAll(".job a[href='job/j']"));
        Assert.Empty(list.FindAll(".job a[href='job/j'] .for"));
    }

    /// <summary>A pair, and the job for a cause at bow's gate.</summary>
    private static async Task<ClubOfTwo> PlannedAsync(ReadItem item, decimal degrees, Cause cause)
    {
        ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.InHand.RecordAsync(
            new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "2-" }),
            new BoatLaid("l", "teal", Lie.Upright, LevelBasis.Read, 0, 0));
        await PlanAsync(club, "j", new(1, Side.Starboard), item, degrees, cause);
        return club;
    }

    /// <summary>Reads a gate abeam, as what is wrong with it makes it, and what else is read of it; then plans the job for a cause.</summary>
    private static async Task PlanAsync(ClubOfTwo club, string job, GatePlace gate, ReadItem item, decimal degrees, Cause cause)
    {
        decimal face = item switch
        {
            ReadItem.PinAft => 4 + degrees,
            ReadItem.GatePitch => degrees,
            _ => 4,
        };
        await club.InHand.RecordAsync(
            new ReadingTaken("l", "teal", ReadItem.Gate, gate.Seat, gate.Side, face, Station.Abeam),
            new ReadingTaken("l", "teal", item, gate.Seat, gate.Side, degrees));
        BoatStanding standing = (await club.InHand.BoatAsync("teal"))!;
        Remedy remedy = Remedies.For(standing.Check!, gate, MendingSettings.Default).First(r => r.Part.Cause == cause);
        await club.InHand.RecordAsync(JobPlan.Of(job, "teal", remedy, gate, Wording.English));
    }
}
