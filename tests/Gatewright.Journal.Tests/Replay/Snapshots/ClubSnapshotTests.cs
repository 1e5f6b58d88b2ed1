using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Replay.Snapshots;

namespace Gatewright.Journal.Tests.Replay.Snapshots;

public sealed class ClubSnapshotTests
{
    [Property(MaxTest = 400)]
    public Property Snapshot_and_tail_give_what_the_whole_journal_gives() => Prop.ForAll(
        (from entries in Journals.Any
         from cut in Gen.Choose(0, entries.Length)
         select (entries, cut)).ToArbitrary(),
        given =>
        {
            (Club opened, long number) = Again(Whole(given.entries[..given.cut]), given.cut);
            return number == given.cut
                && ClubPicture.Of(opened.With(given.entries[given.cut..])) == ClubPicture.Of(Whole(given.entries));
        });

    [Property(MaxTest = 200)]
    public Property A_snapshot_does_not_depend_on_the_order_in_which_entries_came() => Prop.ForAll(
        (from entries in Journals.Any
         from shuffled in Gen.Shuffle(entries)
         select (entries, shuffled)).ToArbitrary(),
        given => Bytes(Whole(given.entries)).AsSpan().SequenceEqual(Bytes(Whole(given.shuffled))));

    [Fact]
    public void Every_part_of_an_entry_comes_back_to_the_byte()
    {
        Recorded unknown = Recorded.Of(new()
        {
            Id = Journals.Id(7),
            Club = Journals.Club,
            Member = "m2",
            Device = "tablet",
            Time = new(EntryLimits.LatestMilliseconds, int.MaxValue),
            Kind = "from-tomorrow",
            Version = int.MaxValue,
            Body = """{ "später" : [1, 2.50] }"""u8.ToArray(),
        });
        Club club = Whole([unknown, Journals.Entry(1, new Retracted(Journals.Id(7)), 5)]);

        (Club opened, _) = Again(club, 2);

        Assert.Equal(club.All().Select(r => EntryJson.ToLine(r.Entry)), opened.All().Select(r => EntryJson.ToLine(r.Entry)));
        Assert.Equal(club.All().Select(r => r.Fact), opened.All().Select(r => r.Fact));
        Assert.Equal(club.Subjects.Order(BySubject), opened.Subjects.Order(BySubject));
    }

    [Fact]
    public void A_snapshot_of_many_blocks_comes_back_whole()
    {
        // Notes of 2,000 characters: some 2.4 MB, so three blocks.
        Club club = Whole(Enumerable.Range(0, 1_200).Select(i => Journals.Entry(i, new Noted("boat", "heron", new string('x', 2_000)), i)));

        (Club opened, long number) = Again(club, 1_200);

        Assert.Equal((1_200, 1_200), (opened.Count, number));
        Assert.Equal(ClubPicture.Of(club), ClubPicture.Of(opened));
        Assert.True(Bytes(club).Length > 2_000_000);
    }

    [Fact]
    public void No_byte_can_be_changed_and_none_left_out_unseen()
    {
        byte[] whole = Bytes(Whole([Journals.Entry(1, Journals.Set("heron", "name", "Heron"), 10), Journals.Entry(2, new Held("heron", "knocked"), 20)]));
        for (int i = 0; i < whole.Length; i++)
        {
            byte[] damaged = [.. whole];
            damaged[i] ^= 0x10;
            Assert.Throws<SnapshotException>(() => ClubSnapshot.Read(new MemoryStream(damaged)));
            Assert.Throws<SnapshotException>(() => ClubSnapshot.Read(new MemoryStream(whole, 0, i)));
        }
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task A_snapshot_read_a_little_at_a_time_is_the_same_club(bool isVouched)
    {
        Club club = Whole(Enumerable.Range(0, 1_200).Select(i => Journals.Entry(i, new Noted("boat", "heron", new string('x', 2_000)), i)));
        int breaths = 0;

        (Club opened, _) = await ClubSnapshot.ReadAsync(new MemoryStream(Bytes(club)), isVouched, () =>
        {
            breaths++;
            return ValueTask.CompletedTask;
        });

        Assert.Equal(ClubPicture.Of(club), ClubPicture.Of(opened));
        Assert.True(breaths > 50);
    }

    [Fact]
    public async Task What_nobody_vouches_for_is_looked_at_to_the_byte()
    {
        byte[] whole = Bytes(Whole([Journals.Entry(1, Journals.Set("heron", "name", "Heron"), 10)]));
        whole[^50] ^= 0x10;

        await Assert.ThrowsAsync<SnapshotException>(() => ClubSnapshot.ReadAsync(new MemoryStream(whole), false, () => ValueTask.CompletedTask));
    }

    [Fact]
    public void A_snapshot_of_another_version_is_refused_by_name()
    {
        byte[] whole = Bytes(Club.Empty(Journals.Club));
        whole["gatewright.snapshot/".Length]++;
        Assert.Equal(
            "The snapshot is of another program or another version of it: replay the journal.",
            Assert.Throws<SnapshotException>(() => ClubSnapshot.Read(new MemoryStream(whole))).Message);
    }

    private static readonly IComparer<Subject> BySubject = Comparer<Subject>.Create((a, b) => string.CompareOrdinal($"{a}", $"{b}"));

    internal static byte[] Bytes(Club club, long number = 0)
    {
        using var stream = new MemoryStream();
        ClubSnapshot.Write(club, number, stream);
        return stream.ToArray();
    }

    private static (Club Club, long Number) Again(Club club, long number) => ClubSnapshot.Read(new MemoryStream(Bytes(club, number)));

    private static Club Whole(IEnumerable<Recorded> entries) => Club.Empty(Journals.Club).With(entries);
}
