namespace Gatewright.Server.Hosting;

/// <summary>Headers on every answer that tell a browser what it must not do.</summary>
internal static class SecurityHeaders
{
    // No inline script or style, nothing from elsewhere, no framing.
    private const string ContentSecurityPolicy =
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; font-src 'self'; "
        + "connect-src 'self'; manifest-src 'self'; worker-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    /// <summary>Adds them.</summary>
    public static void UseSecurityHeaders(this IApplicationBuilder app) => app.Use((context, next) =>
    {
        IHeaderDictionary headers = context.Response.Headers;
        headers.ContentSecurityPolicy = ContentSecurityPolicy;
        headers.XContentTypeOptions = "nosniff";
        headers.XFrameOptions = "DENY";

        // Links hold secrets: no other site hears where somebody came from.
        headers["Referrer-Policy"] = "no-referrer";
        headers["Permissions-Policy"] = "camera=(self), geolocation=(), microphone=(), payment=()";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";

        // What belongs to somebody who is signed in is not left in a shared computer's cache; files of the site say otherwise.
        headers.CacheControl = "no-store";
        return next(context);
    });
}
