using Gatewright.Bench.WholeRuns;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace Gatewright.Bench.Browsing;

/// <summary>An empty program for the browser, published and served as the app is: packed, and kept by the browser for good.</summary>
internal sealed class EmptySite : IAsyncDisposable
{
    private readonly WebApplication _site;

    private EmptySite(WebApplication site, Uri address) => (_site, Address) = (site, address);

    public Uri Address { get; }

    public static async Task<EmptySite> StartAsync()
    {
        string build = Path.Combine(RepositoryRoot.Path, ".build");
        string folder = Path.Combine(build, "empty-app");
        (int status, string said) = Processes.Run(
            RepositoryRoot.Path, "dotnet", "publish", "bench/EmptyApp", "--configuration", "Release", "--nologo",
            "--artifacts-path", Path.Combine(build, "empty-artifacts"), "--output", folder);
        if (status != 0)
        {
            throw new InvalidOperationException(said);
        }

        WebApplicationBuilder builder = WebApplication.CreateBuilder(new WebApplicationOptions { ContentRootPath = folder, WebRootPath = "wwwroot" });
        builder.Logging.ClearProviders();
        builder.Services.AddRouting();
        WebApplication site = builder.Build();
        site.Urls.Add("http://127.0.0.1:0");
        site.MapStaticAssets(Path.Combine(folder, "EmptyApp.staticwebassets.endpoints.json"));
        site.MapFallbackToFile("index.html", new StaticFileOptions
        {
            OnPrepareResponse = context => context.Context.Response.Headers.CacheControl = "no-cache",
        });
        await site.StartAsync();
        string address = site.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First();
        return new(site, new(address));
    }

    public ValueTask DisposeAsync() => _site.DisposeAsync();
}
