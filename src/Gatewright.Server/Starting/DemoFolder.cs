using Gatewright.Store;
using Microsoft.Data.Sqlite;

namespace Gatewright.Server.Starting;

/// <summary>A store for the demo, in a folder that goes when the program ends.</summary>
internal sealed class DemoFolder : IDisposable
{
    private readonly string _folder;

    private DemoFolder(string folder) => _folder = folder;

    public StoreLocation Location => StoreLocation.File(Path.Combine(_folder, "demo.db"));

    public static DemoFolder Make() => new(Directory.CreateTempSubdirectory("gatewright-demo-").FullName);

    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        Directory.Delete(_folder, recursive: true);
    }
}
