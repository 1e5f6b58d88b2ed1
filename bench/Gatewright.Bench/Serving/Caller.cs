using System.Net;
using System.Net.Http.Headers;
using System.Net.Http.Json;
using System.Text.Json;

namespace Gatewright.Bench.Serving;

/// <summary>Somebody with a browser: keeps cookies, sends the token with every change, takes what is packed.</summary>
internal sealed class Caller : IDisposable
{
    private readonly CookieContainer _cookies = new();
    private readonly HttpClient _client;
    private string? _token;

    /// <param name="server">Whom to call.</param>
    /// <param name="cookies">Cookies from an earlier time, as a header; null for none.</param>
    public Caller(Uri server, string? cookies)
    {
        _client = new(new SocketsHttpHandler
        {
            CookieContainer = _cookies, AllowAutoRedirect = false, AutomaticDecompression = DecompressionMethods.All,
        })
        {
            BaseAddress = server,
        };
        foreach (string cookie in cookies?.Split("; ") ?? [])
        {
            _cookies.SetCookies(server, cookie);
        }
    }

    /// <summary>Its cookies, as a header.</summary>
    public string Cookies => _cookies.GetCookieHeader(_client.BaseAddress!);

    /// <summary>Accepts the first keeper's invitation.</summary>
    /// <returns>The club, and the member's id in it.</returns>
    public async Task<(string Club, string Member)> JoinAsync(string secret)
    {
        await SendAsync("/api/join", JsonContent.Create(new
        {
            secret, name = "keeper", password = "four dry oars stand", displayName = "Keeper", clubName = "Upper Lock",
        }));
        JsonElement club = (await SessionAsync()).GetProperty("clubs")[0];
        return (club.GetProperty("club").GetString()!, club.GetProperty("member").GetString()!);
    }

    /// <summary>The body of what is there; read to its end.</summary>
    public async Task<byte[]> GetAsync(string path)
    {
        using HttpResponseMessage answer = await _client.GetAsync(new Uri(path, UriKind.Relative));
        return await ReadAsync(path, answer);
    }

    /// <summary>Sends something with the token of its session.</summary>
    public async Task<byte[]> SendAsync(string path, HttpContent? content)
    {
        if (_token is null)
        {
            await SessionAsync();
        }

        using var request = new HttpRequestMessage(HttpMethod.Post, path) { Content = content };
        request.Headers.Add("X-Gatewright-Token", _token);
        using HttpResponseMessage answer = await _client.SendAsync(request);
        return await ReadAsync(path, answer);
    }

    /// <summary>Sends lines of entries, and says how many were taken.</summary>
    public async Task<int> PushAsync(string club, byte[] lines)
    {
        using var content = new ByteArrayContent(lines);
        content.Headers.ContentType = new MediaTypeHeaderValue("application/x-ndjson");
        using JsonDocument answer = JsonDocument.Parse(await SendAsync($"/api/clubs/{club}/entries", content));
        return answer.RootElement.GetProperty("taken").GetArrayLength();
    }

    public void Dispose() => _client.Dispose();

    private static async Task<byte[]> ReadAsync(string path, HttpResponseMessage answer)
    {
        byte[] body = await answer.Content.ReadAsByteArrayAsync();
        return (int)answer.StatusCode < 400
            ? body
            : throw new InvalidOperationException($"{path} answered {(int)answer.StatusCode}: {System.Text.Encoding.UTF8.GetString(body)}");
    }

    private async Task<JsonElement> SessionAsync()
    {
        using JsonDocument session = JsonDocument.Parse(await GetAsync("/api/session"));
        _token = session.RootElement.GetProperty("antiforgery").GetString();
        return session.RootElement.Clone();
    }
}
