using System.Globalization;
using Bunit;
using Gatewright.App.SharingPages;
using Gatewright.App.Tests.World;
using Gatewright.Core;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;

namespace Gatewright.App.Tests.SharingPages;

public class EntryLineTests
{
    public EntryLineTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    [Fact]
    public async Task Readings_of_one_gate_are_told_apart_by_where_and_of_what_they_were()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper");
        ReadingTaken abeam = new("l", "teal", ReadItem.Gate, 2, Side.Port, 4.0m);
        await club.InHand.RecordAsync(
            abeam with { Station = Station.Catch },
            abeam,
            abeam with { Angle = -12.5m },
            abeam with { Item = ReadItem.PinAft });

        string[] lines = [.. club.InHand.Copy.NotShared.Select(own => club.Page
            .Render<EntryLine>(p => p.Add(l => l.Club, club.InHand.Club).Add(l => l.Own, own)).Find("b").TextContent)];

        Assert.All(lines, line => Assert.StartsWith("Reading 4.0°, seat 2 port, ", line, StringComparison.Ordinal));
        Assert.EndsWith(", at the catch", lines[0], StringComparison.Ordinal);
        Assert.EndsWith(", abeam", lines[1], StringComparison.Ordinal);
        Assert.Contains("12.5°", lines[2], StringComparison.Ordinal);
        Assert.Equal(lines.Length, lines.Distinct().Count());
    }
}
