using System.Globalization;
using System.Net;
using Bunit;
using Gatewright.App.Changing;
using Gatewright.App.Device;
using Gatewright.App.Jobs;
using Gatewright.App.Keeping.People;
using Gatewright.App.Rig;
using Gatewright.App.Tests.World;
using Gatewright.Core.Judging;
using Gatewright.Core.Rig;
using Gatewright.Journal.Exchange.Check;
using Gatewright.Journal.Exchange.Mend;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Rounds;
using Gatewright.Replica.Shelves;
using Gatewright.Words;
using Microsoft.Extensions.DependencyInjection;

namespace Gatewright.App.Tests.Device;

/// <summary>What this device remembers beside a club goes with the club, whoever wrote it and whenever it was done.</summary>
public class SettingsOfAClubTests
{
    private static readonly string Plan = MendJson.Text(new ClubPlan(DateTimeOffset.UnixEpoch, 0, [], new(
        MendDocument.Name, CheckedStandard.Of(Standard.Club), null, [], [], [], new(0, 0, 0, 0, 0, 0, 0, 0, 0, true), [], [], [])));

    private Action _asked = () => { };

    public SettingsOfAClubTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    [Fact]
    public async Task Nothing_of_it_is_left()
    {
        await using ClubOfTwo club = await StartAsync();
        ThisDevice device = club.Page.Services.GetRequiredService<ThisDevice>();
        await device.Device.SetAsync("club", null);
        string[] before = [.. Names(club), "rig-measures"];
        await device.Device.SetAsync("round/c", (RoundPlan.None with { Gauge = "dial" }).Write());
        await new RigHere(device, club.InHand).BeginAsync("teal", [RigMeasure.Spread]);
        await club.Page.Services.GetRequiredService<PlanAsked>().AskAsync(Language.English, Xunit.TestContext.Current.CancellationToken);
        await club.Page.Services.GetRequiredService<MemberNames>().AskAsync();
        await club.InHand.BoatAsync("teal");
        IRenderedComponent<TravelPage> page = club.Page.Render<TravelPage>(p => p.Add(t => t.Key, "teal"));
        page.WaitForElement("#put-on");
        await page.ChooseAsync(".step input", true);
        Assert.All(["round", "rig-walk", "plan", "names", "chances", "ticks travel teal"], name => Assert.NotNull(device.Device.Of("c", name)));

        await device.LetGoAsync("c");

        Assert.Equal(before, Names(club));
    }

    [Fact]
    public async Task A_count_that_ends_after_it_went_leaves_nothing()
    {
        await using ClubOfTwo club = await StartAsync();
        club.InHand.Breath.Hold();
        Task judged = club.InHand.Shed.BoatAsync("teal");
        await Task.Delay(50, Xunit.TestContext.Current.CancellationToken);
        Assert.False(judged.IsCompleted);

        await club.Page.Services.GetRequiredService<ThisDevice>().LetGoAsync("c");
        club.InHand.Breath.LetGo();
        await judged;

        Assert.Empty(Names(club));
    }

    [Fact]
    public async Task What_is_being_written_while_it_goes_goes_too()
    {
        var shelf = new FullShelf();
        Replica.Device device = await Replica.Device.OpenAsync(shelf, TimeProvider.System);
        string club = (await device.StartClubAsync("Weir Side")).Held.Club;
        var slow = new TaskCompletionSource();
        shelf.Writing = () => slow.Task;
        Task setting = device.SetAsync(club, "round", "read");
        shelf.Writing = null;
        await device.LetGoAsync(club);

        slow.SetResult();
        await setting;

        Assert.Empty(device.Settings);
    }

    [Fact]
    public async Task A_plan_that_comes_after_it_went_is_not_another_club_s()
    {
        await using ClubOfTwo club = await StartAsync();
        ThisDevice device = club.Page.Services.GetRequiredService<ThisDevice>();
        string other = (await device.Device.StartClubAsync("Weir Side")).Held.Club;
        _asked = () => Assert.True(device.LetGoAsync("c").IsCompletedSuccessfully);

        (ClubPlan? plan, _) = await club.Page.Services.GetRequiredService<PlanAsked>().AskAsync(Language.English, Xunit.TestContext.Current.CancellationToken);

        Assert.NotNull(plan);
        Assert.Equal(other, club.InHand.Held.Club);
        Assert.Equal(["club"], Names(club));
    }

    [Fact]
    public async Task What_nothing_reads_any_more_goes_at_the_next_start()
    {
        await using ClubOfTwo club = await StartAsync();
        await club.Device.SetAsync("plan:c", Plan);
        await club.Device.SetAsync("ticks travel teal", "off 1 starboard");
        await club.Device.SetAsync("c", "ticks travel teal", "on 1 starboard");
        await club.Device.SetAsync("c", "round", "kept");
        var again = new ThisDevice(
            club.Page.Services.GetRequiredService<IDeviceShelf>(), club.Page.Services.GetRequiredService<BrowserRoom>(), new(), TimeProvider.System, new());

        await again.OpenAsync();
        await again.Opened;

        Assert.Equal(["club", "round/c", "ticks travel teal/c"], again.Device.Settings.Keys.Order(StringComparer.Ordinal));
    }

    private async Task<ClubOfTwo> StartAsync()
    {
        ClubOfTwo club = await ClubOfTwo.StartAsync("keeper", request =>
        {
            _asked();
            return new(HttpStatusCode.OK)
            {
                Content = new StringContent(request.RequestUri!.AbsolutePath switch
                {
                    "/api/clubs/c/plan" => Plan,
                    "/api/clubs/c/members" => """[{"member":"m-bea","name":"Bea Alder","role":"keeper"}]""",
                    _ => "[]",
                }),
            };
        });
        await club.InHand.RecordAsync(
            new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "2-" }),
            new MeasureTaken("teal", "spread", 2, 85, "cm"));
        return club;
    }

    private static string[] Names(ClubOfTwo club) => [.. club.Device.Settings.Keys.Order(StringComparer.Ordinal)];
}
