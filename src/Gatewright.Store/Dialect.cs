namespace Gatewright.Store;

/// <summary>Where the engines' SQL differs.</summary>
/// <param name="CreateClub">Makes a club's row unless it is there.</param>
/// <param name="LockClub">Reads a club's row and keeps others from writing it until the commit.</param>
internal sealed record Dialect(string CreateClub, string LockClub)
{
    // SQLite's transactions begin as writers here, so the whole file is locked already.
    private static readonly Dialect Sqlite = new(
        "INSERT INTO clubs (\"Club\", \"Last\", \"Head\") VALUES (@club, 0, @head) ON CONFLICT DO NOTHING",
        "SELECT \"Last\", \"Head\" FROM clubs WHERE \"Club\" = @club");

    private static readonly Dialect Postgres = Sqlite with { LockClub = Sqlite.LockClub + " FOR UPDATE" };

    public static Dialect Of(Engine engine) => engine == Engine.Sqlite ? Sqlite : Postgres;
}
