using Bunit;
using Gatewright.App.Boat;
using Gatewright.App.Device;
using Gatewright.App.Frame;
using Gatewright.App.Keeping.People;
using Gatewright.Core;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Replica.Copies;
using Gatewright.Replica.Exchanging;
using Gatewright.Replica.Shelves;
using Gatewright.Words;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Gatewright.App.Tests.Boat;

/// <summary>A browser's page over a club with one boat, Teal, a pair.</summary>
internal sealed class BoatInHand : IAsyncDisposable
{
    public const string Key = "teal";
    private readonly BunitContext _page;

    private BoatInHand(BunitContext page, ClubInHand inHand) => (_page, InHand) = (page, inHand);

    public ClubInHand InHand { get; }

    /// <summary>A club of which the member here is the keeper; or, of one that a server keeps, something else.</summary>
    public static async Task<BoatInHand> StartAsync(string role = "keeper")
    {
        Replica.Device device = await Replica.Device.OpenAsync(new MemoryShelf(), TimeProvider.System);
        await device.JoinAsync(new SessionAnswer("ada", "Ada", [new SessionClub("c", "Heron Rowing", "m-ada", role)], "token"));
        ClubCopy copy = await device.ClubAsync("c");
        var inHand = new ClubInHand();
        inHand.Open(copy, device);
        var page = new BunitContext();

        // On a machine that does much else a check takes its time; nothing here is about how long.
        BunitContext.DefaultWaitTimeout = TimeSpan.FromSeconds(30);
        page.JSInterop.Mode = JSRuntimeMode.Loose;
        page.Services.AddSingleton(typeof(Texts<>));
        page.Services.AddSingleton<FocusNext>();
        page.Services.AddSingleton(TimeProvider.System);
        page.Services.AddSingleton(Wording.English);
        page.Services.AddSingleton<IDeviceShelf, MemoryShelf>();
        page.Services.AddSingleton<BrowserRoom>();
        page.Services.AddSingleton<ThisDevice>();
        page.Services.AddSingleton<Photos>();
        page.Services.AddSingleton<ClubPeople>();
        page.Services.AddSingleton<MemberNames>();
        page.Services.AddSingleton<RecordWords>();
        page.Services.AddSingleton<HttpClient>();
        page.Services.AddSingleton<Sharing>();
        page.Services.AddSingleton(inHand);
        return new(page, inHand);
    }

    public Task RecordAsync(params Fact[] facts) => InHand.RecordAsync(facts);

    /// <summary>Its class, and bow's gate read abeam on a day.</summary>
    public Task ReadAsync(DateOnly day, decimal value) => RecordAsync(
        new ThingSet(Things.Boat, Key, new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "2-" }),
        new BoatLaid($"l-{day}", Key, Lie.Upright, LevelBasis.Read, 0, 0, Date: day),
        new ReadingTaken($"l-{day}", Key, ReadItem.Gate, 1, Side.Starboard, value, Station.Abeam));

    public IRenderedComponent<BoatPage> Page(DateOnly? day = null)
    {
        Go($"boat/{Key}", day);
        IRenderedComponent<BoatPage> page = _page.Render<BoatPage>(p => p.Add(b => b.Key, Key));
        page.WaitForElement("h1 small, .sheet");
        return page;
    }

    public IRenderedComponent<GatePage> Gate(DateOnly? day = null)
    {
        Go($"boat/{Key}/gate/1/starboard", day);
        IRenderedComponent<GatePage> page = _page.Render<GatePage>(p => p.Add(b => b.Key, Key).Add(b => b.Seat, 1).Add(b => b.SideWord, "starboard"));
        page.WaitForElement("#gate-taken");
        return page;
    }

    /// <summary>Another page about the boat, as it is at once.</summary>
    public IRenderedComponent<TPage> Seen<TPage>()
        where TPage : BoatSeenPage => _page.Render<TPage>(p => p.Add(b => b.Key, Key));

    private void Go(string place, DateOnly? day) => _page.Services.GetRequiredService<NavigationManager>()
        .NavigateTo(day is { } d ? FormattableString.Invariant($"{place}?day={d:yyyy-MM-dd}") : place);

    public async ValueTask DisposeAsync()
    {
        InHand.Close();
        await _page.DisposeAsync();
    }
}
