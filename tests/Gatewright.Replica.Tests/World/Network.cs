using System.Net;
using System.Net.Http.Headers;
using Gatewright.Server.Tests.Hosting;

namespace Gatewright.Replica.Tests.World;

/// <summary>The way from a phone to the server, with all that can befall it.</summary>
internal sealed class Network : HttpMessageHandler
{
    private readonly HttpMessageInvoker _wire;

    public Network(Visitor visitor, Uri server)
    {
        (Visitor, Address) = (visitor, server);
        _wire = new(new SocketsHttpHandler { CookieContainer = visitor.Cookies, AllowAutoRedirect = false, AutomaticDecompression = DecompressionMethods.All });
    }

    public Visitor Visitor { get; }

    /// <summary>Where requests go.</summary>
    public Uri Address { get; set; }

    public bool IsOff { get; set; }

    /// <summary>Decides the fate of each request; by itself all goes well.</summary>
    public Func<HttpRequestMessage, Fate> Fate { get; set; } = _ => World.Fate.Good;

    /// <summary>What is answered in place of the server.</summary>
    public Func<HttpRequestMessage, HttpResponseMessage?> Instead { get; set; } = _ => null;

    /// <summary>The requests that were made: method and path.</summary>
    public List<string> Asked { get; } = [];

    protected override async Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken)
    {
        Asked.Add($"{request.Method} {request.RequestUri!.AbsolutePath}");
        if (Instead(request) is { } instead)
        {
            return instead;
        }

        Fate fate = IsOff ? World.Fate.Lost : Fate(request);
        if (fate == World.Fate.Lost)
        {
            throw new HttpRequestException("no network");
        }

        byte[]? body = request.Content is null ? null : await request.Content.ReadAsByteArrayAsync(cancellationToken);
        if (fate == World.Fate.Doubled)
        {
            (await PassAsync(request, body, cancellationToken)).Dispose();
        }

        HttpResponseMessage answer = await PassAsync(request, body, cancellationToken);
        if (fate == World.Fate.AnswerLost)
        {
            throw new HttpRequestException("cut off");
        }

        if (fate == World.Fate.AnswerCut)
        {
            byte[] whole = await answer.Content.ReadAsByteArrayAsync(cancellationToken);
            MediaTypeHeaderValue? type = answer.Content.Headers.ContentType;
            answer.Content = new ByteArrayContent(whole[..(whole.Length / 2)]);
            answer.Content.Headers.ContentType = type;
        }

        return answer;
    }

    private async Task<HttpResponseMessage> PassAsync(HttpRequestMessage request, byte[]? body, CancellationToken cancellation)
    {
        var passed = new HttpRequestMessage(request.Method, new Uri(Address, request.RequestUri!.PathAndQuery));
        foreach ((string name, IEnumerable<string> values) in request.Headers)
        {
            passed.Headers.TryAddWithoutValidation(name, values);
        }

        if (body is not null)
        {
            passed.Content = new ByteArrayContent(body);
            foreach ((string name, IEnumerable<string> values) in request.Content!.Headers)
            {
                passed.Content.Headers.TryAddWithoutValidation(name, values);
            }
        }

        return await _wire.SendAsync(passed, cancellation);
    }

    protected override void Dispose(bool disposing)
    {
        _wire.Dispose();
        base.Dispose(disposing);
    }
}

/// <summary>What becomes of a request.</summary>
internal enum Fate
{
    Good,
    Lost,
    AnswerLost,
    AnswerCut,
    Doubled,
}
