using System.Net;
using System.Net.Http.Headers;
using Gatewright.App.Device;
using Gatewright.Replica.Exchanging;
using Microsoft.Extensions.DependencyInjection;

namespace Gatewright.App.Tests.World;

/// <summary>A server that has one club with an empty journal and says who is signed in: enough for rounds of an exchange.</summary>
internal sealed class SharedClub
{
    /// <summary>Who is signed in; null while nobody is.</summary>
    public string? Member { get; set; } = "m-ada";

    /// <summary>Whether the server takes no picture.</summary>
    public bool RefusesPhotos { get; set; }

    /// <summary>How often somebody signed out.</summary>
    public int SignedOut { get; private set; }

    /// <summary>Exchanges, in the background, until all there is to do is done.</summary>
    public static async Task<ExchangeStatus> ShareAsync(ClubOfTwo club)
    {
        Sharing sharing = club.Page.Services.GetRequiredService<Sharing>();
        _ = sharing.RunAsync();
        Assert.Null(sharing.Fault);
        return await sharing.Exchange!.RunAsync();
    }

    /// <summary>Answers a request.</summary>
    public HttpResponseMessage Answer(HttpRequestMessage request)
    {
        switch ((request.Method.Method, request.RequestUri!.AbsolutePath))
        {
            case ("DELETE", "/api/session"):
                (Member, SignedOut) = (null, SignedOut + 1);
                return new(HttpStatusCode.NoContent);
            case ("GET", "/api/session"):
                string clubs = Member is null ? string.Empty : $$"""{"club":"c","name":"Heron Rowing","member":"{{Member}}","role":"keeper"}""";
                return Json($$"""{"account":{{(Member is null ? "null" : "\"ada\"")}},"displayName":"Ada","clubs":[{{clubs}}],"antiforgery":"token"}""");
            case ("GET", "/api/clubs/c/entries"):
                var page = new HttpResponseMessage { Content = new ByteArrayContent([]) };
                page.Content.Headers.ContentType = new("application/x-ndjson");
                page.Headers.Add("Gatewright-Last", "0");
                page.Headers.Add("Gatewright-Now", $"{DateTimeOffset.UtcNow.ToUnixTimeMilliseconds()}");
                return page;
            case ("GET", "/api/clubs/c/members"):
                return Json("""[{"member":"m-ada","name":"Ada","role":"keeper"},{"member":"m-bea","name":"Bea Alder","role":"keeper"}]""");
            case ("PUT", _) when !RefusesPhotos:
                return new(HttpStatusCode.NoContent);
            case ("PUT", _):
                return new(HttpStatusCode.UnprocessableEntity) { Content = Text("""{"title":"Not taken","detail":"it is no picture"}""") };
            default:
                return new(HttpStatusCode.ServiceUnavailable) { Content = Text("{}") };
        }
    }

    private static HttpResponseMessage Json(string text) => new() { Content = Text(text) };

    private static StringContent Text(string text) => new(text, new MediaTypeHeaderValue("application/json"));
}
