namespace Gatewright.Server.Hosting;

/// <summary>Headers on every answer that tell a browser what it must not do.</summary>
internal static class SecurityHeaders
{
    // No inline script or style, nothing from elsewhere, no framing.
    private const string OfPages = "script-src 'self'; base-uri 'none'; " + OfBoth;

    // The app's page names its base, and its runtime is WebAssembly, which a browser counts as a script that is made.
    private const string OfApp = "script-src 'self' 'wasm-unsafe-eval'; base-uri 'self'; " + OfBoth;

    private const string OfBoth =
        "default-src 'none'; style-src 'self'; img-src 'self' data: blob:; font-src 'self'; "
        + "connect-src 'self'; manifest-src 'self'; worker-src 'self'; form-action 'self'; frame-ancestors 'none'";

    /// <summary>Adds them as an answer starts: one that went wrong on the way begins anew, and would have lost them.</summary>
    public static void UseSecurityHeaders(this IApplicationBuilder app) => app.Use((context, next) =>
    {
        context.Response.OnStarting(Add, context);
        return next(context);
    });

    private static Task Add(object state)
    {
        var context = (HttpContext)state;
        IHeaderDictionary headers = context.Response.Headers;
        headers.ContentSecurityPolicy = context.Request.Path.StartsWithSegments(AppFiles.Path) ? OfApp : OfPages;
        headers.XContentTypeOptions = "nosniff";
        headers.XFrameOptions = "DENY";

        // Links hold secrets: no other site hears where somebody came from.
        headers["Referrer-Policy"] = "no-referrer";
        headers["Permissions-Policy"] = "camera=(self), geolocation=(), microphone=(), payment=()";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";

        // What belongs to somebody who is signed in is not left in a shared computer's cache; files of the site say otherwise.
        if (headers.CacheControl.Count == 0)
        {
            headers.CacheControl = "no-store";
        }

        return Task.CompletedTask;
    }
}
