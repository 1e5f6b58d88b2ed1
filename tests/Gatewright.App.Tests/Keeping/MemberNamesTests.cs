using System.Net;
using Gatewright.App.Boat;
using Gatewright.App.Device;
using Gatewright.App.Frame;
using Gatewright.App.Keeping.People;
using Gatewright.App.Tests.World;
using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Members;
using Microsoft.Extensions.DependencyInjection;

namespace Gatewright.App.Tests.Keeping;

/// <summary>Who recorded something is told by name where the server has told it, and by no name once they have left.</summary>
public class MemberNamesTests
{
    private string _server = """[{"member":"m-ada","name":"Ada","role":"helper"},{"member":"m-bea","name":"Bea Alder","role":"keeper"}]""";
    private string _links = """[{"invitation":"l-eight","role":"crew","label":"First eight","expires":"2030-01-01T00:00:00Z"}]""";
    private HttpStatusCode _status = HttpStatusCode.OK;
    private HttpStatusCode _linksStatus = HttpStatusCode.OK;
    private bool _isReached = true;

    [Fact]
    public async Task A_name_is_there_once_it_was_heard_and_is_drawn_at_once()
    {
        await using ClubOfTwo club = await StartAsync();
        int drawn = 0;
        club.InHand.Changed += () => drawn++;
        Assert.Equal(Text(club, "Member"), Who(club));

        await Names(club).AskAsync();

        Assert.Equal("Bea Alder", Who(club));
        Assert.Equal(1, drawn);
    }

    [Fact]
    public async Task What_one_recorded_oneself_is_ones_own()
    {
        await using ClubOfTwo club = await StartAsync();
        await Names(club).AskAsync();
        Guid own = (await club.InHand.RecordAsync(new StepDone("j", 1)))[0];

        Assert.Equal(Text(club, "You"), Words(club).Who(club.InHand.Club.Find(own)!.Entry));
    }

    [Fact]
    public async Task Whoever_has_left_has_no_name_here_any_more()
    {
        await using ClubOfTwo club = await StartAsync();
        await Names(club).AskAsync();
        _server = """[{"member":"m-bea","name":"former member","role":"former"}]""";

        await Names(club).AskAsync();

        Assert.Equal(Text(club, "FormerMember"), Who(club));
        Assert.DoesNotContain(club.Device.Settings.Values, v => v.Contains("Bea", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Where_the_server_does_not_say_the_name_heard_last_stays()
    {
        await using ClubOfTwo club = await StartAsync();
        await Names(club).AskAsync();
        _status = HttpStatusCode.Forbidden;

        await Names(club).AskAsync();

        Assert.Equal("Bea Alder", Who(club));
    }

    [Fact]
    public async Task The_names_go_with_the_club_and_stand_in_no_entry()
    {
        await using ClubOfTwo club = await StartAsync();
        await Names(club).AskAsync();
        Assert.Contains(club.Device.Settings.Values, v => v.Contains("Bea", StringComparison.Ordinal));
        Assert.DoesNotContain(club.InHand.Club.All(), r => System.Text.Encoding.UTF8.GetString(r.Entry.Body.Span).Contains("Bea", StringComparison.Ordinal));

        await club.Page.Services.GetRequiredService<ThisDevice>().LetGoAsync("c");

        Assert.DoesNotContain(club.Device.Settings.Values, v => v.Contains("Bea", StringComparison.Ordinal));
        Assert.DoesNotContain(club.Device.Settings.Keys, k => k.EndsWith("/c", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_keeper_sees_what_a_crew_told_under_the_name_of_its_link_without_a_network_too()
    {
        await using ClubOfTwo club = await StartAsync("keeper");
        await club.RecordElsewhereAsAsync("l-eight", new Reported("teal", ReportKind.Knock, 1, Side.Port));
        Assert.Equal(Text(club, "Member"), Teller(club));

        await Names(club).AskAsync();
        Assert.Equal("First eight", Teller(club));

        _isReached = false;
        await Names(club).AskAsync();
        Assert.Equal(("First eight", "Bea Alder"), (Teller(club), Who(club)));
    }

    [Fact]
    public async Task A_link_that_the_server_lists_no_more_has_no_name_here_any_more()
    {
        await using ClubOfTwo club = await StartAsync("keeper");
        await Names(club).AskAsync();
        _links = "[]";

        await Names(club).AskAsync();

        Assert.DoesNotContain(club.Device.Settings.Values, v => v.Contains("First eight", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("helper", HttpStatusCode.OK)]
    [InlineData("keeper", HttpStatusCode.Forbidden)]
    public async Task Whoever_may_not_list_the_links_hears_the_members_names(string role, HttpStatusCode links)
    {
        _linksStatus = links;
        await using ClubOfTwo club = await StartAsync(role);
        await club.RecordElsewhereAsAsync("l-eight", new Reported("teal", ReportKind.Knock, 1, Side.Port));

        await Names(club).AskAsync();

        Assert.Equal((Text(club, "Member"), "Bea Alder"), (Teller(club), Who(club)));
    }

    /// <summary>What a link is called, keepers alone hear: that a crew told it, everybody reads, before any name was heard and after.</summary>
    [Theory]
    [InlineData("helper", "CrewByLink")]
    [InlineData("coach", "CrewByLink")]
    [InlineData("keeper", "First eight")]
    public async Task What_a_crew_told_over_its_link_is_told_as_a_crew_s(string role, string afterwards)
    {
        await using ClubOfTwo club = await StartAsync(role);
        Entry told = OverTheLink(club.InHand.Club.All().First().Entry);
        Assert.Equal(Text(club, "CrewByLink"), Words(club).Who(told));

        await Names(club).AskAsync();

        Assert.Equal(role == "keeper" ? afterwards : Text(club, afterwards), Words(club).Who(told));
        Assert.Equal(role == "keeper", club.Device.Settings.Values.Any(v => v.Contains("First eight", StringComparison.Ordinal)));
    }

    private static Entry OverTheLink(Entry like) => new()
    {
        Id = Guid.CreateVersion7(),
        Club = like.Club,
        Member = "l-eight",
        Device = CrewTold.Device,
        Time = like.Time,
        Kind = like.Kind,
        Version = like.Version,
        Body = like.Body,
    };

    private async Task<ClubOfTwo> StartAsync(string role = "helper")
    {
        ClubOfTwo club = await ClubOfTwo.StartAsync(role, request => _isReached
            ? request.RequestUri!.AbsolutePath switch
            {
                "/api/clubs/c/members" => Answer(_status, _server),
                "/api/clubs/c/invitations" when role == "keeper" => Answer(_linksStatus, _links),
                _ => throw new InvalidOperationException($"{request.RequestUri} is not for a {role}."),
            }
            : throw new HttpRequestException("no network"));
        await club.RecordElsewhereAsync(new StepDone("j", 0));
        return club;
    }

    private static HttpResponseMessage Answer(HttpStatusCode status, string text) =>
        new(status) { Content = new StringContent(text, null, "application/json") };

    private static string Teller(ClubOfTwo club) => Words(club).Who(club.InHand.Club.All().First(r => r.Fact is Reported).Entry);

    private static MemberNames Names(ClubOfTwo club) => club.Page.Services.GetRequiredService<MemberNames>();

    private static RecordWords Words(ClubOfTwo club) => club.Page.Services.GetRequiredService<RecordWords>();

    private static string Who(ClubOfTwo club) => Words(club).Who(club.InHand.Club.All().First(r => r.Fact is StepDone { Step: 0 }).Entry);

    private static string Text(ClubOfTwo club, string name) => club.Page.Services.GetRequiredService<Texts<BoatTexts>>()[name];
}
