using System.Diagnostics;
using System.Net;
using Gatewright.Core.Diagnosing;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Members;
using Gatewright.Server.Tests.Hosting;
using Gatewright.Store;
using Gatewright.Store.Tests;

namespace Gatewright.Server.Tests.Printing;

/// <summary>Documents from the server: as PDF, for whoever may see what is in them. What stands on the pages is tested where they are made.</summary>
public sealed class PrintTests(Stores stores)
{
    private const string Club = "upper-lock";
    private const string Base = $"/api/clubs/{Club}/print";

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("sheets")]
    [InlineData("sheets?boat=boat-1&language=de")]
    [InlineData("cards")]
    [InlineData("shed")]
    [InlineData("jobs")]
    [InlineData("jobs?job=job-1")]
    [InlineData("round?stations=catch,finish")]
    [InlineData("labels?of=seats&format=63x38&skip=3")]
    public async Task It_comes_as_a_pdf_that_no_shared_computer_keeps(string asked)
    {
        await using RunningServer server = await StartAsync();
        Visitor keeper = await FilledAsync(server);

        HttpResponseMessage answer = await keeper.SendAsync(HttpMethod.Get, $"{Base}/{asked}");

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal("application/pdf", answer.Content.Headers.ContentType?.MediaType);
        Assert.StartsWith("inline; filename=", answer.Content.Headers.ContentDisposition?.ToString(), StringComparison.Ordinal);
        Assert.Equal("no-store", answer.Headers.CacheControl?.ToString());
        Assert.Equal("%PDF-"u8.ToArray(), (await answer.Content.ReadAsByteArrayAsync(Cancellation))[..5]);
    }

    [Fact]
    public async Task A_crew_s_link_prints_its_boats_alone_and_no_names()
    {
        await using RunningServer server = await StartAsync();
        Visitor keeper = await FilledAsync(server);
        Visitor crew = server.Visitor();
        (_, string secret) = await server.InviteAsync(Club, Role.Crew, ["boat-1"]);
        await crew.SendAsync(HttpMethod.Post, "/api/crew", new { secret });

        string kept = await TextAsync(keeper, "sheets");
        string seen = await TextAsync(crew, "sheets");

        Assert.Contains("Heron", kept, StringComparison.Ordinal);
        Assert.Contains("Teal", kept, StringComparison.Ordinal);
        Assert.Contains("Heron", seen, StringComparison.Ordinal);
        Assert.DoesNotContain("Teal", seen, StringComparison.Ordinal);
        Assert.Contains("(a member,", seen, StringComparison.Ordinal);
        Assert.DoesNotContain("m-keeper", seen, StringComparison.Ordinal);
        Assert.DoesNotContain("(a member,", kept, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotFound, (await crew.SendAsync(HttpMethod.Get, $"{Base}/sheets?boat=boat-2")).StatusCode);
    }

    [Theory]
    [InlineData("labels?of=gates", "of")]
    [InlineData("labels?format=1x1", "format")]
    [InlineData("labels?skip=-1", "skip")]
    [InlineData("round?stations=somewhere", "stations")]
    public async Task What_was_asked_wrongly_is_told_by_its_field(string asked, string field)
    {
        await using RunningServer server = await StartAsync();
        Visitor keeper = await FilledAsync(server);

        HttpResponseMessage answer = await keeper.SendAsync(HttpMethod.Get, $"{Base}/{asked}");

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains($"\"{field}\":", await answer.Content.ReadAsStringAsync(Cancellation), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("sheets?boat=none")]
    [InlineData("jobs?job=none")]
    public async Task What_is_not_there_is_not_found(string asked)
    {
        await using RunningServer server = await StartAsync();
        Visitor keeper = await FilledAsync(server);
        Assert.Equal(HttpStatusCode.NotFound, (await keeper.SendAsync(HttpMethod.Get, $"{Base}/{asked}")).StatusCode);
    }

    /// <summary>The library prints one document at a time: whoever comes meanwhile waits, and none gets another's.</summary>
    [Fact]
    public async Task Several_at_once_all_get_theirs()
    {
        await using RunningServer server = await StartAsync();
        Visitor keeper = await FilledAsync(server);
        string[] said = await Task.WhenAll(Enumerable.Range(0, 6).Select(i => TextAsync(keeper, i % 2 == 0 ? "shed" : "sheets?language=de")));
        Assert.All(said, text => Assert.Contains("Heron", text, StringComparison.Ordinal));
    }

    private async Task<RunningServer> StartAsync() => await RunningServer.StartAsync(await stores.NewAsync(Engine.Sqlite));

    private static async Task<Visitor> FilledAsync(RunningServer server)
    {
        Visitor keeper = await server.MemberAsync(Club, "m-keeper", Role.Keeper);
        await keeper.TakenAsync(
            Club,
            Written.Boat("m-keeper", Club, "boat-1", "Heron"),
            Written.Boat("m-keeper", Club, "boat-2", "Teal"),
            Written.Hold("m-keeper", Club),
            Written.By("m-keeper", Club, new JobPlanned("job-1", "boat-1", Cause.GatePitch, "insert-swap", ["Fit an insert of 4."], [], [], 1, Core.Side.Starboard)));
        return keeper;
    }

    private static async Task<string> TextAsync(Visitor visitor, string document)
    {
        HttpResponseMessage answer = await visitor.SendAsync(HttpMethod.Get, $"{Base}/{document}");
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        string file = Path.GetTempFileName();
        try
        {
            await File.WriteAllBytesAsync(file, await answer.Content.ReadAsByteArrayAsync(Cancellation), Cancellation);
            using Process process = Process.Start(new ProcessStartInfo("pdftotext", ["-raw", file, "-"]) { RedirectStandardOutput = true })!;
            return await process.StandardOutput.ReadToEndAsync(Cancellation);
        }
        finally
        {
            File.Delete(file);
        }
    }
}
