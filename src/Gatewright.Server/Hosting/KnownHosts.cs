namespace Gatewright.Server.Hosting;

/// <summary>The names the server answers to: a page of another site that has its name lead here gets nowhere.</summary>
internal static class KnownHosts
{
    /// <summary>Refuses requests by any other name.</summary>
    /// <remarks>The framework's own filter stands before everything else, and answers without our headers.</remarks>
    public static void UseKnownHosts(this IApplicationBuilder app, ServeOptions options)
    {
        HashSet<string> names = new(StringComparer.OrdinalIgnoreCase) { "localhost", "127.0.0.1", "[::1]" };
        if (options.PublicAddress is { } seen)
        {
            names.Add(seen.Host);
        }

        app.Use((context, next) =>
        {
            if (names.Contains(context.Request.Host.Host))
            {
                return next(context);
            }

            context.Response.StatusCode = StatusCodes.Status400BadRequest;
            return Task.CompletedTask;
        });
    }
}
