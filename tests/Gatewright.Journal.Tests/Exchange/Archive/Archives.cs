using System.IO.Compression;
using System.Security.Cryptography;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Exchange.Archive;
using Gatewright.Journal.Tests.Replay;

namespace Gatewright.Journal.Tests.Exchange.Archive;

/// <summary>Clubs' files for tests.</summary>
internal static class Archives
{
    public static readonly byte[] Picture = [0xFF, 0xD8, 0xFF, 1, 2, 3];

    public static string PictureHash { get; } = Convert.ToHexStringLower(SHA256.HashData(Picture));

    public static ArchiveBlob Blob(byte[] bytes) => new(
        Convert.ToHexStringLower(SHA256.HashData(bytes)), "image/jpeg", _ => new(new MemoryStream(bytes)));

    public static async Task<byte[]> WriteAsync(IEnumerable<Entry> entries, params ArchiveBlob[] blobs)
    {
        using var stream = new MemoryStream();
        await ClubArchive.WriteAsync(stream, Journals.Club, "Gatewright 0", entries.ToAsyncEnumerable(), blobs.ToAsyncEnumerable(), TestContext.Current.CancellationToken);
        return stream.ToArray();
    }

    public static Task<ArchiveReading> ReadAsync(byte[] file, ArchiveLimits? limits = null) =>
        ClubArchive.ReadAsync(new MemoryStream(file), limits ?? ArchiveLimits.Default, TestContext.Current.CancellationToken);

    /// <summary>A small file in order, with a member changed, left out (null) or put in.</summary>
    public static async Task<byte[]> WithAsync(string name, byte[]? content)
    {
        using var stream = new MemoryStream(await SmallAsync());
        var members = new List<(string Name, byte[] Content)>();
        using (var zip = new ZipArchive(stream))
        {
            foreach (ZipArchiveEntry entry in zip.Entries.Where(e => e.FullName != name))
            {
                using Stream from = entry.Open();
                using var bytes = new MemoryStream();
                from.CopyTo(bytes);
                members.Add((entry.FullName, bytes.ToArray()));
            }
        }

        if (content is not null)
        {
            members.Add((name, content));
        }

        return Zip(members);
    }

    public static byte[] Zip(IEnumerable<(string Name, byte[] Content)> members)
    {
        using var stream = new MemoryStream();
        using (var zip = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach ((string name, byte[] content) in members)
            {
                using Stream to = zip.CreateEntry(name).Open();
                to.Write(content);
            }
        }

        return stream.ToArray();
    }

    public static Task<byte[]> SmallAsync() => WriteAsync(
        [Journals.Entry(1, Journals.Set("heron", "name", "Heron"), 10).Entry, Journals.Entry(2, new Journal.Facts.Held("heron", "knocked"), 20).Entry],
        Blob(Picture));

    public static byte[] Unpacked(byte[] file, string name)
    {
        using var zip = new ZipArchive(new MemoryStream(file));
        using Stream from = zip.GetEntry(name)!.Open();
        using var bytes = new MemoryStream();
        from.CopyTo(bytes);
        return bytes.ToArray();
    }
}
