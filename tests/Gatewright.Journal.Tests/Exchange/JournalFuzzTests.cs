using System.Security.Cryptography;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Exchange.Archive;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Replay.Snapshots;
using Gatewright.Journal.Tests.Exchange.Archive;
using Gatewright.Journal.Tests.Facts;
using Gatewright.Journal.Tests.Replay;
using Gatewright.Journal.Tests.Replay.Snapshots;

namespace Gatewright.Journal.Tests.Exchange;

/// <summary>
/// Whatever comes as an entry, a club's file or a snapshot: it is taken or refused as such things are refused, and costs
/// no more memory than its size warrants. A long run tries 800,000 here; with the files of readings, standards and stores
/// it comes to more than a million.
/// </summary>
public sealed class JournalFuzzTests
{
    private static readonly byte[][] s_lines = [.. FactKindsTests.Written.Select((row, i) => EntryJson.ToLine(new()
    {
        Id = Journals.Id(i),
        Club = Journals.Club,
        Member = "m1",
        Device = "phone",
        Time = new(i, 0),
        Kind = row.Data.Item1,
        Version = row.Data.Item2,
        Body = System.Text.Encoding.UTF8.GetBytes(row.Data.Item3),
    }))];

    private static readonly byte[][] s_scraps =
    [
        "null"u8.ToArray(), "true"u8.ToArray(), "[]"u8.ToArray(), "{}"u8.ToArray(), "{\"a\":"u8.ToArray(), "}"u8.ToArray(), "]"u8.ToArray(),
        "\""u8.ToArray(), "\\"u8.ToArray(), "\\ud800"u8.ToArray(), "\\u0000"u8.ToArray(), "1e400"u8.ToArray(), "-0"u8.ToArray(),
        "99999999999999999999999999999999"u8.ToArray(), "1e-400"u8.ToArray(), ","u8.ToArray(), ":"u8.ToArray(), "\n"u8.ToArray(),
        "[[[[[[[[[[[[[[[[[[[["u8.ToArray(), "0001-01-01"u8.ToArray(), "\"key\":\"/\","u8.ToArray(), "PK\u0001\u0002"u8.ToArray(), "PK\u0005\u0006"u8.ToArray(),
        " "u8.ToArray(), "0"u8.ToArray(), "1"u8.ToArray(), "5"u8.ToArray(), "x"u8.ToArray(), "B"u8.ToArray(), "_"u8.ToArray(), "."u8.ToArray(),
        "PK\u0006\u0007"u8.ToArray(), [0], [0xFF], [0xFF, 0xFF, 0xFF, 0xFF], [0xC3], [0xED, 0xA0, 0x80], [0x7F, 0xFF, 0xFF, 0xFF],
    ];

    [Fact]
    public void No_line_makes_an_exception_or_much_memory()
    {
        int entered = 0;
        foreach ((byte[] line, string which) in Mutation.Of(s_lines, s_scraps, 11, Effort.Of(10_000, 600_000)))
        {
            Within(400_000 + (100L * line.Length), which, line, () =>
            {
                if (EntryJson.Read(line, out IReadOnlyList<string> problems) is not { } entry)
                {
                    Assert.NotEmpty(problems);
                }
                else if (EntryRules.Problems(entry).Count == 0)
                {
                    entered++;
                    Take(entry);
                }
            });
        }

        // Enough of them have to be taken for the test to have tried what comes after: one in thirty or so is.
        Assert.InRange(entered, Effort.Of(100, 6_000), int.MaxValue);
    }

    [Fact]
    public async Task No_clubs_file_makes_an_exception_or_much_memory()
    {
        byte[] whole = await Archives.SmallAsync();
        string[] names = ["README.txt", "club.json", "blobs.json", "entries.jsonl"];
        byte[][] members = [.. names.Select(n => Archives.Unpacked(whole, n))];
        int number = 0;
        foreach ((byte[] zip, string which) in Mutation.Of([whole], s_scraps, 12, Effort.Of(1_500, 75_000)))
        {
            await ReadAsync(zip, which);
        }

        foreach ((byte[] member, string which) in Mutation.Of(members, s_scraps, 13, Effort.Of(500, 25_000)))
        {
            await ReadAsync(await Archives.WithAsync(names[number++ % names.Length], member), which);
        }
    }

    /// <summary>Blocks spoilt with their hashes put right, so that what is behind the hashes is tried too.</summary>
    [Fact]
    public void No_snapshot_makes_an_exception_or_much_memory()
    {
        byte[] whole = ClubSnapshotTests.Bytes(Club.Empty(Journals.Club).With(s_lines.Select(l => Recorded.Of(EntryJson.Read(l, out _)!))));
        const int Head = 22;
        const int Block = Head + 32;
        int first = BitConverter.ToInt32(whole, Block);
        int second = Block + 36 + first;
        byte[] blocks = whole[(second + 36)..^36];
        foreach ((byte[] block, string which) in Mutation.Of([blocks], s_scraps, 14, Effort.Of(3_000, 100_000)))
        {
            byte[] hash = SHA256.HashData([.. whole.AsSpan(Block + 4, 32), .. block]);
            byte[] mutant = [.. whole[..second], .. BitConverter.GetBytes(block.Length), .. hash, .. block, .. new byte[4], .. SHA256.HashData(hash)];
            Within(2_000_000, which, mutant, () =>
            {
                try
                {
                    ClubSnapshot.Read(new MemoryStream(mutant));
                }
                catch (SnapshotException)
                {
                    // The refusal that is meant.
                }
            });
        }
    }

    /// <summary>What entered must do no harm: it is filed, asked, written and read again.</summary>
    private static void Take(Entry entry)
    {
        Recorded recorded = Recorded.Of(entry);
        Club club = Club.Empty(entry.Club).With(recorded);
        Assert.Equal(recorded.Fact, Assert.Single(club.Everything(club.Subjects.Single())).Fact);
        Entry again = EntryJson.Read(EntryJson.ToLine(entry), out _)!;
        Assert.Equal(EntryJson.ToLine(entry), EntryJson.ToLine(again));
        if (recorded.Fact is not UnknownFact)
        {
            (string kind, _, byte[] body) = FactKinds.Write(recorded.Fact);
            Assert.Equal(entry.Kind, kind);
            Assert.NotEmpty(body);
        }
    }

    private static async Task ReadAsync(byte[] file, string which)
    {
        long before = GC.GetAllocatedBytesForCurrentThread();
        try
        {
            ArchiveReading reading = await Archives.ReadAsync(file);
            foreach (ArchiveBlob blob in reading.Blobs(evenIfBroken: true))
            {
                Assert.NotEmpty(blob.Sha256);
            }

            await foreach (Entry entry in reading.EntriesAsync(evenIfBroken: true, TestContext.Current.CancellationToken))
            {
                Assert.Empty(EntryRules.Problems(entry));
            }
        }
        catch (Exception fault)
        {
            Assert.Fail($"{which}: {Convert.ToBase64String(file)}\n{fault}");
        }

        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 8_000_000);
    }

    private static void Within(long bytes, string which, byte[] input, Action action)
    {
        long before = GC.GetAllocatedBytesForCurrentThread();
        try
        {
            action();
        }
        catch (Exception fault)
        {
            Assert.Fail($"{which}: {Convert.ToBase64String(input)}\n{fault}");
        }

        long taken = GC.GetAllocatedBytesForCurrentThread() - before;
        Assert.True(taken <= bytes, $"{which}: {taken} bytes for an input of {input.Length}");
    }
}
