using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Tests.Replay;
using Gatewright.Replica.Exchanging;
using Gatewright.Replica.Shelves;
using Gatewright.Replica.Tests.World;

namespace Gatewright.Replica.Tests.Exchanging;

public sealed class ConvergingTests(ServerOfTheRun server)
{
    [Fact]
    public async Task Two_that_recorded_without_a_network_come_to_the_same_club()
    {
        string club = server.NewClub();
        Phone[] phones = [await server.PhoneAsync(club, "m-1"), await server.PhoneAsync(club, "m-2")];
        foreach (Phone phone in phones)
        {
            await phone.ExchangeAsync();
            phone.Network.IsOff = true;
        }

        for (int i = 0; i < 5; i++)
        {
            await phones[0].RecordAsync(club, Said.Hold($"a{i}"), Said.Name($"a{i}"));
            await phones[1].RecordAsync(club, Said.Name($"b{i}"));
        }

        Guid first = (await phones[0].ClubAsync(club)).NotShared[0].Entry.Id;
        await phones[0].RecordAsync(club, new Retracted(first, "mistaken"));
        Assert.Equal(ExchangePhase.Waiting, (await phones[0].ExchangeAsync()).Phase);
        Assert.Equal(11, phones[0].Status.Unsent);

        foreach (Phone phone in phones)
        {
            phone.Network.IsOff = false;
            await phone.ShareAsync();
        }

        await phones[0].ShareAsync();
        Club there = await server.ClubAsync(club);
        Assert.Equal(16, there.Count);
        Assert.Equal(ClubPicture.Of(there), ClubPicture.Of((await phones[0].ClubAsync(club)).Club));
        Assert.Equal(ClubPicture.Of(there), ClubPicture.Of((await phones[1].ClubAsync(club)).Club));
        Assert.NotNull(phones[0].Status.LastInTouch);
    }

    [Fact]
    public async Task The_clubs_of_whoever_is_signed_in_are_taken_up()
    {
        string club = server.NewClub();
        Phone phone = await server.PhoneAsync(club, "m-1");
        Assert.Empty(phone.Device.Clubs);

        await phone.ExchangeAsync();

        HeldClub held = Assert.Single(phone.Device.Clubs);
        Assert.Equal((club, "m-1", "keeper", ClubHome.Server), (held.Club, held.Member, held.Role, held.Home));
        Assert.Equal($"m-1.{club}", phone.Exchange.Session?.Account);
    }

    [Fact]
    public async Task Many_entries_go_in_several_requests()
    {
        string club = server.NewClub();
        Phone phone = await server.PhoneAsync(club, "m-1");
        await phone.ExchangeAsync();
        await phone.RecordAsync(club, [.. Enumerable.Range(0, 5200).Select(i => Said.Hold($"{i}"))]);
        phone.Network.Asked.Clear();

        await phone.ShareAsync(tries: 0);

        Assert.Equal(5200, (await server.ClubAsync(club)).Count);
        Assert.InRange(phone.Network.Asked.Count(a => a.StartsWith("POST", StringComparison.Ordinal)), 2, 3);
        Phone other = await server.PhoneAsync(club, "m-2");
        await other.ShareAsync(tries: 0);
        Assert.Equal(5200, (await other.ClubAsync(club)).Number);
    }
}
