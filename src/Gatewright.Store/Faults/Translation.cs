using Microsoft.Data.Sqlite;
using Npgsql;

namespace Gatewright.Store.Faults;

/// <summary>From what the engines throw to what a store says.</summary>
internal static class Translation
{
    /// <summary>Does what a call does, and says its faults as a store's.</summary>
    /// <exception cref="StoreException">The engine failed in a way that is known.</exception>
    public static async Task<T> RunAsync<T>(StoreLocation location, Func<Task<T>> call)
    {
        try
        {
            return await call().ConfigureAwait(false);
        }
        catch (Exception thrown) when (Of(thrown, location) is { } told)
        {
            throw told;
        }
    }

    /// <summary>The store's fault behind an exception; null when it is none, such as a mistake of the program.</summary>
    /// <remarks>The layers above the drivers wrap what these throw, so the causes are looked through.</remarks>
    public static StoreException? Of(Exception? thrown, StoreLocation location) => thrown switch
    {
        null or StoreException or OperationCanceledException => null,
        SqliteException sqlite => SqliteFaults.Of(sqlite, location),
        NpgsqlException postgres => PostgresFaults.Of(postgres, location),
        _ => Of(thrown.InnerException, location),
    };
}
