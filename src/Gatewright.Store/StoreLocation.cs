using Gatewright.Store.Schema;
using Microsoft.AspNetCore.Identity;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;
using Microsoft.Extensions.DependencyInjection;
using Npgsql;

namespace Gatewright.Store;

/// <summary>Where a store is kept.</summary>
/// <param name="Engine">The engine.</param>
/// <param name="ConnectionString">As the engine's own library takes it.</param>
public sealed record StoreLocation(Engine Engine, string ConnectionString)
{
    private const string SqliteMigrations = "Gatewright.Store.Sqlite";
    private const string PostgresMigrations = "Gatewright.Store.Postgres";

    // The tables of accounts are laid as the options of whoever opens them say, and those are looked for here.
    private static readonly IServiceProvider Identity =
        new ServiceCollection().Configure<IdentityOptions>(StoreDb.WithPasskeys).BuildServiceProvider();

    /// <summary>A store in one file.</summary>
    public static StoreLocation File(string path) => new(
        Engine.Sqlite,
        new SqliteConnectionStringBuilder { DataSource = path, ForeignKeys = true, DefaultTimeout = 30 }.ConnectionString);

    /// <summary>A store on a server.</summary>
    public static StoreLocation Server(string connectionString) => new(Engine.Postgres, connectionString);

    /// <summary>What it is called in messages: its file, or its database and server. Never holds a password.</summary>
    public string Name => Engine == Engine.Sqlite
        ? new SqliteConnectionStringBuilder(ConnectionString).DataSource
        : NameOfServer(new(ConnectionString));

    /// <summary>How to open its tables.</summary>
    public void Configure(DbContextOptionsBuilder options)
    {
        ArgumentNullException.ThrowIfNull(options);
        if (Engine == Engine.Sqlite)
        {
            OnSqlite(options);
        }
        else
        {
            OnPostgres(options);
        }

        // A test holds the migrations against the tables, on both engines: to do so at each start costs time and memory.
        options.ConfigureWarnings(warnings => warnings.Ignore(RelationalEventId.PendingModelChangesWarning));
    }

    /// <summary>Its tables, opened.</summary>
    public StoreDb Open()
    {
        DbContextOptionsBuilder<StoreDb> options = new DbContextOptionsBuilder<StoreDb>().UseApplicationServiceProvider(Identity);
        Configure(options);
        return new(options.Options);
    }

    private void OnSqlite(DbContextOptionsBuilder options)
    {
        options.UseSqlite(ConnectionString, sqlite => sqlite.MigrationsAssembly(SqliteMigrations));
        options.AddInterceptors(SqliteDurability.Instance);
    }

    /// <summary>Apart, since a method brings every library it names: this one's is for those who use it.</summary>
    private void OnPostgres(DbContextOptionsBuilder options) =>
        options.UseNpgsql(ConnectionString, postgres => postgres.MigrationsAssembly(PostgresMigrations));

    private static string NameOfServer(NpgsqlConnectionStringBuilder server) =>
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{server.Database} on {server.Host}:{server.Port}");
}
