using System.Data.Common;
using Gatewright.Store.Faults;
using Microsoft.Data.Sqlite;

namespace Gatewright.Server.Problems;

/// <summary>What lies behind an exception that came through the tables: they wrap what the engines say.</summary>
internal static class StoreTrouble
{
    private const int SqliteBusy = 5;
    private const int SqliteLocked = 6;
    private const int SqliteConstraint = 19;

    /// <summary>Whether the store could not be asked now, and may be in a while.</summary>
    public static bool IsUnavailable(Exception thrown) => Causes(thrown).Any(cause =>
        cause is StoreUnavailableException or SqliteException { SqliteErrorCode: SqliteBusy or SqliteLocked }
        || (cause is DbException said && (said.IsTransient || IsGone(said.SqlState))));

    /// <summary>Whether another changed the same rows meanwhile: all is to be done again on what is there now.</summary>
    /// <remarks>States: PostgreSQL's manual, appendix A.</remarks>
    public static bool IsOvertaken(Exception thrown) =>
        Causes(thrown).Any(cause => cause is DbException { SqlState: "40001" or "40P01" });

    /// <summary>Whether another has what only one may have.</summary>
    public static bool IsTaken(Exception thrown) => Causes(thrown).Any(cause =>
        cause is DbException { SqlState: "23505" } or SqliteException { SqliteErrorCode: SqliteConstraint });

    private static bool IsGone(string? state) =>
        state is not null && (state.StartsWith("08", StringComparison.Ordinal) || state.StartsWith("57P", StringComparison.Ordinal));

    private static IEnumerable<Exception> Causes(Exception thrown)
    {
        for (Exception? cause = thrown; cause is not null; cause = cause.InnerException)
        {
            yield return cause;
        }
    }
}
