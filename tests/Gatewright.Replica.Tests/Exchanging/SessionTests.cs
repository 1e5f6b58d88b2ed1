using System.Net;
using Gatewright.Replica.Copies;
using Gatewright.Replica.Exchanging;
using Gatewright.Replica.Tests.World;
using Gatewright.Server.Hosting;
using Gatewright.Server.Tests.Hosting;

namespace Gatewright.Replica.Tests.Exchanging;

public sealed class SessionTests(ServerOfTheRun server)
{
    [Fact]
    public async Task A_stale_token_is_renewed()
    {
        string club = server.NewClub();
        Phone phone = await server.PhoneAsync(club, "m-1");
        await phone.ShareAsync();
        await phone.RecordAsync(club, Said.Hold("a"));
        Cookie cookie = Assert.Single(phone.Network.Visitor.Cookies.GetAllCookies(), c => c.Name == CookieNames.Antiforgery);
        cookie.Expired = true;
        phone.Network.Asked.Clear();
        await phone.ShareAsync(tries: 0);

        Assert.Contains("GET /api/session", phone.Network.Asked);
        Assert.Equal(["a"], Said.Holds(await server.ClubAsync(club)));
    }

    [Fact]
    public async Task Signed_out_everything_is_kept_and_goes_on_after_signing_in()
    {
        string club = server.NewClub();
        Phone phone = await server.PhoneAsync(club, "m-1");
        await phone.ShareAsync();
        await phone.Network.Visitor.SendAsync(HttpMethod.Delete, "/api/session");
        await phone.RecordAsync(club, Said.Hold("a"));

        ExchangeStatus status = await phone.ExchangeAsync();

        Assert.Equal((ExchangePhase.SignedOut, 1), (status.Phase, status.Unsent));
        await phone.RecordAsync(club, Said.Hold("b"));
        Assert.Equal((ExchangePhase.SignedOut, 2), (phone.Status.Phase, phone.Status.Unsent));
        await phone.OpenAsync();
        Assert.Equal(["a", "b"], Said.Holds((await phone.ClubAsync(club)).Club));
        await phone.Network.Visitor.SessionAsync();
        await phone.Network.Visitor.SignInAsync($"m-1.{club}", RunningServer.Password);
        phone.Exchange.SessionChanged();
        await phone.ShareAsync(tries: 0);
        Assert.Equal(["a", "b"], Said.Holds(await server.ClubAsync(club)));
    }

    [Fact]
    public async Task Two_that_ask_at_once_have_one_exchange_after_the_other()
    {
        string club = server.NewClub();
        Phone phone = await server.PhoneAsync(club, "m-1");
        await phone.ExchangeAsync();
        ClubCopy copy = await phone.ClubAsync(club);
        Task<ExchangeStatus> first = phone.ExchangeAsync();
        await copy.RecordAsync(Said.Hold("meanwhile"));
        Task<ExchangeStatus> second = phone.ExchangeAsync();

        await Task.WhenAll(first, second);

        Assert.Equal(ExchangePhase.Shared, phone.Status.Phase);
        Assert.Equal(["meanwhile"], Said.Holds(await server.ClubAsync(club)));
    }
}
