using System.Data.Common;
using System.Security.Cryptography;
using Gatewright.Store.Blobs;

namespace Gatewright.Store.Checking;

/// <summary>One club's pictures: each is what its hash says.</summary>
internal static class PictureCheck
{
    private const string Remedy =
        "Restore the latest backup into a new place, or let the device that took it send it again after the row is deleted.";

    public static async Task RunAsync(
        DbTransaction transaction, string club, FindingList findings, CancellationToken cancellation)
    {
        await using DbCommand command = transaction.Command(
            "SELECT \"Sha256\", \"MediaType\", \"Bytes\" FROM blobs WHERE \"Club\" = @club ORDER BY \"Sha256\"");
        command.Add("@club", club);
        await using DbDataReader reader = await command.ExecuteReaderAsync(cancellation).ConfigureAwait(false);
        while (await reader.ReadAsync(cancellation).ConfigureAwait(false))
        {
            findings.Blobs++;
            string sha256 = reader.GetString(0);
            byte[] bytes = (byte[])reader.GetValue(2);
            if (Convert.ToHexStringLower(SHA256.HashData(bytes)) != sha256)
            {
                findings.Fault(club, null, $"The picture {sha256} is not as it was written.", Remedy);
            }
            else if (MediaTypes.Of(bytes) != reader.GetString(1))
            {
                findings.Fault(club, null, $"The picture {sha256} is not {reader.GetString(1)}.", Remedy);
            }
        }
    }
}
