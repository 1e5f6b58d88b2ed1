using System.IO.Compression;
using System.Text;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Exchange.Archive;
using Gatewright.Journal.Tests.Replay;

namespace Gatewright.Journal.Tests.Exchange.Archive;

public sealed class ClubArchiveTests
{
    [Property(MaxTest = 150)]
    public Property What_was_written_reads_back_to_the_byte() => Prop.ForAll(
        (from entries in Journals.Any
         from bytes in Gen.Choose(0, 255).Select(b => (byte)b).ArrayOf().ArrayOf()
         select (entries: entries.Select(e => e.Entry).Where(e => EntryRules.Problems(e).Count == 0).ToArray(), bytes)).ToArbitrary(),
        async given =>
        {
            ArchiveBlob[] blobs = [.. given.bytes.Select(Archives.Blob)];
            ArchiveReading reading = await Archives.ReadAsync(await Archives.WriteAsync(given.entries, blobs));
            Assert.Equal("", string.Join("; ", reading.Problems));
            Assert.Equal((Journals.Club, given.entries.Length, given.entries.Length), (reading.Head!.Club, reading.Head.Entries, reading.Head.Last));
            Assert.Equal(given.entries.Select(EntryJson.ToLine), await reading.EntriesAsync(cancellation: TestContext.Current.CancellationToken).Select(EntryJson.ToLine).ToListAsync());
            Assert.Equal(blobs.Select(b => b.Sha256).Distinct().Order(), reading.Blobs().Select(b => b.Sha256).Order());
            foreach (ArchiveBlob blob in reading.Blobs())
            {
                using var bytes = new MemoryStream();
                await using Stream from = await blob.Open(TestContext.Current.CancellationToken);
                await from.CopyToAsync(bytes, TestContext.Current.CancellationToken);
                Assert.Equal(blob, Archives.Blob(bytes.ToArray()) with { Open = blob.Open });
            }
        });

    [Fact]
    public async Task One_journal_gives_one_file_to_the_byte() => Assert.Equal(await Archives.SmallAsync(), await Archives.SmallAsync());

    [Fact]
    public async Task It_can_be_written_to_a_stream_that_only_takes()
    {
        using var kept = new MemoryStream();
        await using (var to = new GZipStream(kept, CompressionLevel.NoCompression, leaveOpen: true))
        {
            await ClubArchive.WriteAsync(to, Journals.Club, "Gatewright 0", AsyncEnumerable.Empty<Entry>(), AsyncEnumerable.Empty<ArchiveBlob>(), TestContext.Current.CancellationToken);
        }

        kept.Position = 0;
        using var file = new MemoryStream();
        await using var unpacked = new GZipStream(kept, CompressionMode.Decompress);
        await unpacked.CopyToAsync(file, TestContext.Current.CancellationToken);
        Assert.Empty((await Archives.ReadAsync(file.ToArray())).Problems);
    }

    [Fact]
    public async Task What_is_written_is_this()
    {
        byte[] file = await Archives.SmallAsync();
        Assert.Equal(
            """
            {"id":"01900000-0000-7000-8000-000000000001","club":"club","member":"m1","device":"phone","ms":10,"n":0,"kind":"set","v":1,"body":{"thing":"boat","key":"heron","fields":{"name":"Heron"}}}
            {"id":"01900000-0000-7000-8000-000000000002","club":"club","member":"m1","device":"phone","ms":20,"n":0,"kind":"hold","v":1,"body":{"boat":"heron","reason":"knocked"}}

            """,
            Text(file, "entries.jsonl"));
        Assert.Equal($$"""
            {
              "{{Archives.PictureHash}}": "image/jpeg"
            }
            """, Text(file, "blobs.json"));
        Assert.Equal($$"""
            {
              "format": "gatewright.club/1",
              "club": "club",
              "entries": 2,
              "last": 2,
              "head": "{{Head(Text(file, "entries.jsonl"))}}",
              "program": "Gatewright 0"
            }
            """, Text(file, "club.json"));
    }

    [Fact]
    public async Task A_photo_that_is_not_what_its_hash_says_is_not_written()
    {
        ArchiveBlob wrong = Archives.Blob(Archives.Picture) with { Open = _ => new(new MemoryStream([1])) };
        ArchiveException refusal = await Assert.ThrowsAsync<ArchiveException>(() => Archives.WriteAsync([], wrong));
        Assert.Equal($"Photo {Archives.PictureHash} is not what its hash says: it was damaged where it is kept.", refusal.Message);
    }

    /// <summary>The recipe of README.txt, word for word.</summary>
    private static string Head(string lines) => Convert.ToHexStringLower(lines.TrimEnd('\n').Split('\n').Aggregate(
        new byte[32], (before, line) => System.Security.Cryptography.SHA256.HashData([.. before, .. Encoding.UTF8.GetBytes(line)])));

    private static string Text(byte[] file, string name) => Encoding.UTF8.GetString(Archives.Unpacked(file, name));
}
