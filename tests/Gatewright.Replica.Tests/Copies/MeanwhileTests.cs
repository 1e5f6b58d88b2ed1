using Gatewright.Journal.Replay;
using Gatewright.Replica.Copies;
using Gatewright.Replica.Shelves;
using Gatewright.Replica.Tests.World;

namespace Gatewright.Replica.Tests.Copies;

/// <summary>What is worked out while the shelf takes what was recorded.</summary>
public sealed class MeanwhileTests(ServerOfTheRun server)
{
    [Fact]
    public async Task It_gets_the_club_that_the_copy_then_has_and_not_before_the_shelf_has_it()
    {
        (Phone phone, ClubCopy copy) = await StartAsync();
        Club before = copy.Club;
        Club? foreseen = null;

        await copy.RecordAsync([Said.Hold("knock")], next =>
        {
            foreseen = next;
            Assert.Same(before, copy.Club);
        });

        Assert.Same(copy.Club, foreseen);
        Assert.Equal(["knock"], Said.Holds(foreseen!));
        await phone.ShareAsync();
        Assert.Equal(["knock"], Said.Holds(await server.ClubAsync(copy.Held.Club)));
    }

    [Fact]
    public async Task Where_the_shelf_refuses_what_was_foreseen_never_is()
    {
        (Phone phone, ClubCopy copy) = await StartAsync();
        Club before = copy.Club;
        phone.Shelf.IsFull = true;
        bool isTold = false;

        await Assert.ThrowsAsync<ShelfException>(() => copy.RecordAsync([Said.Hold("lost")], _ => isTold = true));

        Assert.True(isTold);
        Assert.Same(before, copy.Club);
    }

    [Fact]
    public async Task Where_it_fails_itself_what_was_recorded_stays_recorded()
    {
        (Phone phone, ClubCopy copy) = await StartAsync();

        await Assert.ThrowsAsync<FormatException>(() => copy.RecordAsync([Said.Hold("knock")], _ => throw new FormatException()));

        Assert.Equal(["knock"], Said.Holds(copy.Club));
        await phone.ShareAsync();
        Assert.Equal(["knock"], Said.Holds(await server.ClubAsync(copy.Held.Club)));
    }

    private async Task<(Phone Phone, ClubCopy Copy)> StartAsync()
    {
        string club = server.NewClub();
        Phone phone = await server.PhoneAsync(club, "m-1");
        await phone.ExchangeAsync();
        return (phone, await phone.ClubAsync(club));
    }
}
