using System.Net;
using System.Net.Http.Json;
using Gatewright.Journal.Entries;
using Gatewright.Server.Accounts;
using Gatewright.Server.Syncing;

namespace Gatewright.Server.Tests.Hosting;

/// <summary>Somebody with a browser: keeps cookies, sends the token with every change.</summary>
internal sealed class Visitor : IDisposable
{
    private readonly HttpClient _client;
    private string? _token;

    public Visitor(Uri address)
    {
        Cookies = new();
        _client = new(new SocketsHttpHandler { CookieContainer = Cookies, AllowAutoRedirect = false, AutomaticDecompression = DecompressionMethods.All })
        {
            BaseAddress = address,
        };
    }

    public CookieContainer Cookies { get; }

    public HttpClient Client => _client;

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    public async Task SignInAsync(string name, string password)
    {
        HttpResponseMessage answer = await SendAsync(HttpMethod.Post, "/api/session", new SignInRequest(name, password));
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        _token = (await answer.Content.ReadFromJsonAsync<Session>(Cancellation))!.Antiforgery;
    }

    public async Task<Session> SessionAsync()
    {
        Session session = (await _client.GetFromJsonAsync<Session>("/api/session", Cancellation))!;
        _token = session.Antiforgery;
        return session;
    }

    public Task<HttpResponseMessage> GetAsync(string path) => _client.GetAsync(path, Cancellation);

    public Task<HttpResponseMessage> SendAsync(HttpMethod method, string path, object? body = null) =>
        SendAsync(method, path, body is null ? null : JsonContent.Create(body, body.GetType()));

    public async Task<HttpResponseMessage> SendAsync(HttpMethod method, string path, HttpContent? content, bool asksFirst = false)
    {
        if (_token is null)
        {
            await SessionAsync();
        }

        using var request = new HttpRequestMessage(method, path) { Content = content };
        request.Headers.Add("X-Gatewright-Token", _token);
        request.Headers.ExpectContinue = asksFirst ? true : null;
        return await _client.SendAsync(request, Cancellation);
    }

    /// <summary>Sends entries.</summary>
    public Task<HttpResponseMessage> PushAsync(string club, params IEnumerable<Entry> entries)
    {
        byte[] lines = [.. entries.SelectMany(e => (byte[])[.. EntryJson.ToLine(e), (byte)'\n'])];
        return PushBytesAsync(club, lines);
    }

    public Task<HttpResponseMessage> PushBytesAsync(string club, byte[] lines)
    {
        var content = new ByteArrayContent(lines);
        content.Headers.ContentType = new("application/x-ndjson");
        return SendAsync(HttpMethod.Post, $"/api/clubs/{club}/entries", content);
    }

    /// <summary>Sends entries and reads what became of them.</summary>
    public async Task<PushAnswer> TakenAsync(string club, params IEnumerable<Entry> entries)
    {
        HttpResponseMessage answer = await PushAsync(club, entries);
        Assert.True(answer.IsSuccessStatusCode, await answer.Content.ReadAsStringAsync(Cancellation));
        return (await answer.Content.ReadFromJsonAsync<PushAnswer>(Cancellation))!;
    }

    /// <summary>The lines of a journal after a number.</summary>
    public async Task<string[]> PullAsync(string club, long after = 0, int most = 2000)
    {
        HttpResponseMessage answer = await GetAsync(string.Create(
            System.Globalization.CultureInfo.InvariantCulture, $"/api/clubs/{club}/entries?after={after}&most={most}"));
        string text = await answer.Content.ReadAsStringAsync(Cancellation);
        Assert.True(answer.IsSuccessStatusCode, text);
        return text.Split('\n', StringSplitOptions.RemoveEmptyEntries);
    }

    public void Dispose() => _client.Dispose();
}
