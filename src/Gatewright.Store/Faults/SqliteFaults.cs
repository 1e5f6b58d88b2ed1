using Microsoft.Data.Sqlite;

namespace Gatewright.Store.Faults;

/// <summary>SQLite's result codes as a store's faults. Codes: sqlite.org/rescode.html.</summary>
internal static class SqliteFaults
{
    private const int Permission = 3;
    private const int Busy = 5;
    private const int Locked = 6;
    private const int ReadOnly = 8;
    private const int InputOutput = 10;
    private const int Corrupt = 11;
    private const int Full = 13;
    private const int CannotOpen = 14;
    private const int NotADatabase = 26;

    public static StoreException? Of(SqliteException thrown, StoreLocation location)
    {
        string file = location.Name;
        return thrown.SqliteErrorCode switch
        {
            Busy or Locked => new StoreUnavailableException(
                StoreFault.Busy, $"Another program keeps the store {file} busy.", thrown),
            ReadOnly or Permission => new StoreException(
                StoreFault.ReadOnly, $"The store {file} cannot be written.",
                "Let this program's user write the file and the folder it is in, or name another folder.", thrown),
            InputOutput => new StoreException(
                StoreFault.Disk, $"The disk failed under the store {file}.",
                "See that the disk is sound and has room, and look at the store with verify.", thrown),
            Corrupt => new StoreException(
                StoreFault.Damaged, $"The store {file} is damaged.",
                "Set the file aside, do not delete it, and restore the latest backup into a new folder.", thrown),
            Full => new StoreException(
                StoreFault.Full, $"There is no room left for the store {file}.",
                "Make room on its disk; nothing that was acknowledged is lost.", thrown),
            CannotOpen => CannotBeOpened(file, thrown),
            NotADatabase => new StoreException(
                StoreFault.NotAStore, $"{file} is not a store.",
                "Name another folder, or set the file aside and restore a backup.", thrown),
            _ => null,
        };
    }

    private static StoreException CannotBeOpened(string file, SqliteException thrown) => File.Exists(file)
        ? new(
            StoreFault.ReadOnly, $"The store {file} cannot be opened.",
            "Let this program's user read and write the file and the folder it is in.", thrown)
        : new(
            StoreFault.Missing, $"There is no store {file}, and none can be made there.",
            "Name a folder that exists and that this program's user may write.", thrown);
}
