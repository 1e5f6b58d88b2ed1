using System.Text;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Members;
using Gatewright.Server.Members;
using Gatewright.Server.Syncing;
using Gatewright.Server.Tests.Hosting;
using Gatewright.Store;
using Gatewright.Store.Tests;

namespace Gatewright.Server.Tests.Syncing;

/// <summary>What is sent comes back as it was, once, however often it is sent.</summary>
public sealed class PushTests(Stores stores)
{
    private const string Club = "upper-lock";
    private const string Member = "m-keeper";

    [Theory, EveryEngine]
    public async Task What_was_sent_comes_back_to_the_byte(Engine engine)
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(engine));
        Visitor keeper = await server.MemberAsync(Club, Member, Role.Keeper);
        Entry[] sent =
        [
            Written.Hold(Member, Club, "geknickt: Größe 3 – \"schräg\"\n\tzweite Zeile 漕艇 🚣"),
            OfAnotherProgram("""{ "a" : 1.0, "A":1e3,"b":[ null ,true], "ü":"\u00fc\/" }"""),
            OfAnotherProgram("{}"),
            Written.Boat(Member, Club, "boat-1", "Heron"),
        ];

        PushAnswer answer = await keeper.TakenAsync(Club, sent);

        Assert.Empty(answer.Refused);
        Assert.Equal([1, 2, 3, 4], answer.Taken.Select(t => t.Number));
        Assert.Equal(sent.Select((e, i) => Line.Of(i + 1, e)), await keeper.PullAsync(Club));
    }

    [Theory, EveryEngine]
    public async Task Sent_again_in_any_way_it_keeps_its_numbers(Engine engine)
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(engine));
        Visitor keeper = await server.MemberAsync(Club, Member, Role.Keeper);
        Entry[] sent = Many(30);
        Dictionary<Guid, long> numbers = (await keeper.TakenAsync(Club, sent)).Taken.ToDictionary(t => t.Id, t => t.Number);
        string[] journal = await keeper.PullAsync(Club);
        Entry[][] ways = [sent, sent[7..19], [.. sent.Reverse()], [.. sent, .. sent], [.. sent.Chunk(2).SelectMany(c => c.Concat(c))]];

        foreach (Entry[] way in ways)
        {
            PushAnswer again = await keeper.TakenAsync(Club, way);
            Assert.Empty(again.Refused);
            Assert.Equal(way.Select(e => e.Id).Distinct(), again.Taken.Select(t => t.Id));
            Assert.All(again.Taken, t => Assert.Equal(numbers[t.Id], t.Number));
            Assert.Equal(30, again.Last);
        }

        Assert.Equal(journal, await keeper.PullAsync(Club));
    }

    [Theory, EveryEngine]
    public async Task Sent_by_several_at_once_each_hears_the_same_numbers(Engine engine)
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(engine));
        Visitor keeper = await server.MemberAsync(Club, Member, Role.Keeper);
        Entry[] sent = Many(40);

        PushAnswer[] answers = await Task.WhenAll(Enumerable.Range(0, 8).Select(i =>
            keeper.TakenAsync(Club, i % 2 == 0 ? sent.Skip(i).Concat(sent.Take(i)) : sent.Reverse().Skip(i))));

        Line[] journal = [.. (await keeper.PullAsync(Club)).Select(Line.Read)];
        Assert.Equal(40, journal.Length);
        var numbers = journal.ToDictionary(l => l.Entry.Id, l => l.Number);
        Assert.All(answers, a => Assert.Empty(a.Refused));
        Assert.All(answers.SelectMany(a => a.Taken), t => Assert.Equal(numbers[t.Id], t.Number));
    }

    [Fact]
    public async Task What_the_journal_has_is_not_judged_by_a_role_that_came_later()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor keeper = await server.MemberAsync(Club, Member, Role.Keeper);
        await server.MemberAsync(Club, "m-other", Role.Keeper);
        Entry boat = Written.By(Member, Club, new ThingSet(Things.Standard, "club", new Dictionary<string, string?> { ["name"] = "ours" }));
        PushAnswer first = await keeper.TakenAsync(Club, boat);
        await keeper.SendAsync(HttpMethod.Put, $"/api/clubs/{Club}/members/{Member}/role", new RoleRequest("coach"));

        PushAnswer again = await keeper.TakenAsync(Club, boat);

        Assert.Equal(first.Taken, again.Taken);
        Assert.Empty(again.Refused);
    }

    [Fact]
    public async Task Lines_may_end_as_any_system_ends_them()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor keeper = await server.MemberAsync(Club, Member, Role.Keeper);
        Entry[] sent = Many(3);
        byte[] lines = [.. EntryJson.ToLine(sent[0]), .. "\r\n\r\n\n"u8, .. EntryJson.ToLine(sent[1]), .. "\n"u8, .. EntryJson.ToLine(sent[2])];

        Assert.True((await keeper.PushBytesAsync(Club, lines)).IsSuccessStatusCode);

        Assert.Equal(sent.Select((e, i) => Line.Of(i + 1, e)), await keeper.PullAsync(Club));
    }

    private static Entry[] Many(int count) => [.. Enumerable.Range(0, count).Select(i => Written.Hold(Member, Club, $"knock {i}"))];

    private static Entry OfAnotherProgram(string body)
    {
        Entry like = Written.Hold(Member, Club);
        return new()
        {
            Id = like.Id, Club = Club, Member = Member, Device = like.Device, Time = like.Time, Kind = "of-tomorrow", Version = 3,
            Body = Encoding.UTF8.GetBytes(body),
        };
    }
}
