using System.Globalization;
using System.IO.Compression;
using System.Net;
using System.Text;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Members;
using Gatewright.Server.Tests.Hosting;
using Gatewright.Store;
using Gatewright.Store.Tests;

namespace Gatewright.Server.Tests.Syncing;

/// <summary>Whoever asks for what follows a number gets all of it, once, in order.</summary>
public sealed class PullTests(Stores stores)
{
    private const string Club = "upper-lock";
    private const string Member = "m-keeper";

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Theory, EveryEngine]
    public async Task In_pages_of_any_size_each_entry_comes_once_while_others_append(Engine engine)
    {
        const int Writers = 3;
        const int Pushes = 15;
        const int InAPush = 4;
        const int Whole = Writers * Pushes * InAPush;
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(engine));
        Visitor keeper = await server.MemberAsync(Club, Member, Role.Keeper);

        Task writing = Task.WhenAll(Enumerable.Range(0, Writers).Select(async _ =>
        {
            for (int i = 0; i < Pushes; i++)
            {
                await keeper.TakenAsync(Club, Enumerable.Range(0, InAPush).Select(_ => Written.Hold(Member, Club)));
            }
        }));
        Task<List<Line>>[] reading = [.. new[] { 1, 7, 2000 }.Select(size => ReadAsync(keeper, size, Whole))];
        await writing;
        List<Line>[] read = await Task.WhenAll(reading);

        Assert.All(read, lines => Assert.Equal(Enumerable.Range(1, Whole).Select(n => (long)n), lines.Select(l => l.Number)));
        Assert.All(read, lines => Assert.Equal(read[0].Select(l => l.Entry.Id), lines.Select(l => l.Entry.Id)));
        Assert.Equal(Whole, read[0].Select(l => l.Entry.Id).Distinct().Count());
    }

    [Fact]
    public async Task A_page_longer_than_is_read_at_once_is_whole()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor keeper = await server.MemberAsync(Club, Member, Role.Keeper);
        await keeper.TakenAsync(Club, Enumerable.Range(0, 1203).Select(_ => Written.Hold(Member, Club)));

        Assert.Equal(
            Enumerable.Range(101, 1000).Select(n => (long)n), (await keeper.PullAsync(Club, 100, 1000)).Select(l => Line.Read(l).Number));
        Assert.Equal(1203, (await keeper.PullAsync(Club, 0, 10_000)).Length);
        Assert.Equal(500, (await keeper.PullAsync(Club, 703, 500)).Length);
        Assert.Empty(await keeper.PullAsync(Club, 1203));
    }

    [Fact]
    public async Task After_a_cut_connection_it_goes_on_from_the_last_whole_line()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor keeper = await server.MemberAsync(Club, Member, Role.Keeper);
        string long_ = new('x', 1900);
        await keeper.TakenAsync(Club, Enumerable.Range(0, 400).Select(i => Written.Hold(Member, Club, long_ + i.ToString(CultureInfo.InvariantCulture))));
        var got = new List<string>();
        int cuts = 0;
        while (got.Count < 400)
        {
            long after = got.Count == 0 ? 0 : Line.Read(got[^1]).Number;
            using HttpResponseMessage answer = await keeper.Client.GetAsync(
                $"/api/clubs/{Club}/entries?after={after.ToString(CultureInfo.InvariantCulture)}", HttpCompletionOption.ResponseHeadersRead, Cancellation);
            await using Stream body = await answer.Content.ReadAsStreamAsync(Cancellation);
            byte[] part = new byte[90_000];
            int length = await body.ReadAtLeastAsync(part, part.Length, throwOnEndOfStream: false, Cancellation);
            string text = Encoding.UTF8.GetString(part, 0, length);
            got.AddRange(text[..(text.LastIndexOf('\n') + 1)].Split('\n', StringSplitOptions.RemoveEmptyEntries));
            cuts++;
        }

        Assert.Equal(await keeper.PullAsync(Club), got);
        Assert.True(cuts > 5, $"cut {cuts} times: too seldom to show anything");
    }

    [Theory]
    [InlineData("gzip")]
    [InlineData("br")]
    public async Task What_is_packed_is_taken_and_given(string packing)
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor keeper = await server.MemberAsync(Club, Member, Role.Keeper);
        Entry[] sent = [.. Enumerable.Range(0, 200).Select(_ => Written.Hold(Member, Club, "knocked against the landing stage"))];
        using var packed = new MemoryStream();
        await using (Stream to = packing == "gzip"
            ? new GZipStream(packed, CompressionLevel.Fastest, leaveOpen: true)
            : new BrotliStream(packed, CompressionLevel.Fastest, leaveOpen: true))
        {
            await to.WriteAsync((byte[])[.. sent.SelectMany(e => (byte[])[.. EntryJson.ToLine(e), (byte)'\n'])], Cancellation);
        }

        var content = new ByteArrayContent(packed.ToArray());
        content.Headers.ContentType = new("application/x-ndjson");
        content.Headers.ContentEncoding.Add(packing);
        Assert.True((await keeper.SendAsync(HttpMethod.Post, $"/api/clubs/{Club}/entries", content)).IsSuccessStatusCode);

        using var plain = new HttpClient(new SocketsHttpHandler { CookieContainer = keeper.Cookies }) { BaseAddress = server.Address };
        plain.DefaultRequestHeaders.AcceptEncoding.Add(new(packing));
        HttpResponseMessage answer = await plain.GetAsync($"/api/clubs/{Club}/entries", Cancellation);
        Stream body = await answer.Content.ReadAsStreamAsync(Cancellation);
        await using Stream unpacked = packing == "gzip"
            ? new GZipStream(body, CompressionMode.Decompress)
            : new BrotliStream(body, CompressionMode.Decompress);
        using var reader = new StreamReader(unpacked);

        Assert.Equal([packing], answer.Content.Headers.ContentEncoding);
        Assert.Equal(
            string.Concat(sent.Select((e, i) => Line.Of(i + 1, e) + "\n")), await reader.ReadToEndAsync(Cancellation));
    }

    [Fact]
    public async Task The_head_tells_how_far_the_journal_goes_and_what_time_it_is()
    {
        var clock = new SetClock { Ahead = TimeSpan.FromDays(3) };
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite), o => o with { Clock = clock });
        Visitor keeper = await server.MemberAsync(Club, Member, Role.Keeper);
        await keeper.TakenAsync(Club, Enumerable.Range(0, 9).Select(_ => Written.Hold(Member, Club)));

        HttpResponseMessage answer = await keeper.GetAsync($"/api/clubs/{Club}/entries?most=2");

        Assert.Equal("9", Assert.Single(answer.Headers.GetValues("Gatewright-Last")));
        var now = DateTimeOffset.FromUnixTimeMilliseconds(
            long.Parse(Assert.Single(answer.Headers.GetValues("Gatewright-Now")), CultureInfo.InvariantCulture));
        Assert.InRange(now - DateTimeOffset.UtcNow, TimeSpan.FromDays(2.9), TimeSpan.FromDays(3.1));
    }

    [Fact]
    public async Task A_page_that_cannot_be_is_refused()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor keeper = await server.MemberAsync(Club, Member, Role.Keeper);
        foreach (string query in new[] { "after=-1", "after=x", "after=99999999999999999999", "most=0", "most=10001" })
        {
            Assert.Equal(
                (query, HttpStatusCode.BadRequest), (query, (await keeper.GetAsync($"/api/clubs/{Club}/entries?{query}")).StatusCode));
        }
    }

    private static async Task<List<Line>> ReadAsync(Visitor visitor, int size, int whole)
    {
        var lines = new List<Line>();
        while (lines.Count < whole)
        {
            int before = lines.Count;
            lines.AddRange((await visitor.PullAsync(Club, lines.Count == 0 ? 0 : lines[^1].Number, size)).Select(Line.Read));
            if (lines.Count == before)
            {
                // Whoever asks without end is slowed by the server.
                await Task.Delay(20, Cancellation);
            }
        }

        return lines;
    }
}
