using Gatewright.Replica.Exchanging;
using Gatewright.Replica.Shelves;
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
        Assert.Equal((0, 0, 1), (status.Refused, status.OfOthers, status.PhotosRefused));

        await phone.Device.DiscardPhotosAsync(club, [photo]);
        phone.Exchange.ForgetRefusal(photo);
        Assert.Equal((ExchangePhase.Shared, 0), (phone.Status.Phase, phone.Status.PhotosRefused));
    }

    [Fact]
    public async Task A_picture_that_was_cleared_to_make_room_comes_down_again()
    {
        string club = server.NewClub();
        Phone phone = await server.PhoneAsync(club, "m-1");
        await phone.ExchangeAsync();
        string photo = await phone.Device.AddPhotoAsync(club, Said.Picture("a pin"), "image/png");
        Assert.Empty(await phone.Device.SentPhotosAsync());
        await phone.ShareAsync();

        SentPhoto sent = Assert.Single(await phone.Device.SentPhotosAsync());
        Assert.Equal(new(club, photo, Said.Picture("a pin").Length), sent);
        await phone.Device.DiscardPhotosAsync(club, [photo]);
        Assert.Null(await phone.Device.PhotoAsync(club, photo));

        Assert.Equal(Said.Picture("a pin"), (await phone.PhotoAsync(club, photo))!.Bytes.ToArray());
    }
}
