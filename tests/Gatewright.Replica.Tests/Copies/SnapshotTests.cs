using Gatewright.Journal.Tests.Replay;
using Gatewright.Replica.Copies;
using Gatewright.Replica.Shelves;
using Gatewright.Replica.Tests.World;

namespace Gatewright.Replica.Tests.Copies;

public sealed class SnapshotTests(ServerOfTheRun server)
{
    private const int Many = 250;

    [Fact]
    public async Task A_club_opens_from_its_snapshot_and_what_came_after_it()
    {
        string club = server.NewClub();
        Phone phone = await FilledAsync(club);
        await (await phone.ClubAsync(club)).RestAsync(isIdle: true);
        await phone.RecordAsync(club, Said.Hold("after"));
        await phone.ShareAsync();
        await phone.RecordAsync(club, Said.Hold("unsent"));
        string before = ClubPicture.Of((await phone.ClubAsync(club)).Club);

        KeptClub kept = await phone.Shelf.ReadAsync(club, ReadFrom.Snapshot);
        Assert.Equal(Many, kept.Snapshot!.Number);
        Assert.Single(kept.Blocks);
        await phone.OpenAsync();

        ClubCopy opened = await phone.ClubAsync(club);
        Assert.Equal(before, ClubPicture.Of(opened.Club));
        Assert.Equal(Many + 1, opened.Number);

        // One call opened it, after the one that opened the shelf.
        Assert.Equal(2, phone.Shelf.Calls);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(100)]
    public async Task A_snapshot_that_is_damaged_is_done_without(int at)
    {
        string club = server.NewClub();
        Phone phone = await FilledAsync(club);
        await (await phone.ClubAsync(club)).RestAsync(isIdle: true);
        string before = ClubPicture.Of((await phone.ClubAsync(club)).Club);
        KeptSnapshot good = (await phone.Shelf.ReadAsync(club, ReadFrom.Snapshot)).Snapshot!;
        byte[] bytes = good.Bytes.ToArray();
        bytes[at] ^= 1;
        await phone.Shelf.PutSnapshotAsync(club, good with { Bytes = bytes });

        await phone.OpenAsync();

        Assert.Equal(before, ClubPicture.Of((await phone.ClubAsync(club)).Club));
    }

    [Fact]
    public async Task None_is_written_for_a_few_entries()
    {
        string club = server.NewClub();
        Phone phone = await FilledAsync(club);
        await (await phone.ClubAsync(club)).RestAsync();

        Assert.Null((await phone.Shelf.ReadAsync(club, ReadFrom.Snapshot)).Snapshot);
    }

    private async Task<Phone> FilledAsync(string club)
    {
        Phone phone = await server.PhoneAsync(club, "m-1");
        await phone.ExchangeAsync();
        await phone.RecordAsync(club, [.. Enumerable.Range(0, Many).Select(i => Said.Hold($"{i}"))]);
        await phone.ShareAsync();
        return phone;
    }
}
