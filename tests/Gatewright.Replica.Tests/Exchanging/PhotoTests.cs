using Gatewright.Replica.Exchanging;
using Gatewright.Replica.Tests.World;

namespace Gatewright.Replica.Tests.Exchanging;

public sealed class PhotoTests(ServerOfTheRun server)
{
    [Fact]
    public async Task A_picture_goes_up_by_its_hash_and_comes_down_once()
    {
        string club = server.NewClub();
        Phone phone = await server.PhoneAsync(club, "m-1");
        Phone other = await server.PhoneAsync(club, "m-2");
        await phone.ExchangeAsync();
        await other.ExchangeAsync();
        string photo = await phone.Device.AddPhotoAsync(club, Said.Picture("a pin"), "image/png");
        phone.Network.Fate = r => r.Method == HttpMethod.Put ? Fate.AnswerLost : Fate.Good;
        Assert.Equal(ExchangePhase.Waiting, (await phone.ExchangeAsync()).Phase);
        phone.Network.Fate = _ => Fate.Good;
        await phone.ShareAsync();

        Assert.Equal(Said.Picture("a pin"), (await other.PhotoAsync(club, photo))!.Bytes.ToArray());
        other.Network.IsOff = true;
        Assert.Equal("image/png", (await other.PhotoAsync(club, photo))!.MediaType);
        Assert.Null(await other.PhotoAsync(club, new string('0', 64)));
    }

    [Fact]
    public async Task What_is_no_picture_stays_here_and_is_told()
    {
        string club = server.NewClub();
        Phone phone = await server.PhoneAsync(club, "m-1");
        await phone.ExchangeAsync();
        string photo = await phone.Device.AddPhotoAsync(club, "no picture"u8.ToArray(), "image/png");

        ExchangeStatus status = await phone.ExchangeAsync();

        Assert.Equal(ExchangePhase.Refused, status.Phase);
        Assert.Contains("not a picture", phone.Exchange.PhotosRefused[photo], StringComparison.Ordinal);
        Assert.NotNull(await phone.Device.PhotoAsync(club, photo));
    }
}
