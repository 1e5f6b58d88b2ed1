using System.Net;
using AngleSharp.Html.Dom;
using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Members;
using Gatewright.Journal.Replay;
using Gatewright.Server.Members;
using Gatewright.Server.Tests.Hosting;
using Gatewright.Store;
using Gatewright.Store.Tests;
using Microsoft.Extensions.DependencyInjection;

namespace Gatewright.Server.Tests.Reporting;

/// <summary>Crew tell of what happened to the boats of their link, and of nothing else.</summary>
public sealed class CrewReportTests(Stores stores)
{
    private const string Club = "upper-lock";
    private const string Theirs = $"/club/{Club}/report?key=boat-1";
    private const string Another = $"/club/{Club}/report?key=boat-2";

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Fact]
    public async Task What_crew_tell_stands_on_the_boat_in_the_name_of_their_link()
    {
        await using RunningServer server = await StartAsync();
        (Visitor crew, string link) = await CrewAsync(server);

        IHtmlDocument told = await FollowedAsync(crew, await Page.SendFormAsync(
            crew, Theirs, "report", ("Form.What", "CrabEarly"), ("Form.Where", "3 starboard"), ("Form.Text", "dived twice")));

        Assert.NotNull(told.QuerySelector("[role=status]"));
        Recorded entry = (await ToldAsync(server))[^1];
        Assert.Equal(new Reported("boat-1", ReportKind.CrabEarly, 3, Side.Starboard, "dived twice"), entry.Fact);
        Assert.Equal((link, CrewTold.Device), (entry.Entry.Member, entry.Entry.Device));
    }

    /// <summary>A coach tells on the same page and comes over no link.</summary>
    [Fact]
    public async Task What_a_member_tells_there_is_no_crew_s()
    {
        await using RunningServer server = await StartAsync();
        Visitor coach = await server.MemberAsync(Club, "m-coach", Role.Coach);

        await FollowedAsync(coach, await Page.SendFormAsync(
            coach, Theirs, "report", ("Form.What", "CrabEarly"), ("Form.Where", "3 starboard"), ("Form.Text", "")));

        Recorded entry = (await ToldAsync(server))[^1];
        Assert.Equal("m-coach", entry.Entry.Member);
        Assert.False(CrewTold.Is(entry.Entry));
    }

    [Fact]
    public async Task Damage_is_a_note_and_a_boat_down_to_one_side_has_a_side()
    {
        await using RunningServer server = await StartAsync();
        (Visitor crew, _) = await CrewAsync(server);

        await FollowedAsync(crew, await Page.SendFormAsync(crew, Theirs, "report", ("Form.What", "Damage"), ("Form.Where", ""), ("Form.Text", "bow ball gone")));
        await FollowedAsync(crew, await Page.SendFormAsync(crew, Theirs, "report", ("Form.What", "DownToOneSide"), ("Form.Where", "port"), ("Form.Text", "")));

        IReadOnlyList<Recorded> told = await ToldAsync(server);
        Assert.Equal(
            [new Noted(Things.Boat, "boat-1", "Damage: bow ball gone", new(Text: "bow ball gone")), new Reported("boat-1", ReportKind.DownToOneSide, null, Side.Port)],
            told.TakeLast(2).Select(r => r.Fact));
    }

    [Theory]
    [InlineData("Bribe", "3 starboard", "")]
    [InlineData("", "3 starboard", "")]
    [InlineData("Knock", "9 port", "")]
    [InlineData("Knock", "3 port", "")]
    [InlineData("Knock", "<script>", "")]
    [InlineData("6", "3 starboard", "")]
    [InlineData("DownToOneSide", "", "")]
    [InlineData("Knock", "3 starboard", "\u0007\u001b[2J")]
    public async Task What_cannot_be_is_not_recorded(string what, string where, string text)
    {
        await using RunningServer server = await StartAsync();
        (Visitor crew, _) = await CrewAsync(server);
        int before = (await ToldAsync(server)).Count;

        IHtmlDocument again = await Page.ReadAsync(await Page.SendFormAsync(
            crew, Theirs, "report", ("Form.What", what), ("Form.Where", where), ("Form.Text", text)));

        Assert.NotNull(again.QuerySelector("[role=alert]"));
        Assert.Empty(Page.Live(again));
        Assert.Equal(before, (await ToldAsync(server)).Count);
    }

    [Fact]
    public async Task A_text_of_more_than_500_characters_is_not_recorded_and_a_larger_form_not_even_read()
    {
        await using RunningServer server = await StartAsync();
        (Visitor crew, _) = await CrewAsync(server);
        int before = (await ToldAsync(server)).Count;

        HttpResponseMessage longer = await SendAsync(crew, new string('x', 501));
        HttpResponseMessage large = await SendAsync(crew, new string('x', 64 * 1024));

        Assert.NotNull((await Page.ReadAsync(longer)).QuerySelector("[role=alert]"));
        Assert.Contains(large.StatusCode, new[] { HttpStatusCode.RequestEntityTooLarge, HttpStatusCode.BadRequest });
        Assert.Equal(before, (await ToldAsync(server)).Count);
    }

    [Fact]
    public async Task Of_a_boat_that_the_link_does_not_name_nothing_is_shown_or_taken()
    {
        await using RunningServer server = await StartAsync();
        (Visitor crew, _) = await CrewAsync(server);
        int before = (await ToldAsync(server)).Count;

        IHtmlDocument page = await Page.OpenAsync(crew, Another);
        Assert.DoesNotContain("Bittern", page.DocumentElement.TextContent, StringComparison.Ordinal);
        HttpResponseMessage forged = await ForgeAsync(crew, Another);

        Assert.False(forged.IsSuccessStatusCode && (await Page.ReadAsync(forged)).QuerySelector("main [role=status]") is not null);
        Assert.Equal(before, (await ToldAsync(server)).Count);
        Assert.Equal(0, await CountAsync(server, "weir-side"));
    }

    [Fact]
    public async Task In_another_club_the_link_is_nothing()
    {
        await using RunningServer server = await StartAsync();
        (Visitor crew, _) = await CrewAsync(server);

        Assert.Equal(HttpStatusCode.NotFound, (await crew.GetAsync("/club/weir-side/report?key=boat-1")).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await ForgeAsync(crew, "/club/weir-side/report?key=boat-1")).StatusCode);
        Assert.Equal(0, await CountAsync(server, "weir-side"));
    }

    [Fact]
    public async Task A_link_that_was_revoked_while_the_form_was_open_tells_nothing()
    {
        await using RunningServer server = await StartAsync();
        (Visitor crew, string link) = await CrewAsync(server);
        IEnumerable<KeyValuePair<string, string>> hidden = await HiddenAsync(crew);
        int before = (await ToldAsync(server)).Count;
        await using (AsyncServiceScope scope = server.Services.CreateAsyncScope())
        {
            await scope.ServiceProvider.GetRequiredService<Invitations>().EndAsync(Club, link, Cancellation);
        }

        HttpResponseMessage late = await crew.Client.PostAsync(
            Theirs, new FormUrlEncodedContent([.. hidden, KeyValuePair.Create("Form.What", "Knock"), KeyValuePair.Create("Form.Where", "3 starboard")]), Cancellation);

        Assert.Equal(HttpStatusCode.NotFound, late.StatusCode);
        Assert.Equal(before, (await ToldAsync(server)).Count);
    }

    [Fact]
    public async Task Without_its_token_the_form_is_refused()
    {
        await using RunningServer server = await StartAsync();
        (Visitor crew, _) = await CrewAsync(server);
        int before = (await ToldAsync(server)).Count;

        HttpResponseMessage bare = await crew.Client.PostAsync(
            Theirs, new FormUrlEncodedContent([KeyValuePair.Create("_handler", "report"), KeyValuePair.Create("Form.What", "Knock")]), Cancellation);

        Assert.Equal(HttpStatusCode.BadRequest, bare.StatusCode);
        Assert.Equal(before, (await ToldAsync(server)).Count);
    }

    /// <summary>Scripts stay text where it is told, on the boat's page and when a form comes back.</summary>
    [Fact]
    public async Task What_crew_write_stays_text()
    {
        const string Script = "</textarea><script>alert(1)</script><img src=x onerror=alert(1)>";
        await using RunningServer server = await StartAsync();
        (Visitor crew, _) = await CrewAsync(server);

        IHtmlDocument told = await FollowedAsync(crew, await SendAsync(crew, Script));
        Assert.Empty(Page.Live(told));
        Assert.Equal(Script, ((Reported)(await ToldAsync(server))[^1].Fact).Text);
        IHtmlDocument again = await Page.ReadAsync(await Page.SendFormAsync(
            crew, Theirs, "report", ("Form.What", "none"), ("Form.Where", "3 starboard"), ("Form.Text", Script)));
        Assert.Empty(Page.Live(again));
        Assert.Equal(Script, again.QuerySelector("#text")!.TextContent);
    }

    [Fact]
    public async Task One_link_tells_thirty_things_a_minute_at_most()
    {
        await using RunningServer server = await StartAsync();
        (Visitor crew, _) = await CrewAsync(server);

        var heard = new List<HttpStatusCode>();
        for (int i = 0; i < 31; i++)
        {
            heard.Add((await crew.GetAsync(Theirs)).StatusCode);
        }

        Assert.Equal(HttpStatusCode.OK, heard[29]);
        Assert.Equal(HttpStatusCode.TooManyRequests, heard[30]);
    }

    [Fact]
    public void Crew_tell_of_boats_and_record_nothing_else()
    {
        Assert.True(RecordingRules.May(Role.Crew, new Reported("boat-1", ReportKind.Knock)));
        Assert.True(RecordingRules.May(Role.Crew, new Noted(Things.Boat, "boat-1", "cracked")));
        Assert.False(RecordingRules.May(Role.Crew, new Noted(Things.Rack, "a", "bent")));
        Assert.False(RecordingRules.May(Role.Crew, new Held("boat-1", "cracked")));
        Assert.False(RecordingRules.May(Role.Crew, new Released("boat-1", "fine")));
        Assert.False(RecordingRules.May(Role.Crew, new Retracted(Guid.Empty)));
        Assert.False(Role.Crew.May(ClubRight.Record));
    }

    private async Task<RunningServer> StartAsync()
    {
        RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor keeper = await server.MemberAsync(Club, "m-keeper", Role.Keeper);
        await keeper.TakenAsync(Club, Written.Boat("m-keeper", Club, "boat-1", "Heron"), Written.Boat("m-keeper", Club, "boat-2", "Bittern"));
        return server;
    }

    private static async Task<(Visitor Crew, string Link)> CrewAsync(RunningServer server)
    {
        (string link, string secret) = await server.InviteAsync(Club, Role.Crew, ["boat-1"]);
        Visitor crew = server.Visitor();
        Assert.Equal(HttpStatusCode.NoContent, (await crew.SendAsync(HttpMethod.Post, "/api/crew", new { secret })).StatusCode);
        return (crew, link);
    }

    /// <summary>The page that the answer leads to: it is asked for by itself, so that a reload records nothing again.</summary>
    private static Task<IHtmlDocument> FollowedAsync(Visitor crew, HttpResponseMessage answer)
    {
        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        return Page.OpenAsync(crew, new Uri(new Uri("http://club"), answer.Headers.Location!).PathAndQuery);
    }

    private static Task<HttpResponseMessage> SendAsync(Visitor crew, string text) => Page.SendFormAsync(
        crew, Theirs, "report", ("Form.What", "Knock"), ("Form.Where", "3 starboard"), ("Form.Text", text));

    /// <summary>The fields that stand hidden in the form of their own boat.</summary>
    private static async Task<IEnumerable<KeyValuePair<string, string>>> HiddenAsync(Visitor crew) =>
        [.. (await Page.OpenAsync(crew, Theirs)).QuerySelectorAll("form:has(input[value=report]) input[type=hidden]")
            .Select(i => KeyValuePair.Create(i.GetAttribute("name")!, i.GetAttribute("value") ?? string.Empty))];

    /// <summary>Sends the form of their own boat elsewhere.</summary>
    private static async Task<HttpResponseMessage> ForgeAsync(Visitor crew, string path) => await crew.Client.PostAsync(
        path,
        new FormUrlEncodedContent([.. await HiddenAsync(crew), KeyValuePair.Create("Form.What", "Knock"), KeyValuePair.Create("Form.Where", "3 starboard")]),
        Cancellation);

    private static async Task<IReadOnlyList<Recorded>> ToldAsync(RunningServer server) =>
        [.. (await server.Services.GetRequiredService<JournalStore>().ReadAsync(Club, 0, 1000, Cancellation)).Select(n => Recorded.Of(n.Entry))];

    private static Task<long> CountAsync(RunningServer server, string club) =>
        server.Services.GetRequiredService<JournalStore>().LastAsync(club, Cancellation);
}
