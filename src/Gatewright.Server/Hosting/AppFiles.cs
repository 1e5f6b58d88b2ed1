namespace Gatewright.Server.Hosting;

/// <summary>The app: files that a browser keeps, and one page for every place in it.</summary>
internal static class AppFiles
{
    /// <summary>Where it lies.</summary>
    public const string Path = "/app";

    /// <summary>Where the parts of its runtime lie.</summary>
    public const string Parts = Path + "/_framework";

    /// <summary>What keeps it on a device: a worker, bound as a page is.</summary>
    public const string Worker = Path + "/service-worker.js";

    /// <summary>Answers each place in the app with its page: which place it is, the app reads from the address itself.</summary>
    public static void MapApp(this WebApplication app) =>
        app.MapFallbackToFile(Path + "/{*place:nonfile}", "app/index.html", new StaticFileOptions
        {
            // The page names the files of one version: one that is kept too long would ask for files that are gone.
            OnPrepareResponse = context => context.Context.Response.Headers.CacheControl = "no-cache",
        }).AllowAnonymous().ExcludeFromDescription();
}
