using System.Globalization;
using Bunit;
using Gatewright.App.Round;
using Gatewright.App.Tests.World;
using Gatewright.Journal.Facts;

namespace Gatewright.App.Tests.Round;

public sealed class RoundPageTests
{
    public RoundPageTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    [Fact]
    public async Task Two_taps_end_a_round_once()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.InHand.RecordAsync(new RoundStarted("r"));
        IRenderedComponent<RoundPage> page = club.Page.Render<RoundPage>(p => p.Add(r => r.Round, "r"));
        var disk = new TaskCompletionSource();
        club.Shelf.Writing = () => disk.Task;

        Task first = page.PressAsync("#end-round");
        Task second = page.PressAsync("#end-round");
        await page.InvokeAsync(() => { });
        disk.SetResult();
        await Task.WhenAll(first, second);

        Assert.Single(club.InHand.Club.All(), r => r.Fact is RoundEnded);
        page.WaitForState(() => page.FindAll("#end-round").Count == 0);
        Assert.Equal(["#to-shed"], (string[])Assert.Single(club.Page.JSInterop.Invocations["focus"]).Arguments[0]!);
    }
}
