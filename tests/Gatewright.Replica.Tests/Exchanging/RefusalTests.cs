using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Members;
using Gatewright.Journal.Tests.Replay;
using Gatewright.Journal.Views;
using Gatewright.Replica.Copies;
using Gatewright.Replica.Exchanging;
using Gatewright.Replica.Shelves;
using Gatewright.Replica.Tests.World;

namespace Gatewright.Replica.Tests.Exchanging;

/// <summary>Each code of docs/exchanging-entries.md, and what a device does about it.</summary>
public sealed class RefusalTests(ServerOfTheRun server)
{
    [Fact]
    public async Task What_a_role_does_not_record_is_told_and_is_not_part_of_the_club()
    {
        string club = server.NewClub();
        Phone keeper = await server.PhoneAsync(club, "m-keeper");
        Phone helper = await server.PhoneAsync(club, "m-helper", Role.Helper);
        await keeper.ExchangeAsync();
        await helper.ExchangeAsync();
        await keeper.RecordAsync(club, Said.Hold("cracked pin"));
        await keeper.ShareAsync();
        await helper.ExchangeAsync();
        ClubCopy copy = await helper.ClubAsync(club);
        await helper.RecordAsync(club, new Released("heron", "looks fine"), Said.Hold("knock"));
        Assert.Single(new BoatView(copy.Club, "heron").Holds);

        ExchangeStatus status = await helper.ExchangeAsync();

        Assert.Equal((ExchangePhase.Refused, 0, 1), (status.Phase, status.Unsent, status.Refused));
        OwnEntry refused = Assert.Single(copy.Refused);
        Assert.Equal("not-allowed", refused.Code);
        Assert.Contains("keeper", Assert.Single(refused.Reasons), StringComparison.Ordinal);
        // The boat is held by both: a release that the club did not take releases nothing.
        Assert.Equal(2, new BoatView(copy.Club, "heron").Holds.Count);
        Assert.Contains("looks fine", copy.RefusedAsText(), StringComparison.Ordinal);

        await helper.OpenAsync();
        copy = await helper.ClubAsync(club);
        Assert.Single(copy.Refused);
        await copy.SendAgainAsync(refused.Entry.Id);
        Assert.Equal(ExchangePhase.Refused, (await helper.ExchangeAsync()).Phase);
        await copy.DiscardAsync(refused.Entry.Id);
        Assert.Empty(copy.Refused);
        Assert.Equal(ExchangePhase.Shared, (await helper.ExchangeAsync()).Phase);
        Assert.Equal(ClubPicture.Of(await server.ClubAsync(club)), ClubPicture.Of(copy.Club));
    }

    [Fact]
    public async Task A_retraction_of_what_was_refused_is_refused_with_it()
    {
        string club = server.NewClub();
        Phone helper = await server.PhoneAsync(club, "m-helper", Role.Helper);
        await helper.ExchangeAsync();
        ClubCopy copy = await helper.ClubAsync(club);
        await helper.RecordAsync(club, new Released("heron", "looks fine"));
        await helper.RecordAsync(club, new Retracted(copy.NotShared[0].Entry.Id));

        await helper.ExchangeAsync();

        Assert.Equal(["not-allowed", "not-yet"], copy.Refused.Select(r => r.Code));
    }

    [Fact]
    public async Task An_id_that_the_journal_has_otherwise_is_changed_and_its_retraction_follows()
    {
        string club = server.NewClub();
        Phone phone = await server.PhoneAsync(club, "m-1");
        Phone other = await server.PhoneAsync(club, "m-2");
        await other.ExchangeAsync();
        await other.RecordAsync(club, Said.Hold("theirs"));
        Entry theirs = (await other.ClubAsync(club)).NotShared[0].Entry;
        await other.ShareAsync();
        await phone.Device.JoinAsync(await SessionAsync(phone));
        await phone.RecordAsync(club, Said.Hold("mine"));
        OwnEntry mine = (await phone.ClubAsync(club)).NotShared[0];
        await phone.RecordAsync(club, new Retracted(mine.Entry.Id));
        OwnEntry retraction = (await phone.ClubAsync(club)).NotShared[1];
        await phone.Shelf.ChangeOwnAsync(
            club,
            [
                new(mine.Place, OwnEntryJson.Write(mine with { Entry = DevicePen.Again(mine.Entry, theirs.Id) })),
                new(retraction.Place, OwnEntryJson.Write(retraction with
                {
                    Entry = DevicePen.Again(retraction.Entry, body: FactKinds.Write(new Retracted(theirs.Id)).Body),
                })),
            ],
            []);
        await phone.OpenAsync();

        await phone.ShareAsync();

        Journal.Replay.Club there = await server.ClubAsync(club);
        Assert.Equal(["mine", "theirs"], Said.Holds(there));
        Assert.Equal("theirs", ((Held)Assert.Single(new BoatView(there, "heron").Holds).Fact).Reason);
        Assert.Equal(ClubPicture.Of(there), ClubPicture.Of((await phone.ClubAsync(club)).Club));
    }

    [Fact]
    public async Task What_somebody_else_recorded_on_the_device_waits_for_them()
    {
        string club = server.NewClub();
        Phone first = await server.PhoneAsync(club, "m-1");
        await server.PhoneAsync(club, "m-2");
        await first.ExchangeAsync();
        await first.RecordAsync(club, Said.Hold("of the first"));

        // The second signs in on the first's phone, in another page even: the exchange learns of it by the refusal.
        await first.Network.Visitor.SignInAsync($"m-2.{club}", Gatewright.Server.Tests.Hosting.RunningServer.Password);
        ExchangeStatus status = await first.ExchangeAsync();
        Assert.Equal((ExchangePhase.Refused, 1, 1, 0), (status.Phase, status.Unsent, status.OfOthers, status.Refused));
        Assert.Equal((await first.ClubAsync(club)).NotShared, (await first.ClubAsync(club)).OfOthers);
        await first.RecordAsync(club, Said.Hold("of the second"));
        await first.ExchangeAsync();
        Assert.Equal(["of the second"], Said.Holds(await server.ClubAsync(club)));

        await first.Network.Visitor.SignInAsync($"m-1.{club}", Gatewright.Server.Tests.Hosting.RunningServer.Password);
        first.Exchange.SessionChanged();
        await first.ShareAsync();
        Assert.Equal(["of the first", "of the second"], Said.Holds(await server.ClubAsync(club)));
    }

    [Fact]
    public async Task What_says_what_cannot_be_is_not_recorded()
    {
        string club = server.NewClub();
        Phone phone = await server.PhoneAsync(club, "m-1");
        await phone.ExchangeAsync();

        NotRecordedException told = await Assert.ThrowsAsync<NotRecordedException>(
            () => phone.RecordAsync(club, Said.Hold("sound"), new Held("heron/3", "a gate is not held")));

        Assert.Single(told.Problems);
        Assert.Empty((await phone.ClubAsync(club)).NotShared);
        Assert.Equal(0, (await phone.ClubAsync(club)).Club.Count);
    }

    [Fact]
    public async Task What_no_longer_fits_stays_beside_the_club()
    {
        string club = server.NewClub();
        Phone phone = await server.PhoneAsync(club, "m-1");
        await phone.ExchangeAsync();
        await phone.RecordAsync(club, Said.Hold("kept"));
        await server.Server.WithTablesAsync(async db =>
        {
            db.Memberships.RemoveRange(db.Memberships.Where(m => m.Club == club));
            await db.SaveChangesAsync();
        });

        ExchangeStatus status = await phone.ExchangeAsync();

        Assert.Equal((ExchangePhase.Refused, 1, 1), (status.Phase, status.Unsent, status.OfOthers));
        Assert.Equal(ClubHome.Left, Assert.Single(phone.Device.Clubs).Home);
        ClubCopy copy = await phone.ClubAsync(club);
        Assert.Equal(["kept"], Said.Holds(copy.Club));
        Assert.Contains("kept", copy.UnsharedAsText(), StringComparison.Ordinal);

        await copy.DiscardAsync(Assert.Single(copy.OfOthers).Entry.Id);

        Assert.Empty(Said.Holds(copy.Club));
        Assert.Equal((ExchangePhase.Shared, 0), ((await phone.ExchangeAsync()).Phase, phone.Status.OfOthers));
    }

    private static async Task<SessionAnswer> SessionAsync(Phone phone)
    {
        Gatewright.Server.Accounts.Session session = await phone.Network.Visitor.SessionAsync();
        return new(session.Account, session.DisplayName, [.. session.Clubs.Select(c => new SessionClub(c.Club, c.Name, c.Member, c.Role))], session.Antiforgery);
    }
}
