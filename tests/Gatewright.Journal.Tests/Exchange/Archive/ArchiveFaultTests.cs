using System.Text;
using Gatewright.Journal.Exchange.Archive;

namespace Gatewright.Journal.Tests.Exchange.Archive;

[Trait(Runs.Name, Runs.Once)]
public sealed class ArchiveFaultTests
{
    [Theory]
    [InlineData("../../etc/passwd", "../../etc/passwd: does not belong in a club's file")]
    [InlineData("blobs/../club.json", "blobs/../club.json: does not belong in a club's file")]
    [InlineData("/entries.jsonl", "/entries.jsonl: does not belong in a club's file")]
    [InlineData("blobs\\00", "blobs\\00: does not belong in a club's file")]
    [InlineData("notes.txt", "notes.txt: does not belong in a club's file")]
    public async Task A_member_of_another_name_is_refused(string name, string problem) =>
        Assert.Equal(problem, await ProblemsAsync(await Archives.WithAsync(name, [1])));

    [Fact]
    public async Task A_member_that_is_there_twice_is_refused()
    {
        byte[] file = await Archives.SmallAsync();
        string[] names = ["README.txt", "entries.jsonl", $"blobs/{Archives.PictureHash}", "blobs.json", "club.json"];
        byte[] twice = Archives.Zip([.. names.Select(n => (n, Archives.Unpacked(file, n))), ("club.json", [])]);
        Assert.Equal("club.json: is there twice", await ProblemsAsync(twice));
    }

    [Theory]
    [InlineData("README.txt")]
    [InlineData("club.json")]
    [InlineData("blobs.json")]
    [InlineData("entries.jsonl")]
    public async Task Each_member_has_to_be_there(string name) =>
        Assert.Contains($"{name}: is missing: the file is not a club's, or not whole", await ProblemsAsync(await Archives.WithAsync(name, null)), StringComparison.Ordinal);

    [Fact]
    public async Task A_photo_that_was_changed_or_lost_is_told()
    {
        string name = $"blobs/{Archives.PictureHash}";
        Assert.StartsWith($"{ShownName(name)}: is damaged: its hash is ", await ProblemsAsync(await Archives.WithAsync(name, [1])), StringComparison.Ordinal);
        Assert.Equal($"{ShownName(name)}: is missing, and blobs.json names it", await ProblemsAsync(await Archives.WithAsync(name, null)));
        Assert.Equal($"{ShownName(name)}: has no media type in blobs.json", await ProblemsAsync(await Archives.WithAsync("blobs.json", "{}"u8.ToArray())));
    }

    [Fact]
    public async Task Every_line_that_is_wrong_is_told_and_nothing_is_handed_on()
    {
        string good = Encoding.UTF8.GetString(Archives.Unpacked(await Archives.SmallAsync(), "entries.jsonl"));
        string first = good.Split('\n')[0];
        string lines = string.Join('\n', first, "{}", first, first.Replace("\"boat\",\"key\":\"heron\"", "\"seat\",\"key\":\"heron\"", StringComparison.Ordinal).Replace("00001\"", "00009\"", StringComparison.Ordinal), "");
        byte[] file = await Archives.WithAsync("entries.jsonl", Encoding.UTF8.GetBytes(lines));

        ArchiveReading reading = await Archives.ReadAsync(file);

        string[] problems = [.. reading.Problems.Select(p => p.ToString())];
        Assert.Contains("entries.jsonl, line 2: \"id\" is missing", problems);
        Assert.Contains("entries.jsonl, line 3: entry 01900000-0000-7000-8000-000000000001 is there twice", problems);
        Assert.Contains("entries.jsonl, line 4: \"key\" is 'heron': give the boat's key, a slash and the seat's number", problems);
        Assert.Contains("entries.jsonl: has 4 entries, and club.json says 2, the last with number 2", problems);
        await Assert.ThrowsAsync<ArchiveException>(async () => await reading.EntriesAsync(cancellation: Cancellation).ToListAsync(Cancellation));
        Assert.Throws<ArchiveException>(() => reading.Blobs());
        Assert.Equal(2, (await reading.EntriesAsync(evenIfBroken: true, Cancellation).ToListAsync(Cancellation)).Count);
    }

    [Fact]
    public async Task One_changed_letter_of_an_entry_is_noticed()
    {
        string changed = Encoding.UTF8.GetString(Archives.Unpacked(await Archives.SmallAsync(), "entries.jsonl")).Replace("knocked", "cracked", StringComparison.Ordinal);
        Assert.StartsWith("entries.jsonl: is not what was written: its hash is ", await ProblemsAsync(await Archives.WithAsync("entries.jsonl", Encoding.UTF8.GetBytes(changed))), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Another_format_and_another_clubs_entries_are_told()
    {
        Assert.Equal(
            "club.json: \"format\" is 'gatewright.club/2': expected gatewright.club/1; use the program that wrote the file, or a later one",
            await ProblemsAsync(await Archives.WithAsync("club.json", """{"format":"gatewright.club/2"}"""u8.ToArray())));
        string head = Encoding.UTF8.GetString(Archives.Unpacked(await Archives.SmallAsync(), "club.json"));
        Assert.Equal(
            "entries.jsonl, line 1: an entry of club club, and the file is of other; entries.jsonl, line 2: an entry of club club, and the file is of other",
            await ProblemsAsync(await Archives.WithAsync("club.json", Encoding.UTF8.GetBytes(head.Replace("\"club\": \"club\"", "\"club\": \"other\"", StringComparison.Ordinal)))));
    }

    [Fact]
    public async Task A_file_cut_short_anywhere_is_refused()
    {
        byte[] file = await Archives.SmallAsync();
        for (int length = 0; length < file.Length; length++)
        {
            Assert.NotEmpty((await Archives.ReadAsync(file[..length])).Problems);
        }
    }

    /// <summary>200 MB of zeros pack into 200 kB: what comes is counted, whatever the file says.</summary>
    [Theory]
    [InlineData("README.txt", "README.txt: has more than 65536 bytes, the most that is taken")]
    [InlineData("entries.jsonl", "entries.jsonl: a line of more than 69632 bytes")]
    public async Task A_member_that_unpacks_without_end_is_left_early(string name, string problem)
    {
        byte[] file = await Archives.WithAsync(name, new byte[200_000_000]);
        long before = GC.GetAllocatedBytesForCurrentThread();
        Assert.Contains(problem, await ProblemsAsync(file), StringComparison.Ordinal);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 20_000_000);
    }

    [Fact]
    public async Task Short_lines_without_end_are_left_where_a_file_of_that_size_should_end()
    {
        byte[] lines = new byte[1_000_000];
        lines.AsSpan().Fill((byte)'\n');
        byte[] file = await Archives.WithAsync("entries.jsonl", lines);
        ArchiveLimits limits = ArchiveLimits.Default with { Problems = 2_000_000, FreeBytes = 10_000 };
        Assert.InRange(file.Length, 1_000, 8_000);
        Assert.Contains((await Archives.ReadAsync(file, limits)).Problems, p => $"{p}" == "entries.jsonl: unpacks to far more than a club's file of its size can hold");
    }

    [Fact]
    public async Task Each_limit_holds()
    {
        byte[] file = await Archives.SmallAsync();
        Assert.Equal("entries.jsonl: has more than 1 entries, the most that is taken", await ProblemsAsync(file, ArchiveLimits.Default with { Entries = 1 }));
        Assert.Equal("blobs/: has more than 0 photos, the most that is taken", await ProblemsAsync(file, ArchiveLimits.Default with { Blobs = 0 }));
        Assert.Equal($"{ShownName($"blobs/{Archives.PictureHash}")}: has more than 5 bytes, the most that is taken", await ProblemsAsync(file, ArchiveLimits.Default with { BlobBytes = 5 }));
        Assert.Contains("unpacks to far more than", await ProblemsAsync(file, ArchiveLimits.Default with { TotalBytes = 100 }), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Of_many_problems_the_first_are_told_and_the_others_counted()
    {
        byte[] file = await Archives.WithAsync("entries.jsonl", Encoding.UTF8.GetBytes(string.Concat(Enumerable.Repeat("[]\n", 1_000))));
        ArchiveReading reading = await Archives.ReadAsync(file);
        Assert.Equal((100, 901), (reading.Problems.Count, reading.ProblemsBeyond));
    }

    [Fact]
    public async Task A_list_of_members_without_end_is_not_opened()
    {
        byte[] file = Archives.Zip(Enumerable.Range(0, 2_000).Select(i => ($"blobs/{i:x64}", Array.Empty<byte>())));
        Assert.StartsWith(
            "The file has a list of members of ", await ProblemsAsync(file, ArchiveLimits.Default with { Blobs = 10 }), StringComparison.Ordinal);
    }

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    private static string ShownName(string name) => name[..40] + "…";

    private static async Task<string> ProblemsAsync(byte[] file, ArchiveLimits? limits = null) =>
        string.Join("; ", (await Archives.ReadAsync(file, limits)).Problems);
}
