using Gatewright.Replica.Shelves;

namespace Gatewright.Replica.Tests.Shelves;

/// <summary>What every shelf promises, tried on the one in memory.</summary>
public sealed class ShelfTests
{
    private const string Club = "c1";

    private readonly MemoryShelf _shelf = new();

    [Fact]
    public async Task The_device_has_one_id_for_ever()
    {
        Assert.Equal("d1", (await _shelf.OpenAsync("d1")).Device);
        Assert.Equal("d1", (await _shelf.OpenAsync("d2")).Device);
    }

    [Fact]
    public async Task A_block_goes_only_where_it_follows()
    {
        await HoldAsync();
        await _shelf.AddOwnAsync(Club, ["own"]);
        Assert.True(await _shelf.AppendAsync(Club, new(0, 3, "first\n"u8.ToArray()), []));
        Assert.False(await _shelf.AppendAsync(Club, new(0, 2, "again\n"u8.ToArray()), [1]));
        Assert.False(await _shelf.AppendAsync(Club, new(4, 5, "gap\n"u8.ToArray()), [1]));

        KeptClub kept = await _shelf.ReadAsync(Club, ReadFrom.Beginning);

        Assert.Equal(3, kept.Held!.Pulled);
        Assert.Equal("first\n", Text(Assert.Single(kept.Blocks)));
        Assert.Single(kept.Own);
        Assert.True(await _shelf.AppendAsync(Club, new(3, 4, "second\n"u8.ToArray()), [1]));
        Assert.Empty((await _shelf.ReadAsync(Club, ReadFrom.Beginning)).Own);
    }

    [Fact]
    public async Task Places_grow_and_what_is_gone_stays_gone()
    {
        await HoldAsync();
        Assert.Equal([1, 2], await _shelf.AddOwnAsync(Club, ["a", "b"]));
        await _shelf.ChangeOwnAsync(Club, [new(1, "changed")], [2]);
        await _shelf.ChangeOwnAsync(Club, [new(2, "back again")], []);
        Assert.Equal([3], await _shelf.AddOwnAsync(Club, ["c"]));

        Assert.Equal([new(1, "changed"), new(3, "c")], (await _shelf.ReadAsync(Club, ReadFrom.Beginning)).Own);
    }

    [Fact]
    public async Task A_snapshot_comes_with_what_is_behind_it_and_nothing_else()
    {
        await HoldAsync();
        await _shelf.AddOwnAsync(Club, ["a", "b"]);
        await _shelf.AppendAsync(Club, new(0, 3, "first\n"u8.ToArray()), []);
        await _shelf.PutSnapshotAsync(Club, new(3, 1, "snapshot"u8.ToArray()));
        await _shelf.AppendAsync(Club, new(3, 4, "second\n"u8.ToArray()), []);

        KeptClub kept = await _shelf.ReadAsync(Club, ReadFrom.Snapshot);
        Assert.Equal(3, kept.Snapshot!.Number);
        Assert.Equal("second\n", Text(Assert.Single(kept.Blocks)));
        Assert.Equal([new(2, "b")], kept.Own);
        KeptClub whole = await _shelf.ReadAsync(Club, ReadFrom.Beginning);
        Assert.Equal((null, 2, 2), (whole.Snapshot, whole.Blocks.Count, whole.Own.Count));
        KeptClub tail = await _shelf.ReadAsync(Club, new(4, 1, false));
        Assert.Equal((0, 1), (tail.Blocks.Count, tail.Own.Count));
    }

    [Fact]
    public async Task What_is_newly_known_of_a_club_leaves_its_number()
    {
        await HoldAsync();
        await _shelf.AppendAsync(Club, new(0, 3, "first\n"u8.ToArray()), []);
        await _shelf.HoldAsync(new(Club, "Other name", "m2", "coach", ClubHome.Left));

        Assert.Equal([new(Club, "Other name", "m2", "coach", ClubHome.Left, 3)], (await _shelf.OpenAsync("d1")).Clubs);
    }

    [Fact]
    public async Task Begun_anew_a_club_keeps_its_own()
    {
        await HoldAsync();
        await _shelf.AddOwnAsync(Club, ["a"]);
        await _shelf.AppendAsync(Club, new(0, 3, "first\n"u8.ToArray()), []);
        await _shelf.PutSnapshotAsync(Club, new(3, 0, "snapshot"u8.ToArray()));
        await _shelf.StartOverAsync(Club, ["b"]);

        KeptClub kept = await _shelf.ReadAsync(Club, ReadFrom.Snapshot);

        Assert.Equal((0, null, 0), (kept.Held!.Pulled, kept.Snapshot, kept.Blocks.Count));
        Assert.Equal(["a", "b"], kept.Own.Select(o => o.Text));
    }

    [Fact]
    public async Task Begun_anew_a_club_has_its_pictures_to_send()
    {
        await HoldAsync();
        await _shelf.PutPhotoAsync(Club, new("a", "image/jpeg", new byte[] { 1, 2 }, IsUnsent: false));

        await _shelf.StartOverAsync(Club, []);

        Assert.Equal(new PhotoThere(IsUnsent: true, Bytes: 2), (await _shelf.PhotosAsync(Club))["a"]);
    }

    [Fact]
    public async Task Pictures_that_are_thrown_away_are_gone_and_the_others_stay()
    {
        await HoldAsync();
        await _shelf.PutPhotoAsync(Club, new("a", "image/jpeg", new byte[] { 1, 2 }, IsUnsent: false));
        await _shelf.PutPhotoAsync(Club, new("b", "image/jpeg", new byte[] { 1, 2 }, IsUnsent: true));

        await _shelf.RemovePhotosAsync(Club, ["a", "c"]);

        Assert.Equal(["b"], (await _shelf.PhotosAsync(Club)).Keys);
    }

    [Fact]
    public async Task A_club_that_is_let_go_of_is_gone()
    {
        await HoldAsync();
        await _shelf.LetGoAsync(Club);

        Assert.Null((await _shelf.ReadAsync(Club, ReadFrom.Snapshot)).Held);
        await Assert.ThrowsAsync<ShelfException>(() => _shelf.AddOwnAsync(Club, ["a"]));
    }

    private Task HoldAsync() => _shelf.HoldAsync(new(Club, "Lock End", "m1", "keeper", ClubHome.Server));

    private static string Text(ReadOnlyMemory<byte> bytes) => System.Text.Encoding.UTF8.GetString(bytes.Span);
}
