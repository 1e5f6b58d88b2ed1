using System.Globalization;
using System.Net.ServerSentEvents;
using System.Runtime.CompilerServices;
using System.Text.Json;
using Gatewright.Journal.Entries;
using Gatewright.Server.Hosting;
using Gatewright.Server.Members;
using Gatewright.Server.Problems;
using Gatewright.Store;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;

namespace Gatewright.Server.Syncing;

/// <summary>How devices and the server exchange what they have.</summary>
internal static class SyncEndpoints
{
    private const int UsualPage = 2000;
    private const int LargestPage = 10_000;
    private const int Chunk = 500;
    private const int BufferBytes = 64 * 1024;
    private static readonly TimeSpan LongestNews = TimeSpan.FromMinutes(10);

    /// <summary>Adds them to the routes of a club.</summary>
    public static void MapSync(this RouteGroupBuilder club)
    {
        club.MapPost("/entries", PushAsync)
            .Accepts<object>("application/x-ndjson")
            .WithMetadata(new RequestSizeLimitAttribute(Push.MostBytes))
            .Needs(ClubRight.Record)
            .WithSummary("Send entries, one JSON object a line. Each is taken or refused on its own; sending again changes nothing.");
        club.MapGet("/entries", PullAsync)
            .Produces<string>(contentType: "application/x-ndjson")
            .Needs(ClubRight.ReadJournal)
            .WithSummary("The entries after a number, one JSON object a line: {\"number\", \"entry\"}.");
        club.MapGet("/news", NewsAsync)
            .Produces<string>(contentType: "text/event-stream")
            .Needs(ClubRight.ReadJournal)
            .WithSummary("Server-sent events: the number the journal has come to, each time it grows.");
    }

    private static async Task<Results<Ok<PushAnswer>, ProblemHttpResult>> PushAsync(HttpContext context, Push push)
    {
        PushAnswer? answer = await push.TakeAsync(ClubAccess.Of(context), context.Request.BodyReader, context.RequestAborted)
            .ConfigureAwait(false);
        return answer is null
            ? Problem.Of(StatusCodes.Status413PayloadTooLarge, "Too many entries", $"At most {Push.MostLines} entries are taken at once, and none of these was: send them in several requests.")
            : TypedResults.Ok(answer);
    }

    private static async Task<Results<PushStreamHttpResult, ProblemHttpResult>> PullAsync(
        HttpContext context, JournalStore store, TimeProvider clock, long after = 0, int most = UsualPage)
    {
        var fields = new Fields();
        fields.Expect(after >= 0, nameof(after), "a number from 0: the last one you have");
        fields.Expect(most is > 0 and <= LargestPage, nameof(most), $"1 to {LargestPage}");
        if (fields.Any)
        {
            return Problem.Fields(fields.Errors);
        }

        string club = ClubAccess.Of(context).Club;
        long last = await store.LastAsync(club, context.RequestAborted).ConfigureAwait(false);
        IReadOnlyList<Numbered> first = await store.ReadAsync(club, after, Math.Min(most, Chunk), context.RequestAborted).ConfigureAwait(false);
        context.Response.Headers["Gatewright-Last"] = last.ToString(CultureInfo.InvariantCulture);
        context.Response.Headers["Gatewright-Now"] = clock.GetUtcNow().ToUnixTimeMilliseconds().ToString(CultureInfo.InvariantCulture);
        return TypedResults.Stream(to => WriteAsync(store, club, first, most, to, context.RequestAborted), "application/x-ndjson");
    }

    /// <summary>Reads on while it writes: a page of the largest entries does not stand in memory whole.</summary>
    private static async Task WriteAsync(
        JournalStore store, string club, IReadOnlyList<Numbered> chunk, int most, Stream to, CancellationToken cancellation)
    {
        while (chunk.Count > 0)
        {
            await WriteAsync(chunk, to, cancellation).ConfigureAwait(false);
            most -= chunk.Count;
            chunk = chunk.Count < Chunk || most == 0
                ? []
                : await store.ReadAsync(club, chunk[^1].Number, Math.Min(most, Chunk), cancellation).ConfigureAwait(false);
        }
    }

    private static async Task WriteAsync(IReadOnlyList<Numbered> page, Stream to, CancellationToken cancellation)
    {
        using var buffer = new MemoryStream(BufferBytes);
        await using var writer = new Utf8JsonWriter(buffer);
        foreach (Numbered numbered in page)
        {
            writer.WriteStartObject();
            writer.WriteNumber("number"u8, numbered.Number);
            writer.WritePropertyName("entry"u8);
            EntryJson.Write(writer, numbered.Entry);
            writer.WriteEndObject();
            writer.Flush();
            writer.Reset();
            buffer.WriteByte((byte)'\n');
            if (buffer.Length >= BufferBytes)
            {
                await FlushAsync(buffer, to, cancellation).ConfigureAwait(false);
            }
        }

        await FlushAsync(buffer, to, cancellation).ConfigureAwait(false);
    }

    private static async Task FlushAsync(MemoryStream buffer, Stream to, CancellationToken cancellation)
    {
        await to.WriteAsync(buffer.GetBuffer().AsMemory(0, (int)buffer.Length), cancellation).ConfigureAwait(false);
        buffer.SetLength(0);
    }

    private static ServerSentEventsResult<string> NewsAsync(
        HttpContext context, ClubNews news, IHostApplicationLifetime lifetime)
    {
        // A proxy that gathers answers would keep the news to itself.
        context.Response.Headers["X-Accel-Buffering"] = "no";
        return TypedResults.ServerSentEvents(
            Events(news, ClubAccess.Of(context).Club, context.RequestAborted, lifetime.ApplicationStopping));
    }

    /// <summary>Ends now and then: a browser comes back by itself, and whether it still may is asked anew.</summary>
    private static async IAsyncEnumerable<SseItem<string>> Events(
        ClubNews news, string club, CancellationToken gone, [EnumeratorCancellation] CancellationToken stopping)
    {
        using var ending = CancellationTokenSource.CreateLinkedTokenSource(gone, stopping);
        ending.CancelAfter(LongestNews);
        await using IAsyncEnumerator<long> numbers = news.FollowAsync(club, ending.Token).GetAsyncEnumerator(CancellationToken.None);
        while (await MoveAsync(numbers, ending.Token).ConfigureAwait(false))
        {
            string number = numbers.Current.ToString(CultureInfo.InvariantCulture);
            yield return new(number, "grown") { EventId = number, ReconnectionInterval = TimeSpan.FromSeconds(5) };
        }
    }

    private static async Task<bool> MoveAsync(IAsyncEnumerator<long> numbers, CancellationToken ending)
    {
        try
        {
            return await numbers.MoveNextAsync().ConfigureAwait(false);
        }
        catch (OperationCanceledException) when (ending.IsCancellationRequested)
        {
            return false;
        }
    }
}
