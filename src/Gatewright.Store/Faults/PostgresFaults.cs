using Npgsql;

namespace Gatewright.Store.Faults;

/// <summary>PostgreSQL's states as a store's faults. States: PostgreSQL's manual, appendix A.</summary>
internal static class PostgresFaults
{
    public static StoreException? Of(NpgsqlException thrown, StoreLocation location)
    {
        string server = location.Name;
        return thrown is PostgresException said
            ? Of(said, server)
            : new StoreUnavailableException(StoreFault.Unreachable, $"The store {server} cannot be reached: {thrown.Message.TrimEnd('.')}.", thrown);
    }

    private static StoreException? Of(PostgresException said, string server) => said.SqlState switch
    {
        PostgresErrorCodes.SerializationFailure or PostgresErrorCodes.DeadlockDetected or PostgresErrorCodes.LockNotAvailable
            or PostgresErrorCodes.QueryCanceled or PostgresErrorCodes.TooManyConnections or PostgresErrorCodes.OutOfMemory
            => new StoreUnavailableException(StoreFault.Busy, $"The store {server} is busy: {said.MessageText}.", said),
        PostgresErrorCodes.AdminShutdown or PostgresErrorCodes.CrashShutdown or PostgresErrorCodes.CannotConnectNow
            => Gone(said, server),
        PostgresErrorCodes.DiskFull => new StoreException(
            StoreFault.Full, $"There is no room left for the store {server}.",
            "Make room on the server's disk; nothing that was acknowledged is lost.", said),
        PostgresErrorCodes.IoError => new StoreException(
            StoreFault.Disk, $"The disk failed under the store {server}.",
            "See that the server's disk is sound, and look at the store with verify.", said),
        PostgresErrorCodes.ReadOnlySqlTransaction or PostgresErrorCodes.InsufficientPrivilege => new StoreException(
            StoreFault.ReadOnly, $"The store {server} cannot be written: {said.MessageText}.",
            "Connect to the primary server, as a user that owns the database.", said),
        PostgresErrorCodes.InvalidCatalogName => new StoreException(
            StoreFault.Missing, $"There is no store {server}.", "Make the database first, with createdb.", said),
        PostgresErrorCodes.InvalidPassword or PostgresErrorCodes.InvalidAuthorizationSpecification => new StoreException(
            StoreFault.Refused, $"The store {server} does not let this program in: {said.MessageText}.",
            "Check the user and the password it connects with.", said),
        PostgresErrorCodes.DataCorrupted or PostgresErrorCodes.IndexCorrupted => new StoreException(
            StoreFault.Damaged, $"The store {server} is damaged: {said.MessageText}.",
            "Restore the latest backup into a new database, and keep this one.", said),
        _ => said.SqlState.StartsWith("08", StringComparison.Ordinal) ? Gone(said, server) : null,
    };

    private static StoreUnavailableException Gone(PostgresException said, string server) =>
        new(StoreFault.Unreachable, $"The store {server} cannot be reached: {said.MessageText}.", said);
}
