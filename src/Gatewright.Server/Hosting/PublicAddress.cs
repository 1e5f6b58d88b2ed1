namespace Gatewright.Server.Hosting;

/// <summary>The address that links are made with.</summary>
internal sealed class PublicAddress(ServeOptions options)
{
    /// <summary>A link to a page with a secret.</summary>
    public string Link(HttpRequest request, string page, string secret) =>
        $"{Of(request)}/{page}/{secret}";

    /// <summary>A link made before anybody asked anything.</summary>
    public string Link(string listening, string page, string secret) =>
        $"{Base ?? listening.TrimEnd('/')}/{page}/{secret}";

    /// <summary>Where the server is, as whoever asks reached it.</summary>
    public string Of(HttpRequest request) => Base ?? $"{request.Scheme}://{request.Host}";

    private string? Base { get; } = options.PublicAddress?.GetLeftPart(UriPartial.Authority);
}
