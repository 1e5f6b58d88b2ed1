using System.Globalization;
using Gatewright.App.Shed;
using Gatewright.App.Tests.World;
using Gatewright.Journal.Facts;
using Microsoft.Extensions.DependencyInjection;

namespace Gatewright.App.Tests.Shed;

/// <summary>The shed as last seen is old once something was recorded, and only then.</summary>
public class LastShedTests
{
    public LastShedTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    [Fact]
    public async Task What_is_recorded_makes_it_old_and_what_the_server_says_of_it_does_not()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        _ = club.Page.Services.GetRequiredService<LastShed>();
        int changes = 0;
        club.InHand.Changed += () => changes++;
        await club.InHand.RecordAsync(new Held("teal", "knock"));
        Assert.Equal((1, 1), (changes, Outdated(club)));

        // As after an acknowledgement: the same entries, and something else told beside them.
        await club.InHand.Copy.LookAgainAsync();
        Assert.Equal((2, 1), (changes, Outdated(club)));

        await club.InHand.RecordAsync(new Released("teal", "looked at"));
        Assert.Equal(2, Outdated(club));
    }

    private static int Outdated(ClubOfTwo club) => club.Page.JSInterop.Invocations.Count(i => i.Identifier == "gatewright.outdateShed");
}
