using Gatewright.Store.Schema;
using Microsoft.EntityFrameworkCore;

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
        StoreLocation location = engine == Engine.Sqlite
            ? StoreLocation.File(Path.Combine(_folder, $"{Guid.NewGuid():N}.db"))
            : await _postgres!.NewDatabaseAsync();
        await using StoreDb db = location.Open();
        await db.Database.MigrateAsync(TestContext.Current.CancellationToken);
        return location;
    }
}
