using Gatewright.Journal.Tests.Replay;
using Gatewright.Replica.Copies;
using Gatewright.Replica.Exchanging;
using Gatewright.Replica.Tests.World;

namespace Gatewright.Replica.Tests.Copies;

/// <summary>Two pages of one browser, over one shelf.</summary>
public sealed class PagesTests(ServerOfTheRun server)
{
    [Fact]
    public async Task One_takes_up_what_the_other_recorded_and_sends_it()
    {
        string club = server.NewClub();
        Phone phone = await server.PhoneAsync(club, "m-1");
        await phone.ExchangeAsync();
        ClubCopy first = await phone.ClubAsync(club);
        (Device device, _) = await phone.PageAsync();
        ClubCopy second = await device.ClubAsync(club);
        Assert.Equal(phone.Device.Id, device.Id);
        await second.RecordAsync(Said.Hold("of the second"));
        await first.RecordAsync(Said.Hold("of the first"));
        int changes = 0;
        first.Changed += _ => changes++;

        await first.LookAgainAsync();

        Assert.Equal(1, changes);
        Assert.Equal(["of the first", "of the second"], Said.Holds(first.Club));
        await phone.ShareAsync(tries: 0);
        await second.LookAgainAsync();
        Assert.Empty(second.NotShared);
        Assert.Equal(ClubPicture.Of(await server.ClubAsync(club)), ClubPicture.Of(second.Club));
    }

    [Fact]
    public async Task What_one_let_go_of_the_other_records_nothing_in()
    {
        Phone phone = await server.PhoneAsync(server.NewClub(), "m-1");
        ClubCopy first = await phone.Device.StartClubAsync("Lock End");
        (Device second, _) = await phone.PageAsync();
        await second.LetGoAsync(first.Held.Club);

        await Assert.ThrowsAsync<Gatewright.Replica.Shelves.ShelfException>(() => first.RecordAsync(Said.Hold("nowhere")));
    }

    [Fact]
    public async Task Both_exchanging_at_once_do_no_harm()
    {
        string club = server.NewClub();
        Phone phone = await server.PhoneAsync(club, "m-1");
        await phone.ExchangeAsync();
        (Device device, Exchange exchange) = await phone.PageAsync();
        ClubCopy[] copies = [await phone.ClubAsync(club), await device.ClubAsync(club)];
        for (int i = 0; i < 5; i++)
        {
            await copies[0].RecordAsync(Said.Hold($"a{i}"));
            await copies[1].RecordAsync(Said.Hold($"b{i}"));
            await copies[i % 2].LookAgainAsync();
            await Task.WhenAll(phone.ExchangeAsync(), exchange.RunAsync(TestContext.Current.CancellationToken));
        }

        await phone.ShareAsync();
        Assert.Equal(10, Said.Holds(await server.ClubAsync(club)).Length);
        await Task.WhenAll(copies.Select(c => c.LookAgainAsync()));
        Assert.All(copies, c => Assert.Equal(10, c.Number));
        await phone.OpenAsync();
        Assert.Equal(ClubPicture.Of(await server.ClubAsync(club)), ClubPicture.Of((await phone.ClubAsync(club)).Club));
    }
}
