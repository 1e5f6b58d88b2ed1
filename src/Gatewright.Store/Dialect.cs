using System.Data.Common;
using Gatewright.Store.Appending;

namespace Gatewright.Store;

/// <summary>Where the engines' SQL differs.</summary>
/// <param name="LockClub">Reads a club's row and keeps others from writing it until the commit.</param>
/// <param name="InList">Whether a column is one of a list, given the column.</param>
/// <param name="List">The list's parameter.</param>
/// <param name="Insert">Writes entries the fastest way the engine has.</param>
internal sealed record Dialect(string LockClub, Func<string, string> InList, Func<IEnumerable<Guid>, object> List, InsertEntries Insert)
{
    /// <summary>Makes a club's row unless it is there.</summary>
    public const string CreateClub =
        "INSERT INTO clubs (\"Club\", \"Last\", \"Head\") VALUES (@club, 0, @head) ON CONFLICT DO NOTHING";

    private const string ReadClub = "SELECT \"Last\", \"Head\" FROM clubs WHERE \"Club\" = @club";

    // SQLite's transactions begin as writers here, so the whole file is locked already. It keeps ids as upper-case text.
    private static readonly Dialect Sqlite = new(
        ReadClub,
        column => $"{column} IN (SELECT value FROM json_each(@list))",
        ids => "[" + string.Join(',', ids.Select(id => $"\"{id.ToString().ToUpperInvariant()}\"")) + "]",
        SqliteInsert.RunAsync);

    private static readonly Dialect Postgres = new(
        ReadClub + " FOR UPDATE",
        column => $"{column} = ANY(@list)",
        ids => ids.ToArray(),
        PostgresImport.RunAsync);

    public static Dialect Of(Engine engine) => engine == Engine.Sqlite ? Sqlite : Postgres;
}

/// <summary>Writes new entries of a club inside a transaction.</summary>
internal delegate Task InsertEntries(DbTransaction transaction, string club, IReadOnlyList<FreshEntry> entries, CancellationToken cancellation);
