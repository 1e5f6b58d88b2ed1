using Gatewright.Server.Hosting;
using Gatewright.Server.Starting;
using Gatewright.Store;
using Gatewright.Store.Opening;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;

namespace Gatewright.Browser.Tests;

/// <summary>The server, as a person starts it: empty, or with the demo shed.</summary>
internal sealed class ServedSite : IAsyncDisposable
{
    private readonly WebApplication _app;
    private readonly string _folder;

    private ServedSite(WebApplication app, string folder, Uri address) => (_app, _folder, Address) = (app, folder, address);

    public Uri Address { get; }

    public static async Task<ServedSite> StartAsync(bool isDemo)
    {
        CancellationToken cancellation = TestContext.Current.CancellationToken;
        string folder = Directory.CreateTempSubdirectory("gw-site-").FullName;
        StoreLocation location = StoreLocation.File(Path.Combine(folder, "gatewright.db"));
        await StoreOpening.OpenAsync(location, cancellation);

        // By name: a passkey belongs to a name, and an address of numbers is none.
        WebApplication app = GatewrightServer.Build(new(location, [new("http://localhost:0")], null, false, isDemo, false));
        if (isDemo)
        {
            await DemoShed.FillAsync(app.Services, cancellation);
        }

        app.Urls.Clear();
        app.Urls.Add("http://127.0.0.1:0");
        await app.StartAsync(cancellation);
        string address = app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First();
        return new(app, folder, new UriBuilder(address) { Host = "localhost" }.Uri);
    }

    /// <summary>The link that the console shows at the first start.</summary>
    public async Task<string> FirstLinkAsync() =>
        (await FirstKeeper.InviteAsync(_app.Services, Address.ToString(), TestContext.Current.CancellationToken))!;

    public async ValueTask DisposeAsync()
    {
        await _app.StopAsync();
        await _app.DisposeAsync();
        SqliteConnection.ClearAllPools();
        Directory.Delete(_folder, recursive: true);
    }
}
