using Gatewright.Journal.Facts;
using Gatewright.Journal.Members;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Tests.Replay;
using Gatewright.Journal.Views;
using Gatewright.Replica.Copies;
using Gatewright.Replica.Exchanging;
using Gatewright.Replica.Shelves;
using Gatewright.Replica.Tests.World;

namespace Gatewright.Replica.Tests.Copies;

/// <summary>A club that lives on one device, and how it comes to a server.</summary>
public sealed class AloneTests(ServerOfTheRun server)
{
    [Fact]
    public async Task It_needs_no_server_and_opens_as_it_was()
    {
        string unused = server.NewClub();
        Phone phone = await server.PhoneAsync(unused, "m-1");
        string club = (await phone.Device.StartClubAsync("Lock End")).Held.Club;
        await phone.RecordAsync(club, [.. Enumerable.Range(0, 250).Select(i => Said.Hold($"{i}"))]);
        ClubCopy copy = await phone.ClubAsync(club);
        await copy.RestAsync(isIdle: true);
        await phone.RecordAsync(club, Said.Hold("after"));
        string before = ClubPicture.Of(copy.Club);

        await phone.OpenAsync();

        copy = await phone.ClubAsync(club);
        Assert.Equal(before, ClubPicture.Of(copy.Club));
        Assert.Equal("Lock End", ClubSettings.Name(copy.Club));
        Assert.Empty(copy.NotShared);
        Assert.Single((await phone.Shelf.ReadAsync(club, ReadFrom.Snapshot)).Own);
        await phone.RecordAsync(club, Said.Hold("more"));
        Assert.Equal(253, copy.Club.Count);
    }

    /// <summary>The snapshot of one page must have what the other recorded before it.</summary>
    [Fact]
    public async Task A_snapshot_has_what_another_page_recorded()
    {
        Phone phone = await server.PhoneAsync(server.NewClub(), "m-1");
        string club = (await phone.Device.StartClubAsync("Lock End")).Held.Club;
        (Device second, _) = await phone.PageAsync();
        ClubCopy there = await second.ClubAsync(club);
        await phone.RecordAsync(club, [.. Enumerable.Range(0, 250).Select(i => Said.Hold($"{i}"))]);
        await there.RecordAsync(Said.Hold("of the second page"));
        await phone.RecordAsync(club, Said.Hold("last"));

        await (await phone.ClubAsync(club)).RestAsync(isIdle: true);
        await phone.OpenAsync();

        Assert.Equal(253, (await phone.ClubAsync(club)).Club.Count);
        await there.LookAgainAsync();
        Assert.Equal(253, there.Club.Count);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Handed_over_it_is_the_servers_whole(bool dies)
    {
        string club = server.NewClub();
        Phone phone = await server.PhoneAsync(club, "m-1");
        string alone = (await phone.Device.StartClubAsync("Lock End")).Held.Club;
        string photo = await phone.Device.AddPhotoAsync(alone, Said.Picture("a gate"), "image/png");
        await phone.RecordAsync(alone, Said.Hold("a"), Said.Hold("b"), new PhotoTaken(Things.Boat, "heron", photo, 14, "image/png"));
        await phone.RecordAsync(alone, new Retracted((await phone.ClubAsync(alone)).Club.All().First(r => r.Fact is Held).Entry.Id));
        await phone.ExchangeAsync();
        if (dies)
        {
            // After the reading, at the move, whose word is not heard.
            (phone.Shelf.DiesAt, phone.Shelf.DiesAfterwards) = (phone.Shelf.Calls + 2, true);
            await Assert.ThrowsAsync<DeadPageException>(() => phone.Device.HandOverAsync(alone, club));
            await phone.OpenAsync();
        }
        else
        {
            await phone.Device.HandOverAsync(alone, club);
        }

        await phone.ShareAsync();

        Club there = await server.ClubAsync(club);
        Assert.Equal(4, there.Count);
        Assert.All(there.All(), r => Assert.Equal("m-1", r.Entry.Member));
        Assert.Equal("b", ((Held)Assert.Single(new BoatView(there, "heron").Holds).Fact).Reason);
        Assert.Equal(["club-"], phone.Device.Clubs.Select(c => c.Club[..5]));
        Phone other = await server.PhoneAsync(club, "m-2");
        await other.ExchangeAsync();
        Assert.Equal(Said.Picture("a gate"), (await other.PhotoAsync(club, photo))!.Bytes.ToArray());
    }

    [Fact]
    public async Task Settings_stay_behind_when_it_is_handed_over()
    {
        string club = server.NewClub();
        Phone phone = await server.PhoneAsync(club, "m-1");
        await phone.ExchangeAsync();
        await phone.RecordAsync(club, new ThingSet(Things.Settings, "club", new Dictionary<string, string?> { ["name"] = "Weir Side" }));
        string alone = (await phone.Device.StartClubAsync("Lock End")).Held.Club;
        var low = new ThingSet(Things.Settings, "stores", new Dictionary<string, string?> { ["low"] = "9" });
        await phone.RecordAsync(alone, low, Said.Hold("a"));
        Guid set = (await phone.ClubAsync(alone)).Club.All().Last(r => r.Fact is ThingSet).Entry.Id;
        await phone.RecordAsync(alone, new Retracted(set));
        await phone.RecordAsync(alone, new Retracted((await phone.ClubAsync(alone)).Club.All().First(r => r.Fact is Held).Entry.Id));

        await phone.Device.HandOverAsync(alone, club);
        await phone.ShareAsync();

        Club there = await server.ClubAsync(club);
        Assert.Equal("Weir Side", new ThingView(there, Things.Settings, "club")["name"]);
        Assert.DoesNotContain(there.All(), r => r.Fact is ThingSet { Key: "stores" });
        Assert.Empty(new BoatView(there, "heron").Holds);
        Assert.Empty((await phone.ClubAsync(club)).Refused);
        Assert.Equal(3, there.Count);
    }

    [Fact]
    public async Task It_is_handed_over_only_by_a_keeper()
    {
        string club = server.NewClub();
        Phone phone = await server.PhoneAsync(club, "m-1", Role.Helper);
        string alone = (await phone.Device.StartClubAsync("Lock End")).Held.Club;
        await phone.ExchangeAsync();

        await Assert.ThrowsAsync<InvalidOperationException>(() => phone.Device.HandOverAsync(alone, club));
        Assert.Equal(ExchangePhase.Shared, phone.Status.Phase);
    }
}
