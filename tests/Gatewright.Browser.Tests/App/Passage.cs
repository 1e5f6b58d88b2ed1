using System.Net;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace Gatewright.Browser.Tests.App;

/// <summary>
/// Stands between a device and the server and hands everything on; when it is told to, with a newer version of the program.
/// The browser fetches the worker's own files past any page, so that no test can answer those within it.
/// </summary>
internal sealed class Passage : IAsyncDisposable
{
    private const string List = "/app/service-worker-assets.js";
    private readonly WebApplication _app;
    private readonly HttpClient _client;
    private (string From, string To)? _version;

    private Passage(WebApplication app, HttpClient client) => (_app, _client) = (app, client);

    /// <summary>Where it is.</summary>
    public Uri Address { get; private set; } = null!;

    public static async Task<Passage> StartAsync(Uri server)
    {
        WebApplicationBuilder builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.UseUrls("http://127.0.0.1:0");
        var client = new HttpClient(new SocketsHttpHandler { AllowAutoRedirect = false, UseCookies = false }) { BaseAddress = server };
        var passage = new Passage(builder.Build(), client);
        passage._app.Run(passage.HandOnAsync);
        await passage._app.StartAsync(TestContext.Current.CancellationToken);
        string address = passage._app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First();
        passage.Address = new UriBuilder(address) { Host = "localhost" }.Uri;
        return passage;
    }

    /// <summary>From now on the program is of another version.</summary>
    public void Renew(string from, string to) => _version = (from, to);

    public async ValueTask DisposeAsync()
    {
        await _app.DisposeAsync();
        _client.Dispose();
    }

    private async Task HandOnAsync(HttpContext context)
    {
        using var asked = new HttpRequestMessage(new(context.Request.Method), context.Request.Path + context.Request.QueryString);
        bool hasBody = context.Request.ContentLength > 0 || context.Request.Headers.TransferEncoding.Count > 0;
        asked.Content = hasBody ? new StreamContent(context.Request.Body) : null;
        bool isRenewed = _version is not null && context.Request.Path == List;
        foreach ((string name, Microsoft.Extensions.Primitives.StringValues values) in context.Request.Headers)
        {
            // A file that is changed on the way is neither packed nor compared with one that was kept.
            if (!(isRenewed && name is "Accept-Encoding" or "If-None-Match" or "If-Modified-Since")
                && !asked.Headers.TryAddWithoutValidation(name, (IEnumerable<string?>)values))
            {
                asked.Content?.Headers.TryAddWithoutValidation(name, (IEnumerable<string?>)values);
            }
        }

        try
        {
            using HttpResponseMessage answer = await _client.SendAsync(asked, HttpCompletionOption.ResponseHeadersRead, context.RequestAborted);
            context.Response.StatusCode = (int)answer.StatusCode;
            foreach ((string name, IEnumerable<string> values) in answer.Headers.Concat(answer.Content.Headers))
            {
                if (name != "Transfer-Encoding" && !(isRenewed && name is "Content-Length" or "ETag"))
                {
                    context.Response.Headers[name] = values.ToArray();
                }
            }

            if (isRenewed)
            {
                string text = await answer.Content.ReadAsStringAsync(context.RequestAborted);
                await context.Response.WriteAsync(text.Replace(_version!.Value.From, _version.Value.To, StringComparison.Ordinal), context.RequestAborted);
            }
            else if (answer.StatusCode is not (HttpStatusCode.NotModified or HttpStatusCode.NoContent))
            {
                await StreamAsync(answer, context);
            }
        }
        catch (Exception gone) when (gone is OperationCanceledException or HttpRequestException or IOException)
        {
            // The device has turned away, or the server has.
            context.Abort();
        }
    }

    /// <summary>Piece by piece: news of a club is a stream that does not end.</summary>
    private static async Task StreamAsync(HttpResponseMessage answer, HttpContext context)
    {
        await using Stream body = await answer.Content.ReadAsStreamAsync(context.RequestAborted);
        byte[] piece = new byte[32 * 1024];
        for (int read; (read = await body.ReadAsync(piece, context.RequestAborted)) > 0;)
        {
            await context.Response.Body.WriteAsync(piece.AsMemory(0, read), context.RequestAborted);
            await context.Response.Body.FlushAsync(context.RequestAborted);
        }
    }
}
