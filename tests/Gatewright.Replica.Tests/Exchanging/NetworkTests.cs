using System.IO.Compression;
using System.Net;
using Gatewright.Journal.Tests.Replay;
using Gatewright.Replica.Exchanging;
using Gatewright.Replica.Tests.World;
using Gatewright.Server.Tests.Hosting;

namespace Gatewright.Replica.Tests.Exchanging;

public sealed class NetworkTests(ServerOfTheRun server)
{
    [Theory]
    [InlineData(nameof(Fate.Lost))]
    [InlineData(nameof(Fate.AnswerLost))]
    [InlineData(nameof(Fate.AnswerCut))]
    [InlineData(nameof(Fate.Doubled))]
    public async Task Whatever_befalls_a_request_each_entry_arrives_once(string fate)
    {
        string club = server.NewClub();
        Phone phone = await server.PhoneAsync(club, "m-1");
        await phone.ShareAsync();
        for (int i = 0; i < 6; i++)
        {
            await phone.RecordAsync(club, Said.Hold($"{i}"));

            // The first request that comes along in each round fares so, whichever it is.
            int left = i;
            phone.Network.Fate = _ => left-- == 0 ? Enum.Parse<Fate>(fate) : Fate.Good;
            await phone.ExchangeAsync();
        }

        phone.Network.Fate = _ => Fate.Good;
        await phone.ShareAsync();

        Assert.Equal(["0", "1", "2", "3", "4", "5"], Said.Holds(await server.ClubAsync(club)));
        Assert.Equal(ClubPicture.Of(await server.ClubAsync(club)), ClubPicture.Of((await phone.ClubAsync(club)).Club));
    }

    [Fact]
    public async Task A_page_of_the_network_itself_is_not_taken_for_the_server()
    {
        string club = server.NewClub();
        Phone phone = await server.PhoneAsync(club, "m-1");
        await phone.ShareAsync();
        await phone.RecordAsync(club, Said.Hold("kept"));
        phone.Network.Instead = _ => new(HttpStatusCode.OK) { Content = new StringContent("<html>Sign in to this network</html>", null, "text/html") };

        ExchangeStatus status = await phone.ExchangeAsync();

        Assert.Equal((ExchangePhase.Waiting, 1), (status.Phase, status.Unsent));
        phone.Network.Instead = _ => null;
        await phone.ShareAsync();
        Assert.Equal(["kept"], Said.Holds(await server.ClubAsync(club)));
    }

    [Fact]
    public async Task What_is_too_much_at_once_goes_in_pieces_and_what_is_too_much_alone_is_told()
    {
        string club = server.NewClub();
        Phone phone = await server.PhoneAsync(club, "m-1");
        await phone.ShareAsync();
        await phone.RecordAsync(club, [.. Enumerable.Range(0, 5).Select(i => Said.Hold($"{i}")), Said.Hold(new string('x', 1000))]);
        phone.Network.Instead = r => Unpacked(r).Length > 800 ? new(HttpStatusCode.RequestEntityTooLarge) : null;

        ExchangeStatus status = await phone.ExchangeAsync();

        Assert.Equal((ExchangePhase.Refused, 0, 1), (status.Phase, status.Unsent, status.Refused));
        Assert.Equal("too-large", Assert.Single((await phone.ClubAsync(club)).Refused).Code);
        Assert.Equal(["0", "1", "2", "3", "4"], Said.Holds(await server.ClubAsync(club)));
    }

    [Fact]
    public async Task A_server_that_asks_to_be_left_alone_is_left_alone()
    {
        string club = server.NewClub();
        Phone phone = await server.PhoneAsync(club, "m-1");
        await phone.ShareAsync();
        phone.Network.Instead = _ => new(HttpStatusCode.ServiceUnavailable) { Headers = { RetryAfter = new(TimeSpan.FromMinutes(20)) } };

        ExchangeStatus status = await phone.ExchangeAsync();

        Assert.Equal(ExchangePhase.Waiting, status.Phase);
        Assert.InRange((status.NextTry!.Value - phone.Clock.GetUtcNow()).TotalMinutes, 19.9, 20.1);
    }

    [Fact]
    public async Task Waits_grow_to_five_minutes_and_are_short_again_after_an_answer()
    {
        string club = server.NewClub();
        Phone phone = await server.PhoneAsync(club, "m-1");
        await phone.ShareAsync();
        phone.Network.IsOff = true;
        var waits = new List<double>();
        for (int i = 0; i < 12; i++)
        {
            waits.Add(((await phone.ExchangeAsync()).NextTry!.Value - phone.Clock.GetUtcNow()).TotalSeconds);
        }

        // Half fixed, half drawn: between 1 s and 2 s at first, between 150 s and 300 s at last, give or take the moment
        // since it was drawn.
        Assert.InRange(waits[0], 0.5, 2);
        Assert.InRange(waits[3], 7, 16);
        Assert.All(waits[^3..], w => Assert.InRange(w, 149, 300));
        phone.Network.IsOff = false;
        await phone.ShareAsync();
        phone.Network.IsOff = true;
        Assert.InRange(((await phone.ExchangeAsync()).NextTry!.Value - phone.Clock.GetUtcNow()).TotalSeconds, 0.5, 2);
    }

    [Fact]
    public async Task A_server_that_has_lost_the_end_of_its_journal_gets_it_again()
    {
        string club = server.NewClub();
        Phone phone = await server.PhoneAsync(club, "m-1");
        await phone.ExchangeAsync();
        await phone.RecordAsync(club, Said.Hold("before"), Said.Hold("after"));
        string photo = await phone.Device.AddPhotoAsync(club, Said.Picture("a pin"), "image/png");
        await phone.ShareAsync();

        // Another server that knows the same people, and has nothing of the club: brought back from an old copy.
        await using RunningServer restored = await server.StartAsync();
        Visitor visitor = await restored.MemberAsync(club, "m-1", Gatewright.Journal.Members.Role.Keeper);
        phone.Network.Address = restored.Address;
        foreach (Cookie cookie in visitor.Cookies.GetAllCookies())
        {
            phone.Network.Visitor.Cookies.Add(restored.Address, new Cookie(cookie.Name, cookie.Value));
        }

        phone.Exchange.SessionChanged();
        await phone.ShareAsync();

        Assert.Equal(["after", "before"], Said.Holds(await server.ClubAsync(club, restored)));
        await phone.Device.DiscardPhotosAsync(club, [photo]);
        Assert.Equal(Said.Picture("a pin"), (await phone.PhotoAsync(club, photo))!.Bytes.ToArray());
        await phone.OpenAsync();
        Assert.Equal(ClubPicture.Of(await server.ClubAsync(club, restored)), ClubPicture.Of((await phone.ClubAsync(club)).Club));
    }

    private static byte[] Unpacked(HttpRequestMessage request)
    {
        using var unpacked = new MemoryStream();
        if (request.Content is not null)
        {
            using var gzip = new GZipStream(request.Content.ReadAsStream(), CompressionMode.Decompress, leaveOpen: true);
            gzip.CopyTo(unpacked);
            request.Content.ReadAsStream().Position = 0;
        }

        return unpacked.ToArray();
    }
}
