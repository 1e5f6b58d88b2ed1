using System.Globalization;
using System.Net;
using System.Net.Http.Headers;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Gatewright.Replica.Shelves;

namespace Gatewright.Replica.Exchanging;

/// <summary>The server as a device speaks to it: each method is one request.</summary>
/// <param name="http">How it is reached.</param>
/// <param name="gzip">Packs what is sent; null, or an answer of null, sends it as it is.</param>
internal sealed class Server(HttpClient http, Func<ReadOnlyMemory<byte>, ValueTask<byte[]?>>? gzip = null)
{
    private const string Lines = "application/x-ndjson";

    private string? _token;

    /// <summary>Who is signed in.</summary>
    public async Task<SessionAnswer> SessionAsync(CancellationToken cancellation)
    {
        SessionAnswer answer = await AskAsync(
            HttpMethod.Get, "api/session", null, response => ReadAsync(response, ExchangeJson.Default.SessionAnswer, cancellation), cancellation)
            .ConfigureAwait(true);
        _token = answer.Antiforgery;
        return answer;
    }

    /// <summary>Sends lines of entries.</summary>
    public async Task<PushAnswer> PushAsync(string club, ReadOnlyMemory<byte> lines, CancellationToken cancellation)
    {
        byte[]? packed = gzip is null ? null : await gzip(lines).ConfigureAwait(true);
        HttpContent content = packed is null ? new ReadOnlyMemoryContent(lines) : new ByteArrayContent(packed);
        content.Headers.ContentType = new(Lines);
        if (packed is not null)
        {
            content.Headers.ContentEncoding.Add("gzip");
        }

        return await AskAsync(
            HttpMethod.Post, $"api/clubs/{club}/entries", content, response => ReadAsync(response, ExchangeJson.Default.PushAnswer, cancellation), cancellation)
            .ConfigureAwait(true);
    }

    /// <summary>Asks for the entries after a number.</summary>
    public Task<PulledPage> PullAsync(string club, long after, int most, CancellationToken cancellation) => AskAsync(
        HttpMethod.Get,
        string.Create(CultureInfo.InvariantCulture, $"api/clubs/{club}/entries?after={after}&most={most}"),
        null,
        async response =>
        {
            // A network that wants one to sign in first answers everything with its own page.
            if (response.Content.Headers.ContentType?.MediaType != Lines || Number(response, "Gatewright-Last") is not { } last || Number(response, "Gatewright-Now") is not { } now)
            {
                throw new ServerException(ServerTrouble.Unreachable, "What answers is not the server.");
            }

            return new PulledPage(after, await response.Content.ReadAsByteArrayAsync(cancellation).ConfigureAwait(true), last, DateTimeOffset.FromUnixTimeMilliseconds(now));
        },
        cancellation);

    /// <summary>Sends a picture.</summary>
    public Task SendPhotoAsync(string club, KeptPhoto photo, CancellationToken cancellation)
    {
        var content = new ReadOnlyMemoryContent(photo.Bytes);
        content.Headers.ContentType = new(photo.MediaType);
        return AskAsync(HttpMethod.Put, $"api/clubs/{club}/photos/{photo.Sha256}", content, _ => Task.FromResult(true), cancellation);
    }

    /// <summary>Asks for a picture.</summary>
    public Task<KeptPhoto> PhotoAsync(string club, string sha256, CancellationToken cancellation) => AskAsync(
        HttpMethod.Get,
        $"api/clubs/{club}/photos/{sha256}",
        null,
        async response =>
        {
            byte[] bytes = await response.Content.ReadAsByteArrayAsync(cancellation).ConfigureAwait(true);
            return Device.Hash(bytes) == sha256
                ? new KeptPhoto(sha256, response.Content.Headers.ContentType?.MediaType ?? "image/jpeg", bytes, IsUnsent: false)
                : throw new ServerException(ServerTrouble.Unreachable, "The picture did not come whole.");
        },
        cancellation);

    private static long? Number(HttpResponseMessage response, string header) =>
        response.Headers.TryGetValues(header, out IEnumerable<string>? values)
        && long.TryParse(values.First(), NumberStyles.None, CultureInfo.InvariantCulture, out long number) ? number : null;

    private static async Task<T> ReadAsync<T>(HttpResponseMessage response, JsonTypeInfo<T> type, CancellationToken cancellation)
    {
        byte[] bytes = await response.Content.ReadAsByteArrayAsync(cancellation).ConfigureAwait(true);
        return JsonSerializer.Deserialize(bytes, type) ?? throw new JsonException("null");
    }

    private async Task<T> AskAsync<T>(
        HttpMethod method, string path, HttpContent? content, Func<HttpResponseMessage, Task<T>> read, CancellationToken cancellation)
    {
        try
        {
            using var request = new HttpRequestMessage(method, new Uri(path, UriKind.Relative)) { Content = content };
            if (method != HttpMethod.Get)
            {
                request.Headers.Add("X-Gatewright-Token", _token);
            }

            using HttpResponseMessage response = await http.SendAsync(request, cancellation).ConfigureAwait(true);
            return response.IsSuccessStatusCode
                ? await read(response).ConfigureAwait(true)
                : throw await TroubleAsync(response, cancellation).ConfigureAwait(true);
        }
        catch (Exception cut) when (cut is HttpRequestException or IOException or JsonException
            || (cut is OperationCanceledException && !cancellation.IsCancellationRequested))
        {
            throw new ServerException(ServerTrouble.Unreachable, "The server cannot be reached.", cause: cut);
        }
    }

    private static async Task<ServerException> TroubleAsync(HttpResponseMessage response, CancellationToken cancellation)
    {
        string? said = null;
        try
        {
            ProblemAnswer problem = await ReadAsync(response, ExchangeJson.Default.ProblemAnswer, cancellation).ConfigureAwait(true);
            said = $"{problem.Title}: {problem.Detail}";
        }
        catch (JsonException)
        {
            // Not every answer on the way is the server's own.
        }

        return new(
            response.StatusCode switch
            {
                HttpStatusCode.Unauthorized or HttpStatusCode.Forbidden or HttpStatusCode.BadRequest or HttpStatusCode.NotFound => ServerTrouble.Session,
                HttpStatusCode.RequestEntityTooLarge => ServerTrouble.TooLarge,
                HttpStatusCode.TooManyRequests or HttpStatusCode.RequestTimeout or >= HttpStatusCode.InternalServerError => ServerTrouble.Busy,
                _ => ServerTrouble.Refused,
            },
            said ?? string.Create(CultureInfo.InvariantCulture, $"The server answered {(int)response.StatusCode}."),
            Wait(response.Headers));
    }

    /// <summary>So many seconds, or until a time by the server's own clock.</summary>
    private static TimeSpan? Wait(HttpResponseHeaders headers) =>
        headers.RetryAfter?.Delta ?? (headers.RetryAfter?.Date - headers.Date);
}

/// <summary>A page of a journal as it came.</summary>
/// <param name="After">The number that it was to follow.</param>
/// <param name="Lines">Its lines.</param>
/// <param name="Last">The number that the journal has come to.</param>
/// <param name="Now">The server's clock.</param>
internal sealed record PulledPage(long After, ReadOnlyMemory<byte> Lines, long Last, DateTimeOffset Now);
