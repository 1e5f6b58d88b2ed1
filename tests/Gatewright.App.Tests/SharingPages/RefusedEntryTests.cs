using Bunit;
using Gatewright.App.SharingPages;
using Gatewright.App.Tests.World;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Replica.Copies;

namespace Gatewright.App.Tests.SharingPages;

public class RefusedEntryTests
{
    [Theory]
    [InlineData("not-allowed", "Ask a keeper")]
    [InlineData("clock-ahead", "clock")]
    [InlineData("something-new", "because it says so")]
    public async Task It_says_why_in_words(string code, string words)
    {
        await using ClubOnDevice club = await ClubOnDevice.StartAsync();
        System.Globalization.CultureInfo before = System.Globalization.CultureInfo.CurrentUICulture;
        try
        {
            System.Globalization.CultureInfo.CurrentUICulture = System.Globalization.CultureInfo.GetCultureInfo("en");
            Assert.Contains(words, Render(club, code).Markup, StringComparison.Ordinal);
        }
        finally
        {
            System.Globalization.CultureInfo.CurrentUICulture = before;
        }
    }

    [Fact]
    public async Task It_is_thrown_away_only_when_asked_twice()
    {
        await using ClubOnDevice club = await ClubOnDevice.StartAsync();
        int discarded = 0;
        IRenderedComponent<RefusedEntry> entry = Render(club, "not-allowed", () => discarded++);
        await entry.PressAsync("button", 1);
        Assert.Equal(0, discarded);

        await entry.PressAsync("[role=alert] button");
        Assert.Equal(1, discarded);
    }

    [Fact]
    public async Task Asked_whether_it_is_to_go_one_stands_at_the_answer_that_keeps_it_and_then_where_one_was()
    {
        System.Globalization.CultureInfo.CurrentUICulture = System.Globalization.CultureInfo.GetCultureInfo("en");
        await using ClubOnDevice club = await ClubOnDevice.StartAsync();
        IRenderedComponent<RefusedEntry> entry = Render(club, "not-allowed");
        await entry.PressAsync("button", 1);
        Assert.Equal(["No, keep it"], Focused(club, entry));

        await entry.PressAsync("[role=alert] button", 1);
        Assert.Equal(["Discard"], Focused(club, entry));
    }

    private static string[] Focused(ClubOnDevice club, IRenderedComponent<RefusedEntry> entry) =>
        [.. ((string[])club.Page.JSInterop.Invocations["focus"][^1].Arguments[0]!).Select(place => entry.Find(place).TextContent)];

    private static IRenderedComponent<RefusedEntry> Render(ClubOnDevice club, string code, Action? discard = null)
    {
        (string kind, int version, byte[] body) = FactKinds.Write(new Held("grebe", "knock"));
        var entry = new Entry
        {
            Id = Guid.Parse("01900000-0000-7000-8000-000000000001"),
            Club = club.InHand.Held.Club,
            Member = "m1",
            Device = "phone",
            Time = new(1, 0),
            Kind = kind,
            Version = version,
            Body = body,
        };
        var own = new OwnEntry { Place = 1, Entry = entry, State = OwnState.Refused, Code = code, Reasons = ["because it says so"] };
        return club.Page.Render<RefusedEntry>(p => p
            .Add(r => r.Club, club.InHand.Club)
            .Add(r => r.Own, own)
            .Add(r => r.OnDiscard, () => discard?.Invoke()));
    }
}
