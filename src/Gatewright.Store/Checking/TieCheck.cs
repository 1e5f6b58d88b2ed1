using System.Data.Common;

namespace Gatewright.Store.Checking;

/// <summary>What points from one table to another points to something.</summary>
internal static class TieCheck
{
    private const string Memberships =
        "SELECT m.\"Club\", m.\"Member\" FROM memberships m WHERE m.\"AccountId\" IS NOT NULL "
        + "AND NOT EXISTS (SELECT 1 FROM \"AspNetUsers\" u WHERE u.\"Id\" = m.\"AccountId\")";

    private const string Orphans = "SELECT DISTINCT \"Club\" FROM {0} t WHERE NOT EXISTS (SELECT 1 FROM clubs c WHERE c.\"Club\" = t.\"Club\")";

    public static async Task RunAsync(DbTransaction transaction, FindingList findings, CancellationToken cancellation)
    {
        await EachAsync(transaction, Memberships, row => findings.Fault(
            row.GetString(0), null, $"Member {row.GetString(1)} belongs to an account that is not there.",
            "A keeper can take the member out and invite the person again; what was recorded stands."), cancellation).ConfigureAwait(false);
        foreach ((string table, string what) in new[] { ("entries", "entries"), ("blobs", "pictures") })
        {
            await EachAsync(transaction, Orphans.Replace("{0}", table, StringComparison.Ordinal), row => findings.Fault(
                row.GetString(0), null, $"There are {what} of a club that the store does not have."), cancellation).ConfigureAwait(false);
        }
    }

    private static async Task EachAsync(
        DbTransaction transaction, string sql, Action<DbDataReader> take, CancellationToken cancellation)
    {
        await using DbCommand command = transaction.Command(sql);
        await using DbDataReader reader = await command.ExecuteReaderAsync(cancellation).ConfigureAwait(false);
        while (await reader.ReadAsync(cancellation).ConfigureAwait(false))
        {
            take(reader);
        }
    }
}
