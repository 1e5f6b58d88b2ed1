using Gatewright.Store.Faults;
using Microsoft.Data.Sqlite;
using Npgsql;

namespace Gatewright.Store.Checking;

/// <summary>Goes on past what cannot be read: one bad page is no reason not to look at the rest.</summary>
internal static class Damage
{
    /// <summary>Does a part of the check, and notes it when that part meets damage.</summary>
    public static async Task NoteAsync(FindingList findings, StoreLocation location, string? club, Func<Task> part)
    {
        try
        {
            await part().ConfigureAwait(false);
        }
        catch (Exception thrown) when (Told(thrown, location) is { } told)
        {
            findings.Fault(club, null, told);
        }
    }

    private static string? Told(Exception thrown, StoreLocation location) => thrown switch
    {
        InvalidCastException or FormatException or OverflowException => $"A row holds what cannot be in it: {thrown.Message}",
        SqliteException { SqliteErrorCode: 1 } or PostgresException { SqlState: PostgresErrorCodes.UndefinedTable } => $"A table cannot be read: {thrown.Message}",
        PostgresException { SqlState: PostgresErrorCodes.InFailedSqlTransaction } =>
            "What follows could not be looked at after the fault before this one.",
        _ => Translation.Of(thrown, location) is { Fault: StoreFault.Damaged or StoreFault.NotAStore or StoreFault.Disk } said
            ? $"{said.Message} ({thrown.Message})"
            : null,
    };
}
