using Gatewright.Replica.Copies;
using Gatewright.Replica.Exchanging;
using Gatewright.Replica.Shelves;
using Gatewright.Replica.Tests.World;

namespace Gatewright.Replica.Tests.Copies;

/// <summary>A browser gives only so much room: what is not kept is told as not kept.</summary>
public sealed class FullShelfTests(ServerOfTheRun server)
{
    [Fact]
    public async Task What_there_is_no_room_for_is_not_shown_as_recorded()
    {
        string club = server.NewClub();
        Phone phone = await server.PhoneAsync(club, "m-1");
        await phone.ExchangeAsync();
        await phone.RecordAsync(club, Said.Hold("kept"));
        ClubCopy copy = await phone.ClubAsync(club);
        Journal.Replay.Club before = copy.Club;
        phone.Shelf.IsFull = true;

        ShelfException told = await Assert.ThrowsAsync<ShelfException>(() => copy.RecordAsync(Said.Hold("lost")));

        Assert.Equal(ShelfFault.Full, told.Fault);
        Assert.Same(before, copy.Club);
        Assert.Single(copy.NotShared);
        phone.Shelf.IsFull = false;
        await copy.RecordAsync(Said.Hold("after"));
        await phone.ShareAsync();
        Assert.Equal(["after", "kept"], Said.Holds(await server.ClubAsync(club)));
    }

    [Fact]
    public async Task An_exchange_that_cannot_keep_what_it_gets_says_so_and_goes_on_later()
    {
        string club = server.NewClub();
        Phone phone = await server.PhoneAsync(club, "m-1");
        Phone other = await server.PhoneAsync(club, "m-2");
        await other.ExchangeAsync();
        await phone.ExchangeAsync();
        await other.RecordAsync(club, Said.Hold("theirs"));
        await other.ShareAsync();
        phone.Shelf.IsFull = true;

        ExchangeStatus status = await phone.ExchangeAsync();

        Assert.Equal((ExchangePhase.Waiting, "There is no more room on this device."), (status.Phase, status.Trouble));
        Assert.Equal((ShelfFault.Full, null), (status.Shelf, status.Server));
        phone.Shelf.IsFull = false;
        await phone.ShareAsync(tries: 0);
        Assert.Equal(["theirs"], Said.Holds((await phone.ClubAsync(club)).Club));
    }
}
