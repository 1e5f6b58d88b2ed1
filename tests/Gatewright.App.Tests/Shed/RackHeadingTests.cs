using System.Globalization;
using Bunit;
using Gatewright.App.Shed;
using Gatewright.App.Tests.World;
using Gatewright.Journal.Facts;

namespace Gatewright.App.Tests.Shed;

/// <summary>Over a rack stands in words how it lies: a sign would mean high at the bow and low to port.</summary>
public class RackHeadingTests
{
    [Theory]
    [InlineData("en", 0.2, 0.5, "bow 0.2° high, port 0.5° low")]
    [InlineData("en", -0.2, -0.5, "bow 0.2° low, port 0.5° high")]
    [InlineData("en", 0, 0.5, "bow level, port 0.5° low")]
    [InlineData("en", -0.2, 0, "bow 0.2° low, port level")]
    [InlineData("en", 0, 0, "level")]
    [InlineData("de", 0.2, -0.5, "Bug 0,2° hoch, Backbord 0,5° hoch")]
    public async Task A_rack_is_said_to_lie_high_or_low_and_not_by_a_sign(string language, decimal bowHigh, decimal portLow, string said)
    {
        CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo(language);
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        await club.RecordElsewhereAsync(
            new ThingSet(Things.Rack, "a", new Dictionary<string, string?> { ["name"] = "A" }),
            new RackLevelRead("a", bowHigh, portLow),
            new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "1x", ["rack"] = "a" }));

        var shed = club.Page.Render<ShedView>();

        shed.WaitForAssertion(() => Assert.Equal(said, shed.Find(".rack h2 small").TextContent));
    }
}
