using Bunit;
using Gatewright.App.Device;
using Gatewright.App.Frame;
using Gatewright.App.Keeping.People;
using Gatewright.App.Shed;
using Gatewright.App.Tests.World;
using Gatewright.Replica.Shelves;
using Gatewright.Words;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Routing;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.JSInterop;

namespace Gatewright.App.Tests.Device;

/// <summary>What goes wrong while the program begins is told, and never leaves a screen that waits for ever.</summary>
public class OpeningTests
{
    public static TheoryData<string> Faults => ["unforeseen", "damaged"];

    [Theory]
    [MemberData(nameof(Faults))]
    public async Task A_club_that_cannot_be_opened_takes_the_opening_screen_away_and_says_what_to_do(string kind)
    {
        Exception fault = kind == "damaged" ? new ShelfException(ShelfFault.Damaged, "torn") : new InvalidOperationException("Sequence contains no elements");
        var shelf = new FullShelf();
        Replica.Device before = await Replica.Device.OpenAsync(shelf, TimeProvider.System);
        await before.StartClubAsync("Heron Rowing");
        var broken = new TaskCompletionSource();
        shelf.Reading = () => broken.Task;
        await using BunitContext page = Page(shelf);
        ThisDevice device = page.Services.GetRequiredService<ThisDevice>();
        IRenderedComponent<Root> root = page.Render<Root>();
        root.WaitForAssertion(() => Assert.Equal("Heron Rowing", root.Find("h1").TextContent));

        broken.SetException(fault);
        await device.Opened;

        root.WaitForAssertion(() => Assert.Single(root.FindAll("[role=alert]")));
        Assert.NotEmpty(root.FindAll("button.main"));
        Assert.Empty(root.FindAll(".last-seen"));
        Assert.Equal(kind == "unforeseen", root.Markup.Contains("Sequence contains no elements", StringComparison.Ordinal));
    }

    [Fact]
    public async Task On_the_first_screen_links_lead_within_the_program_before_anything_looks_for_the_page_of_an_address()
    {
        await using BunitContext page = Page(new FullShelf());
        page.JSInterop.Mode = JSRuntimeMode.Strict;
        JSRuntimeInvocationHandler painted = page.JSInterop.SetupVoid("gatewright.painted");
        page.JSInterop.SetupVoid("gatewright.showShed").SetVoidResult();
        var links = new Links();
        page.Services.AddSingleton<INavigationInterception>(links);

        IRenderedComponent<Root> root = page.Render<Root>();
        Assert.Equal(1, links.Followed);
        Assert.Equal("./", root.Find("a[aria-current]").GetAttribute("href"));
        await root.InvokeAsync(() => page.Services.GetRequiredService<NavigationManager>().NavigateTo("jobs"));

        Assert.Equal("jobs", root.Find("a[aria-current]").GetAttribute("href"));
        Assert.NotEmpty(root.FindAll(".last-seen"));
        Assert.False(root.HasComponent<Router>());
        page.JSInterop.Mode = JSRuntimeMode.Loose;
        painted.SetVoidResult();
        root.WaitForAssertion(() => Assert.True(root.HasComponent<Router>()));
        Assert.Equal("jobs", root.Find("a[aria-current]").GetAttribute("href"));
    }

    [Fact]
    public async Task What_stops_the_sharing_is_told()
    {
        await using BunitContext page = Page(new FullShelf());
        page.JSInterop.SetupModule("./sharing.js").SetupVoid("listen", _ => true).SetException(new JSException("no such channel"));
        await page.Services.GetRequiredService<ThisDevice>().OpenAsync();
        Sharing sharing = page.Services.GetRequiredService<Sharing>();
        int told = 0;
        sharing.Changed += () => told++;

        await sharing.RunAsync();

        Assert.Contains("no such channel", sharing.Fault, StringComparison.Ordinal);
        Assert.True(told > 0);
    }

    private sealed class Links : INavigationInterception
    {
        public int Followed { get; private set; }

        public Task EnableNavigationInterceptionAsync()
        {
            Followed++;
            return Task.CompletedTask;
        }
    }

    private static BunitContext Page(IDeviceShelf shelf)
    {
        var page = new BunitContext();
        page.JSInterop.Mode = JSRuntimeMode.Loose;
        page.Services.AddSingleton(typeof(Texts<>));
        page.Services.AddSingleton<FocusNext>();
        page.Services.AddSingleton(TimeProvider.System);
        page.Services.AddSingleton(Wording.English);
        page.Services.AddSingleton(shelf);
        page.Services.AddSingleton<BrowserRoom>();
        page.Services.AddSingleton<ClubInHand>();
        page.Services.AddSingleton<ThisDevice>();
        page.Services.AddSingleton(new HttpClient { BaseAddress = new("http://127.0.0.1:9/") });
        page.Services.AddSingleton<Sharing>();
        page.Services.AddSingleton<ClubPeople>();
        page.Services.AddSingleton<MemberNames>();
        page.Services.AddSingleton<LastShed>();
        return page;
    }
}
