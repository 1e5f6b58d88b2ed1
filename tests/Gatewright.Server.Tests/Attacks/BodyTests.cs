using System.IO.Compression;
using System.Net;
using System.Text;
using Gatewright.Journal.Members;
using Gatewright.Server.Tests.Hosting;
using Gatewright.Server.Tests.Wall;
using Gatewright.Store;
using Gatewright.Store.Tests;

namespace Gatewright.Server.Tests.Attacks;

/// <summary>Bodies that are too large or make no sense: each is answered, none takes the server's memory.</summary>
[Collection(nameof(Alone))]
public sealed class BodyTests(Stores stores)
{
    private const string Club = "upper-lock";
    private const int Large = 24 * 1024 * 1024;
    private const int Bomb = 256 * 1024 * 1024;

    // A buffer that grows by doubling to the largest body takes twice that in all; a bomb unpacked takes its size and more.
    private const int MostMemory = 64 * 1024 * 1024;

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    public static TheoryData<string> Packings => ["", "gzip", "br"];

    [Theory]
    [MemberData(nameof(Packings))]
    public async Task On_every_route_a_body_that_is_too_large_is_refused(string packing)
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor keeper = await server.MemberAsync(Club, "m-keeper", Role.Keeper);
        byte[] body = packing.Length == 0 ? Filled(Large) : Packed(packing, Bomb);
        RouteRow[] routes = [.. RouteTable.Rows.Where(r => r.Body is not null)];
        var wrong = new List<string>();
        foreach (RouteRow row in routes)
        {
            var content = new ByteArrayContent(body);
            content.Headers.ContentType = row.Body!("m-keeper").Headers.ContentType;
            if (packing.Length > 0)
            {
                content.Headers.ContentEncoding.Add(packing);
            }

            long before = GC.GetTotalAllocatedBytes();
            HttpStatusCode heard = await HeardAsync(keeper, row, content);
            long taken = GC.GetTotalAllocatedBytes() - before;
            if (heard != HttpStatusCode.RequestEntityTooLarge)
            {
                wrong.Add($"{row.Route}: {heard}");
            }

            if (taken > MostMemory)
            {
                wrong.Add($"{row.Route}: took {taken} bytes of memory");
            }
        }

        Assert.True(routes.Length > 10);
        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
        Assert.Equal(HttpStatusCode.OK, (await keeper.GetAsync("/health/ready")).StatusCode);
    }

    [Fact]
    public async Task A_form_that_is_too_large_is_refused()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        var content = new ByteArrayContent([.. "_handler=sign-in&Form.Name="u8, .. Filled(Large)]);
        content.Headers.ContentType = new("application/x-www-form-urlencoded");

        HttpResponseMessage answer = await server.Visitor().SendAsync(HttpMethod.Post, "/sign-in", content, asksFirst: true);

        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, answer.StatusCode);
    }

    [Theory, EveryEngine]
    public async Task What_makes_no_sense_is_refused(Engine engine)
    {
        (string Body, int Status)[] nonsense =
        [
            ("{", 400),
            (string.Empty, 400),
            ("null", 400),
            ("[]", 400),
            ("\"text\"", 400),
            ("""{"name":1,"password":{}}""", 400),
            ("""{"name":"\ud800","password":"half of a pair"}""", 400),
            ("""{"name":"a\u0000b","password":"four dry oars stand"}""", 401),
            ("""{"name":"ab","password":"a\u0000b"}""", 401),
            ($$"""{"name":"{{new string('x', 100_000)}}","password":"y"}""", 401),
            (new string('[', 100_000), 400),
            ($$"""{"a":{{new string('[', 5000)}}{{new string(']', 5000)}}}""", 400),
        ];
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(engine));
        Visitor visitor = server.Visitor();
        var heard = new List<int>();
        foreach ((string body, _) in nonsense)
        {
            heard.Add((int)(await visitor.SendAsync(HttpMethod.Post, "/api/session", new StringContent(body, null, "application/json"))).StatusCode);
        }

        Assert.Equal(nonsense.Select(n => n.Status), heard);
    }

    [Fact]
    public async Task Text_that_is_not_unicode_is_refused()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor keeper = await server.MemberAsync(Club, "m-keeper", Role.Keeper);
        var content = new ByteArrayContent([.. "{\"displayName\":\""u8, 0xff, 0xfe, 0xc0, .. "\"}"u8]);
        content.Headers.ContentType = new("application/json");

        Assert.Equal(HttpStatusCode.BadRequest, (await keeper.SendAsync(HttpMethod.Put, "/api/account/name", content)).StatusCode);
        byte[] line = Journal.Entries.EntryJson.ToLine(Written.Hold("m-keeper", Club, "knocked"));
        line[Encoding.UTF8.GetString(line).IndexOf("knocked", StringComparison.Ordinal)] = 0xff;
        string told = await (await keeper.PushBytesAsync(Club, line)).Content.ReadAsStringAsync(Cancellation);
        Assert.Contains("malformed", told, StringComparison.Ordinal);
        Assert.Empty(await keeper.PullAsync(Club));
    }

    [Fact]
    public async Task A_body_of_another_type_is_refused()
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));
        Visitor keeper = await server.MemberAsync(Club, "m-keeper", Role.Keeper);
        var wrong = new List<string>();
        foreach (RouteRow row in RouteTable.Rows.Where(r => r.Body is not null))
        {
            foreach (string type in new[] { "text/plain", "application/x-www-form-urlencoded", "multipart/form-data", "application/xml" })
            {
                HttpResponseMessage answer = await keeper.SendAsync(row.Method, row.Address(Club), new StringContent("{}", null, type));
                if (answer.StatusCode != HttpStatusCode.UnsupportedMediaType)
                {
                    wrong.Add($"{row.Route} of {type}: {answer.StatusCode}");
                }
            }
        }

        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }

    private static async Task<HttpStatusCode> HeardAsync(Visitor visitor, RouteRow row, HttpContent content)
    {
        // Asked first whether it may be sent: the server hangs up on whoever sends on regardless.
        return (await visitor.SendAsync(row.Method, row.Address(Club), content, asksFirst: true)).StatusCode;
    }

    private static byte[] Filled(int length)
    {
        byte[] body = new byte[length];
        Array.Fill(body, (byte)' ');
        return body;
    }

    private static byte[] Packed(string packing, int length)
    {
        byte[] part = Filled(1024 * 1024);
        using var packed = new MemoryStream();
        using (Stream to = packing == "gzip" ? new GZipStream(packed, CompressionLevel.Fastest) : new BrotliStream(packed, CompressionLevel.Fastest))
        {
            for (int i = 0; i < length / part.Length; i++)
            {
                to.Write(part);
            }
        }

        return packed.ToArray();
    }
}

/// <summary>For tests that measure the whole process: nothing else runs beside them.</summary>
[CollectionDefinition(nameof(Alone), DisableParallelization = true)]
public sealed class Alone;
