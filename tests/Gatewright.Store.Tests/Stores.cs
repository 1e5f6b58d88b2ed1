using Gatewright.Store.Opening;
using Gatewright.Tests.Databases;

[assembly: AssemblyFixture(typeof(Gatewright.Store.Tests.Stores))]

namespace Gatewright.Store.Tests;

/// <summary>New, empty stores on either engine.</summary>
public sealed class Stores : IAsyncLifetime
{
    private readonly string _folder = Directory.CreateTempSubdirectory("gw-store-").FullName;
    private PostgresServer? _postgres;

    public async ValueTask InitializeAsync() => _postgres = await PostgresServer.StartAsync();

    public async ValueTask DisposeAsync()
    {
        if (_postgres is not null)
        {
            await _postgres.DisposeAsync();
        }

        Directory.Delete(_folder, recursive: true);
    }

    public async Task<StoreLocation> NewAsync(Engine engine)
    {
        StoreLocation location = await PlaceAsync(engine);
        await StoreOpening.OpenAsync(location, TestContext.Current.CancellationToken);
        return location;
    }

    /// <summary>A place for a store, where none is yet.</summary>
    public async Task<StoreLocation> PlaceAsync(Engine engine) => engine == Engine.Sqlite
        ? StoreLocation.File(Path.Combine(NewFolder(), "gatewright.db"))
        : await _postgres!.NewDatabaseAsync();

    /// <summary>An empty folder.</summary>
    public string NewFolder() => Directory.CreateDirectory(Path.Combine(_folder, $"{Guid.NewGuid():N}")).FullName;
}
