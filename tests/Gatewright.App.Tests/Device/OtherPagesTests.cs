using System.Globalization;
using Bunit;
using Gatewright.App.Device;
using Gatewright.App.Keeping.Settings;
using Gatewright.App.Tests.World;
using Gatewright.Replica.Shelves;
using Microsoft.Extensions.DependencyInjection;

namespace Gatewright.App.Tests.Device;

/// <summary>Two pages of one browser know of the same clubs.</summary>
public class OtherPagesTests
{
    public OtherPagesTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    [Fact]
    public async Task A_club_that_another_page_began_is_among_the_clubs_here()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        IRenderedComponent<ClubsHere> page = club.Page.Render<ClubsHere>();
        await (await OtherAsync(club)).StartClubAsync("Weir Side");

        await page.InvokeAsync(() => Sharing(club).WrittenElsewhere(null));

        page.WaitForAssertion(() => Assert.Contains("Weir Side", page.FindAll("li.club")[1].TextContent, StringComparison.Ordinal));
        Assert.Equal("c", club.InHand.Held.Club);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task One_that_another_page_let_go_of_is_in_hand_no_more(bool hasOther)
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        Replica.Device other = await OtherAsync(club);
        string? next = hasOther ? (await other.StartClubAsync("Weir Side")).Held.Club : null;
        await other.LetGoAsync("c");

        await Sharing(club).WrittenElsewhere(null);

        Assert.Equal(next, club.InHand.IsOpen ? club.InHand.Held.Club : null);
    }

    [Fact]
    public async Task Other_pages_are_told_which_clubs_there_are()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        BunitJSModuleInterop module = club.Page.JSInterop.SetupModule("./sharing.js");
        module.Mode = JSRuntimeMode.Loose;
        _ = Sharing(club).RunAsync();

        await club.Device.LetGoAsync("c");

        for (int i = 0; i < 300 && !IsTold(module); i++)
        {
            await Task.Delay(100, Xunit.TestContext.Current.CancellationToken);
        }

        Assert.True(IsTold(module));
    }

    private static bool IsTold(BunitJSModuleInterop module) => module.Invocations.Any(i => i.Identifier == "tellOthers" && i.Arguments[0] is null);

    private static Sharing Sharing(ClubOfTwo club) => club.Page.Services.GetRequiredService<Sharing>();

    private static Task<Replica.Device> OtherAsync(ClubOfTwo club) =>
        Replica.Device.OpenAsync(club.Page.Services.GetRequiredService<IDeviceShelf>(), TimeProvider.System);
}
