using System.IO.Compression;
using System.Runtime.CompilerServices;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Gatewright.Store.Faults;

namespace Gatewright.Store.Backup;

/// <summary>Reads a backup, and holds each of its files to what it says of itself.</summary>
internal sealed class BackupReader : IAsyncDisposable
{
    private readonly string _path;
    private readonly ZipArchive _zip;

    private BackupReader(string path, ZipArchive zip, BackupManifest manifest) => (_path, _zip, Manifest) = (path, zip, manifest);

    public BackupManifest Manifest { get; }

    public static async Task<BackupReader> OpenAsync(string path, CancellationToken cancellation)
    {
        ZipArchive? zip = null;
        try
        {
            zip = await ZipFile.OpenReadAsync(path, cancellation).ConfigureAwait(false);
            ZipArchiveEntry file = zip.GetEntry(BackupManifest.FileName) ?? throw new InvalidDataException("it does not say what is in it");
            await using Stream stream = await file.OpenAsync(cancellation).ConfigureAwait(false);
            BackupManifest manifest = await JsonSerializer.DeserializeAsync(stream, BackupJson.Default.BackupManifest, cancellation).ConfigureAwait(false)
                ?? throw new InvalidDataException("it says nothing of what is in it");
            return manifest.Format is > 0 and <= BackupManifest.Current
                ? new(path, zip, manifest)
                : throw new StoreException(
                    StoreFault.Newer, $"A newer Gatewright has written the backup {path}.", "Use that version or a later one.");
        }
        catch (Exception thrown)
        {
            zip?.Dispose();
            throw thrown switch
            {
                FileNotFoundException or DirectoryNotFoundException => new StoreException(
                    StoreFault.Missing, $"There is no backup {path}.", "Name the file it is in.", thrown),
                InvalidDataException or JsonException => new StoreException(
                    StoreFault.NotAStore, $"{path} is not a backup: {thrown.Message}.", "Name another file, or take an older backup.", thrown),
                IOException or UnauthorizedAccessException => new StoreException(
                    StoreFault.Disk, $"The backup {path} cannot be read: {thrown.Message}", "See that this program's user may read it.", thrown),
                _ => thrown,
            };
        }
    }

    /// <summary>The rows of a table, in order. Throws after the last when they are not those that were written.</summary>
    public async IAsyncEnumerable<JsonElement> RowsAsync(BackupPart part, [EnumeratorCancellation] CancellationToken cancellation)
    {
        ZipArchiveEntry file = _zip.GetEntry($"{part.Name}.jsonl") ?? throw Broken(part, "its file is missing");
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        await using Stream stream = await file.OpenAsync(cancellation).ConfigureAwait(false);
        using var lines = new StreamReader(stream, new UTF8Encoding(false, throwOnInvalidBytes: true), detectEncodingFromByteOrderMarks: false);
        long rows = 0;
        while (await LineAsync(lines, part, cancellation).ConfigureAwait(false) is { } line)
        {
            hash.AppendData(Encoding.UTF8.GetBytes(line + '\n'));
            rows++;
            using JsonDocument row = Parse(line, part, rows);
            yield return row.RootElement;
        }

        if (rows != part.Rows || Convert.ToHexStringLower(hash.GetHashAndReset()) != part.Sha256)
        {
            throw Broken(part, $"{rows} of {part.Rows} rows are there, or some are not as they were written");
        }
    }

    public StoreException Broken(BackupPart part, string why, Exception? cause = null) => new(
        StoreFault.Damaged, $"The backup {_path} is damaged in table {part.Name}: {why}.", "Take another backup; nothing was changed.", cause);

    public ValueTask DisposeAsync() => _zip.DisposeAsync();

    private async Task<string?> LineAsync(StreamReader lines, BackupPart part, CancellationToken cancellation)
    {
        try
        {
            return await lines.ReadLineAsync(cancellation).ConfigureAwait(false);
        }
        catch (Exception thrown) when (thrown is InvalidDataException or DecoderFallbackException or IOException)
        {
            throw Broken(part, thrown.Message.TrimEnd('.'), thrown);
        }
    }

    private JsonDocument Parse(string line, BackupPart part, long number)
    {
        try
        {
            return JsonDocument.Parse(line);
        }
        catch (JsonException thrown)
        {
            throw Broken(part, $"row {number} is not JSON", thrown);
        }
    }
}
