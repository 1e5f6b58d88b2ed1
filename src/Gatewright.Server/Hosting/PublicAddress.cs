namespace Gatewright.Server.Hosting;

/// <summary>The address that links are made with.</summary>
internal sealed class PublicAddress(ServeOptions options)
{
    /// <summary>A link to a page with a secret.</summary>
    public string Link(HttpRequest request, string page, string secret) =>
        $"{Base ?? $"{request.Scheme}://{request.Host}"}/{page}/{secret}";

    /// <summary>A link made before anybody asked anything.</summary>
    public string Link(string listening, string page, string secret) =>
        $"{Base ?? listening.TrimEnd('/')}/{page}/{secret}";

    private string? Base { get; } = options.PublicAddress?.GetLeftPart(UriPartial.Authority);
}
