namespace Gatewright.Server.Hosting;

/// <summary>Headers on every answer that tell a browser what it must not do with it.</summary>
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
        headers.XContentTypeOptions = "nosniff";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        if (!IsPart(context))
        {
            Bind(headers, context.Request.Path.StartsWithSegments(AppFiles.Path) ? OfApp : OfPages);
        }

        // What belongs to somebody who is signed in is not left in a shared computer's cache; files of the site say otherwise.
        if (headers.CacheControl.Count == 0)
        {
            headers.CacheControl = "no-store";
        }

        return Task.CompletedTask;
    }

    /// <summary>What binds a page or a worker.</summary>
    private static void Bind(IHeaderDictionary headers, string policy)
    {
        headers.ContentSecurityPolicy = policy;
        headers.XFrameOptions = "DENY";

        // Links hold secrets: no other site hears where somebody came from.
        headers["Referrer-Policy"] = "no-referrer";
        headers["Permissions-Policy"] = "camera=(self), geolocation=(), microphone=(), payment=()";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
    }

    /// <summary>
    /// Whether an answer is a part of the app's program: never shown and never a worker, so that what binds those would say
    /// nothing, seventy times over on a phone's first load.
    /// </summary>
    private static bool IsPart(HttpContext context) =>
        context.Request.Path.StartsWithSegments(AppFiles.Path)
        // Packed, it has an ending more.
        && !context.Request.Path.Value!.StartsWith(AppFiles.Worker, StringComparison.OrdinalIgnoreCase)
        && context.Response is
        {
            StatusCode: StatusCodes.Status200OK or StatusCodes.Status304NotModified,
            ContentType: "application/wasm" or "text/javascript" or "text/css",
        };
}
