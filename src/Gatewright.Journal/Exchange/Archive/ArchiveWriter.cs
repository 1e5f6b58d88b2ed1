using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using Gatewright.Journal.Entries;

namespace Gatewright.Journal.Exchange.Archive;

/// <summary>Writes a club's file front to back, one entry and one piece of a photo in memory at a time.</summary>
internal sealed class ArchiveWriter(ZipArchive zip, CancellationToken cancellation)
{
    private const int Piece = 64 * 1024;

    /// <summary>The time every member has: two files of one journal are then the same to the byte.</summary>
    private static readonly DateTimeOffset Time = new(2000, 1, 1, 0, 0, 0, TimeSpan.Zero);

    public async Task WriteAsync(string club, string program, IAsyncEnumerable<Entry> entries, IAsyncEnumerable<ArchiveBlob> blobs)
    {
        await MemberAsync(ArchiveFormat.Readme, Encoding.UTF8.GetBytes(ArchiveFormat.ReadmeText)).ConfigureAwait(false);
        using var chain = new LineChain();
        await EntriesAsync(club, entries, chain).ConfigureAwait(false);
        var types = new SortedDictionary<string, string>(StringComparer.Ordinal);
        await foreach (ArchiveBlob blob in blobs.WithCancellation(cancellation).ConfigureAwait(false))
        {
            if (types.TryAdd(blob.Sha256, blob.MediaType))
            {
                await BlobAsync(blob).ConfigureAwait(false);
            }
        }

        await MemberAsync(ArchiveFormat.BlobTypes, ArchiveJson.Write(types)).ConfigureAwait(false);
        var head = new ArchiveHead(club, chain.Count, chain.Count, chain.Head, program);
        await MemberAsync(ArchiveFormat.Club, ArchiveJson.Write(head)).ConfigureAwait(false);
    }

    private async Task EntriesAsync(string club, IAsyncEnumerable<Entry> entries, LineChain chain)
    {
        Stream member = await OpenAsync(ArchiveFormat.Entries, CompressionLevel.Optimal).ConfigureAwait(false);
        await using (member.ConfigureAwait(false))
        {
            await foreach (Entry entry in entries.WithCancellation(cancellation).ConfigureAwait(false))
            {
                if (entry.Club != club)
                {
                    throw new ArgumentException($"Entry {entry.Id} is of club {entry.Club}, not of {club}.", nameof(entries));
                }

                byte[] line = EntryJson.ToLine(entry);
                if (line.AsSpan().ContainsAny((byte)'\n', (byte)'\r'))
                {
                    throw new ArgumentException($"The body of entry {entry.Id} goes over several lines.", nameof(entries));
                }

                chain.Add(line);
                await member.WriteAsync(line, cancellation).ConfigureAwait(false);
                await member.WriteAsync("\n"u8.ToArray(), cancellation).ConfigureAwait(false);
            }
        }
    }

    private async Task BlobAsync(ArchiveBlob blob)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        Stream from = await blob.Open(cancellation).ConfigureAwait(false);
        await using (from.ConfigureAwait(false))
        {
            // Pictures are packed already.
            Stream member = await OpenAsync(ArchiveFormat.BlobName(blob.Sha256), CompressionLevel.NoCompression).ConfigureAwait(false);
            await using (member.ConfigureAwait(false))
            {
                byte[] piece = new byte[Piece];
                for (int read; (read = await from.ReadAsync(piece, cancellation).ConfigureAwait(false)) > 0;)
                {
                    hash.AppendData(piece.AsSpan(0, read));
                    await member.WriteAsync(piece.AsMemory(0, read), cancellation).ConfigureAwait(false);
                }
            }
        }

        if (Convert.ToHexStringLower(hash.GetHashAndReset()) != blob.Sha256)
        {
            throw new ArchiveException($"Photo {blob.Sha256} is not what its hash says: it was damaged where it is kept.");
        }
    }

    private async Task MemberAsync(string name, byte[] bytes)
    {
        Stream member = await OpenAsync(name, CompressionLevel.Optimal).ConfigureAwait(false);
        await using (member.ConfigureAwait(false))
        {
            await member.WriteAsync(bytes, cancellation).ConfigureAwait(false);
        }
    }

    private async Task<Stream> OpenAsync(string name, CompressionLevel level)
    {
        ZipArchiveEntry member = zip.CreateEntry(name, level);
        member.LastWriteTime = Time;
        return await member.OpenAsync(cancellation).ConfigureAwait(false);
    }
}
