using System.Data.Common;
using System.Globalization;
using Gatewright.Store.Faults;
using Gatewright.Store.Schema;
using Microsoft.EntityFrameworkCore;

namespace Gatewright.Store.Blobs;

/// <summary>Clubs' pictures, each kept once, by the hash of what it contains. Holds no state of its own.</summary>
public sealed class BlobStore(StoreLocation location, BlobSettings? settings = null)
{
    private readonly BlobSettings _settings = settings ?? BlobSettings.Default;
    private readonly Dialect _dialect = Dialect.Of(location.Engine);

    /// <summary>Keeps a picture, unless the club has it already.</summary>
    /// <param name="club">The club.</param>
    /// <param name="sha256">What the sender says its SHA-256 is, in lower-case hexadecimal.</param>
    /// <param name="picture">The picture.</param>
    /// <param name="cancellation">Stops it; nothing is kept then.</param>
    /// <returns>Whether it is new.</returns>
    /// <exception cref="BlobRefusedException">It is not taken; says why.</exception>
    /// <exception cref="StoreException">The store cannot take it.</exception>
    public Task<bool> PutAsync(string club, string sha256, byte[] picture, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(sha256);
        ArgumentNullException.ThrowIfNull(picture);
        string mediaType = BlobCheck.Check(sha256, picture, _settings);
        return Translation.RunAsync(location, async () =>
        {
            await using StoreDb db = location.Open();
            await db.Database.OpenConnectionAsync(cancellation).ConfigureAwait(false);
            await using DbTransaction transaction =
                await db.Database.GetDbConnection().BeginTransactionAsync(cancellation).ConfigureAwait(false);

            // Under the club's lock, or two at once could each find room for itself alone.
            await LockAsync(transaction, club, cancellation).ConfigureAwait(false);
            await db.Database.UseTransactionAsync(transaction, cancellation).ConfigureAwait(false);
            if (await db.Blobs.AnyAsync(b => b.Club == club && b.Sha256 == sha256, cancellation).ConfigureAwait(false))
            {
                return false;
            }

            long kept = await SumAsync(transaction, club, cancellation).ConfigureAwait(false);
            if (kept + picture.Length > _settings.MostBytesOfClub)
            {
                throw new BlobRefusedException(BlobRefusal.ClubFull, string.Create(
                    CultureInfo.InvariantCulture,
                    $"The pictures of club {club} take {kept} of {_settings.MostBytesOfClub} bytes: this one of {picture.Length} is too much."));
            }

            db.Blobs.Add(new() { Club = club, Sha256 = sha256, MediaType = mediaType, Bytes = picture });
            await db.SaveChangesAsync(cancellation).ConfigureAwait(false);
            await transaction.CommitAsync(cancellation).ConfigureAwait(false);
            return true;
        });
    }

    /// <summary>A picture; null when the club has none of that hash.</summary>
    /// <exception cref="StoreException">The store cannot be read.</exception>
    public Task<OpenedBlob?> GetAsync(string club, string sha256, CancellationToken cancellation = default) =>
        Translation.RunAsync(location, async () =>
        {
            await using StoreDb db = location.Open();
            BlobRow? row = await db.Blobs.AsNoTracking()
                .SingleOrDefaultAsync(b => b.Club == club && b.Sha256 == sha256, cancellation).ConfigureAwait(false);
            return row is null
                ? null
                : new OpenedBlob(new(row.Sha256, row.MediaType, row.Bytes.Length), new MemoryStream(row.Bytes, writable: false));
        });

    /// <summary>What pictures a club has, by their hash.</summary>
    /// <exception cref="StoreException">The store cannot be read.</exception>
    public Task<IReadOnlyList<KeptBlob>> ListAsync(string club, CancellationToken cancellation = default) =>
        Translation.RunAsync<IReadOnlyList<KeptBlob>>(location, async () =>
        {
            await using StoreDb db = location.Open();
            return await db.Blobs.Where(b => b.Club == club).OrderBy(b => b.Sha256)
                .Select(b => new KeptBlob(b.Sha256, b.MediaType, b.Bytes.Length))
                .ToListAsync(cancellation).ConfigureAwait(false);
        });

    private async Task LockAsync(DbTransaction transaction, string club, CancellationToken cancellation)
    {
        await using DbCommand create = transaction.Command(Dialect.CreateClub);
        create.Add("@club", club);
        create.Add("@head", HashChain.Start);
        await create.ExecuteNonQueryAsync(cancellation).ConfigureAwait(false);
        await using DbCommand read = transaction.Command(_dialect.LockClub);
        read.Add("@club", club);
        await read.ExecuteScalarAsync(cancellation).ConfigureAwait(false);
    }

    private static async Task<long> SumAsync(DbTransaction transaction, string club, CancellationToken cancellation)
    {
        await using DbCommand sum = transaction.Command(
            "SELECT CAST(coalesce(sum(length(\"Bytes\")), 0) AS BIGINT) FROM blobs WHERE \"Club\" = @club");
        sum.Add("@club", club);
        return (long)(await sum.ExecuteScalarAsync(cancellation).ConfigureAwait(false))!;
    }
}
