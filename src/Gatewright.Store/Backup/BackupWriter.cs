using System.Buffers;
using System.Data.Common;
using System.IO.Compression;
using System.Security.Cryptography;
using System.Text.Json;

namespace Gatewright.Store.Backup;

/// <summary>Writes what a transaction sees into a backup: a zip with a file of JSON lines for each table.</summary>
internal static class BackupWriter
{
    public static async Task WriteAsync(
        DbTransaction transaction, IReadOnlyList<BackupTable> tables, DateTimeOffset now, Stream to, CancellationToken cancellation)
    {
        await using ZipArchive zip = await ZipArchive.CreateAsync(to, ZipArchiveMode.Create, leaveOpen: true, null, cancellation).ConfigureAwait(false);
        var parts = new List<BackupPart>();
        foreach (BackupTable table in tables)
        {
            await using Stream file = await zip.CreateEntry($"{table.Name}.jsonl", CompressionLevel.Fastest).OpenAsync(cancellation).ConfigureAwait(false);
            parts.Add(await WriteAsync(transaction, table, file, cancellation).ConfigureAwait(false));
        }

        await using Stream manifest = await zip.CreateEntry(BackupManifest.FileName).OpenAsync(cancellation).ConfigureAwait(false);
        await JsonSerializer.SerializeAsync(
            manifest, new(BackupManifest.Current, now, parts), BackupJson.Default.BackupManifest, cancellation).ConfigureAwait(false);
    }

    private static async Task<BackupPart> WriteAsync(
        DbTransaction transaction, BackupTable table, Stream file, CancellationToken cancellation)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        var line = new ArrayBufferWriter<byte>();
        await using var json = new Utf8JsonWriter(line);
        await using DbCommand command = transaction.Command(table.Select);
        await using DbDataReader row = await command.ExecuteReaderAsync(cancellation).ConfigureAwait(false);
        long rows = 0;
        for (; await row.ReadAsync(cancellation).ConfigureAwait(false); rows++)
        {
            json.WriteStartObject();
            for (int column = 0; column < table.Columns.Count; column++)
            {
                table.Columns[column].Write(json, row, column);
            }

            json.WriteEndObject();
            await json.FlushAsync(cancellation).ConfigureAwait(false);
            line.Write("\n"u8);
            hash.AppendData(line.WrittenSpan);
            await file.WriteAsync(line.WrittenMemory, cancellation).ConfigureAwait(false);
            line.ResetWrittenCount();
            json.Reset();
        }

        return new(table.Name, rows, Convert.ToHexStringLower(hash.GetHashAndReset()));
    }
}
