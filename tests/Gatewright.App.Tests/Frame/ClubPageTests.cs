using System.Globalization;
using Bunit;
using Gatewright.App.Frame;
using Gatewright.App.Tests.World;
using Gatewright.Journal.Facts;

namespace Gatewright.App.Tests.Frame;

/// <summary>What a page cannot read as the club changes is told as it is when the page opens.</summary>
public sealed class ClubPageTests
{
    public ClubPageTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    [Fact]
    public async Task What_fails_while_a_page_follows_the_club_is_not_lost()
    {
        await using ClubOnDevice club = await ClubOnDevice.StartAsync();
        IRenderedComponent<SomePage> page = club.Page.Render<SomePage>();
        var torn = new InvalidOperationException("torn");
        page.Instance.Read = Task.FromException(torn);

        await club.InHand.RecordAsync(new RoundStarted("r"));

        Assert.Same(torn, await club.Page.Renderer.UnhandledException.WaitAsync(TimeSpan.FromSeconds(30), Xunit.TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task A_club_that_is_put_down_meanwhile_is_nobodys_fault()
    {
        await using ClubOnDevice club = await ClubOnDevice.StartAsync();
        IRenderedComponent<SomePage> page = club.Page.Render<SomePage>();
        var read = new TaskCompletionSource();
        page.Instance.Read = read.Task;
        await page.InvokeAsync(club.InHand.NamesHeard);

        await page.InvokeAsync(club.InHand.PutDown);
        await page.InvokeAsync(() => read.SetException(new InvalidOperationException("No club is open.")));
        await page.InvokeAsync(() => { });

        Assert.False(club.Page.Renderer.UnhandledException.IsCompleted);
    }

    private sealed class SomePage : ClubPage
    {
        public Task Read { get; set; } = Task.CompletedTask;

        protected override Task ReadAsync() => Read;
    }
}
