using Gatewright.Cli.Inputs;
using Gatewright.Store;
using Gatewright.Store.Faults;
using Gatewright.Store.Opening;

namespace Gatewright.Cli.Clubs.Keeping;

/// <summary>Finds the store that a command line names.</summary>
internal static class StoreFinder
{
    /// <summary>A store that is there: looking at one makes none.</summary>
    /// <exception cref="StoreException">There is none, or it cannot be used.</exception>
    public static StoreLocation Kept(StorePlace place)
    {
        if (place.Database is { } connection)
        {
            return Server(connection);
        }

        bool isNamed = !string.IsNullOrWhiteSpace(place.Data ?? DataFolder.Usual);
        string folder = isNamed ? Path.GetFullPath(place.Data ?? DataFolder.Usual) : string.Empty;
        return isNamed && !File.Exists(Path.Combine(folder, DataFolder.FileName))
            ? throw new StoreException(
                StoreFault.Missing, $"There is no store in {folder}.",
                "Name the folder it is in with --data. gatewright record --new-club, gatewright club import and gatewright serve make one.")
            : DataFolder.Locate(place.Data);
    }

    /// <summary>A store that is made where there is none.</summary>
    /// <exception cref="StoreException">It cannot be used.</exception>
    public static StoreLocation KeptOrNew(StorePlace place) =>
        place.Database is { } connection ? Server(connection) : DataFolder.Locate(place.Data);

    private static StoreLocation Server(string connection)
    {
        var location = StoreLocation.Server(connection);
        try
        {
            return location.Name.Length > 0 ? location : throw new ArgumentException("it names nothing");
        }
        catch (ArgumentException cannot)
        {
            throw new StoreException(
                StoreFault.Missing, $"The connection to PostgreSQL cannot be read: {cannot.Message.TrimEnd('.')}.",
                "Write it as \"Host=…;Database=…;Username=…\".", cannot);
        }
    }
}
