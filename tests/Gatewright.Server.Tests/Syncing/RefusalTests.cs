using System.Globalization;
using System.Net;
using System.Net.Http.Json;
using System.Text;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Members;
using Gatewright.Server.Syncing;
using Gatewright.Server.Tests.Hosting;
using Gatewright.Store;
using Gatewright.Store.Tests;

namespace Gatewright.Server.Tests.Syncing;

/// <summary>What is not taken, and why: each line on its own, the good ones beside it taken.</summary>
public sealed class RefusalTests(Stores stores)
{
    private const string Club = "upper-lock";
    private const string Coach = "m-coach";
    private const string Keeper = "m-keeper";

    [Theory, EveryEngine]
    public async Task Good_lines_are_taken_and_each_bad_one_is_told(Engine engine)
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(engine));
        Visitor coach = await server.MemberAsync(Club, Coach, Role.Coach);
        Visitor keeper = await server.MemberAsync(Club, Keeper, Role.Keeper);
        Entry theirs = Written.Hold(Keeper, Club);
        await keeper.TakenAsync(Club, theirs);
        Entry known = Written.Hold(Coach, Club, "as it was");
        await coach.TakenAsync(Club, known);
        Entry own = Written.Hold(Coach, Club, "own");
        (byte[] Line, Guid? Id, string? Code, string? Says)[] lines =
        [
            (EntryJson.ToLine(own), own.Id, null, null),
            ("{\"id\":"u8.ToArray(), null, RefusalCode.Malformed, "JSON"),
            (Encoding.UTF8.GetBytes("\"not an object\""), null, RefusalCode.Malformed, "JSON"),
            Bad(Written.Hold(Coach, Club, "a bell: \u0007"), RefusalCode.Malformed, "reason"),
            Bad(Written.Hold(Coach, "weir-side"), RefusalCode.OtherClub, "weir-side"),
            Bad(Written.Hold(Keeper, Club), RefusalCode.OtherMember, Keeper),
            Bad(Written.Boat(Coach, Club, "boat-2", "Teal"), RefusalCode.NotAllowed, "coach"),
            Bad(Written.By(Coach, Club, new Retracted(theirs.Id)), RefusalCode.NotAllowed, "keeper"),
            Bad(Written.By(Coach, Club, new Retracted(Guid.CreateVersion7())), RefusalCode.NotYet, "send that first"),
            Bad(Written.By(Coach, Club, new Held("boat-1", "later"), DateTimeOffset.UtcNow.AddMinutes(7)), RefusalCode.ClockAhead, "clock"),
            Bad(Counting(int.MaxValue), RefusalCode.Malformed, "\"n\""),
            Bad(Of("crew-link"), RefusalCode.Malformed, "\"device\""),
            Bad(Of("server"), RefusalCode.Malformed, "\"device\""),
            Bad(Other(known), RefusalCode.Conflict, $"{known.Id}"),
            Bad(Other(own), RefusalCode.Conflict, $"{own.Id}"),
            Good(Written.By(Coach, Club, new Retracted(own.Id, "wrong boat"))),
            Good(Written.By(Coach, Club, new Retracted(known.Id))),
            Good(Counting(Admission.HighestCounter)),
        ];

        HttpResponseMessage answer = await coach.PushBytesAsync(Club, [.. lines.SelectMany(l => (byte[])[.. l.Line, (byte)'\n'])]);
        PushAnswer told = (await answer.Content.ReadFromJsonAsync<PushAnswer>(TestContext.Current.CancellationToken))!;

        Assert.Equal(
            lines.Select((l, i) => (Line: i + 1, l.Id, l.Code)).Where(l => l.Code is not null),
            told.Refused.Select(r => (r.Line, r.Id, (string?)r.Code)));
        Assert.All(told.Refused, r => Assert.Contains(lines[r.Line - 1].Says!, string.Join(' ', r.Reasons), StringComparison.Ordinal));
        Assert.Equal(lines.Where(l => l.Code is null).Select(l => l.Id), told.Taken.Select(t => (Guid?)t.Id));
        Assert.Equal(6, (await coach.PullAsync(Club)).Length);
    }

    /// <summary>The codes are a promise to programs: a new one gets its row above.</summary>
    [Fact]
    public void Every_code_has_its_row() => Assert.Equal(
        ["clock-ahead", "conflict", "malformed", "not-allowed", "not-yet", "other-club", "other-member"],
        typeof(RefusalCode).GetFields().Select(f => (string)f.GetRawConstantValue()!).Order(StringComparer.Ordinal));

    [Fact]
    public async Task A_keeper_retracts_what_others_recorded()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor coach = await server.MemberAsync(Club, Coach, Role.Coach);
        Visitor keeper = await server.MemberAsync(Club, Keeper, Role.Keeper);
        Entry hold = Written.Hold(Coach, Club);
        await coach.TakenAsync(Club, hold);

        Assert.Empty((await keeper.TakenAsync(Club, Written.By(Keeper, Club, new Retracted(hold.Id)))).Refused);
    }

    [Fact]
    public async Task A_clock_that_is_ahead_is_put_right_by_the_answer()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor coach = await server.MemberAsync(Club, Coach, Role.Coach);
        var hold = new Held("boat-1", "knocked");

        Entry[] early = [.. Enumerable.Range(0, 3).Select(i => Written.By(Coach, Club, hold, DateTimeOffset.UtcNow.AddHours(9).AddMinutes(i)))];
        PushAnswer refused = await coach.TakenAsync(Club, early);
        PushAnswer nearly = await coach.TakenAsync(Club, Written.By(Coach, Club, hold, DateTimeOffset.UtcNow.AddMinutes(4)));
        (IReadOnlyList<Entry> restamped, _) = ClockRepair.Restamp(
            early, TimeSpan.FromMilliseconds(refused.Now - early[^1].Time.Milliseconds), default);
        PushAnswer mended = await coach.TakenAsync(Club, restamped);

        Assert.All(refused.Refused, r => Assert.Equal(RefusalCode.ClockAhead, r.Code));
        Assert.Equal(early.Select(e => (Guid?)e.Id), refused.Refused.Select(r => r.Id));
        Assert.Contains(refused.Now.ToString(CultureInfo.InvariantCulture), refused.Refused[0].Reasons[0], StringComparison.Ordinal);
        Assert.Equal(early.Select(e => e.Id), mended.Taken.Select(t => t.Id));
        Assert.Empty(nearly.Refused);
        Assert.Empty(mended.Refused);
    }

    [Fact]
    public async Task More_lines_than_are_taken_at_once_are_none_of_them_taken()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor coach = await server.MemberAsync(Club, Coach, Role.Coach);
        byte[] line = [.. EntryJson.ToLine(Written.Hold(Coach, Club)), (byte)'\n'];

        HttpResponseMessage most = await coach.PushBytesAsync(Club, [.. Enumerable.Repeat(line, Push.MostLines).SelectMany(l => l)]);
        HttpResponseMessage more = await coach.PushBytesAsync("upper-lock", [.. Enumerable.Repeat(line, Push.MostLines + 1).SelectMany(l => l)]);

        Assert.Equal(HttpStatusCode.OK, most.StatusCode);
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, more.StatusCode);
        Assert.Single(await coach.PullAsync(Club));
    }

    [Fact]
    public async Task A_line_longer_than_any_entry_costs_itself_alone()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor coach = await server.MemberAsync(Club, Coach, Role.Coach);
        byte[] good = EntryJson.ToLine(Written.Hold(Coach, Club));
        byte[] large = EntryJson.ToLine(Written.Hold(Coach, Club, new string('x', 3 * EntryLimits.Line)));

        HttpResponseMessage answer = await coach.PushBytesAsync(Club, [.. large, (byte)'\n', .. good, (byte)'\n', .. large]);
        PushAnswer told = (await answer.Content.ReadFromJsonAsync<PushAnswer>(TestContext.Current.CancellationToken))!;

        Assert.Equal([(1, RefusalCode.Malformed), (3, RefusalCode.Malformed)], told.Refused.Select(r => (r.Line, r.Code)));
        Assert.Single(told.Taken);
    }

    private static (byte[], Guid?, string?, string?) Bad(Entry entry, string code, string says) =>
        (EntryJson.ToLine(entry), entry.Id, code, says);

    private static (byte[], Guid?, string?, string?) Good(Entry entry) => (EntryJson.ToLine(entry), entry.Id, null, null);

    private static Entry Other(Entry entry) => Like(entry, Written.Hold(entry.Member, Club, "quite another"), entry.Time);

    private static Entry Of(string device)
    {
        Entry hold = Written.Hold(Coach, Club);
        return new() { Id = hold.Id, Club = hold.Club, Member = hold.Member, Device = device, Time = hold.Time, Kind = hold.Kind, Version = hold.Version, Body = hold.Body };
    }

    private static Entry Counting(int counter)
    {
        Entry hold = Written.Hold(Coach, Club);
        return Like(hold, hold, hold.Time with { Counter = counter });
    }

    private static Entry Like(Entry id, Entry body, HybridTime time) => new()
    {
        Id = id.Id, Club = id.Club, Member = id.Member, Device = id.Device, Time = time, Kind = body.Kind, Version = body.Version, Body = body.Body,
    };
}
