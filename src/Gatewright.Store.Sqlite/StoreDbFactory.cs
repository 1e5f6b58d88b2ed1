using Gatewright.Store.Schema;
using Microsoft.EntityFrameworkCore.Design;

namespace Gatewright.Store.Sqlite;

/// <summary>Lets the migrations tool open the tables; it never connects with this.</summary>
public sealed class StoreDbFactory : IDesignTimeDbContextFactory<StoreDb>
{
    /// <inheritdoc/>
    public StoreDb CreateDbContext(string[] args) => StoreLocation.File("design.db").Open();
}
