using Gatewright.Store.Blobs;
using static Gatewright.Store.Tests.Blobs.Pictures;

namespace Gatewright.Store.Tests.Blobs;

public sealed class BlobStoreTests(Stores stores)
{
    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Theory]
    [EveryEngine]
    public async Task A_picture_is_given_back_to_the_byte_and_kept_once(Engine engine)
    {
        var store = new BlobStore(await stores.NewAsync(engine));
        byte[] picture = Jpeg(1, 300_000);

        Assert.True(await store.PutAsync("club", Hash(picture), picture, Cancellation));
        Assert.False(await store.PutAsync("club", Hash(picture), picture, Cancellation));

        OpenedBlob opened = (await store.GetAsync("club", Hash(picture), Cancellation))!;
        using var read = new MemoryStream();
        await opened.Content.CopyToAsync(read, Cancellation);
        Assert.Equal(picture, read.ToArray());
        Assert.Equal([new(Hash(picture), "image/jpeg", 300_000)], await store.ListAsync("club", Cancellation));
        Assert.Null(await store.GetAsync("other", Hash(picture), Cancellation));
        Assert.Empty(await store.ListAsync("other", Cancellation));
    }

    [Theory]
    [EveryEngine]
    public async Task What_may_not_be_kept_is_refused_and_not_kept(Engine engine)
    {
        var store = new BlobStore(await stores.NewAsync(engine), new(MostBytes: 2000, MostBytesOfClub: 2500));
        byte[] picture = Jpeg(1);
        byte[] page = "<html>a page that says it is a picture</html>"u8.ToArray();

        await RefusedAsync(BlobRefusal.OtherHash, Hash(Jpeg(2)), picture);
        await RefusedAsync(BlobRefusal.NotAHash, Hash(picture).ToUpperInvariant(), picture);
        await RefusedAsync(BlobRefusal.NotAHash, "../blobs", picture);
        await RefusedAsync(BlobRefusal.NotAPicture, Hash(page), page);
        await RefusedAsync(BlobRefusal.NotAPicture, Hash([]), []);
        await RefusedAsync(BlobRefusal.TooLarge, Hash(Jpeg(1, 2001)), Jpeg(1, 2001));
        Assert.Empty(await store.ListAsync("club", Cancellation));

        Assert.True(await store.PutAsync("club", Hash(Jpeg(1, 2000)), Jpeg(1, 2000), Cancellation));
        await RefusedAsync(BlobRefusal.ClubFull, Hash(Jpeg(2, 501)), Jpeg(2, 501));
        Assert.True(await store.PutAsync("other", Hash(Jpeg(2, 501)), Jpeg(2, 501), Cancellation));
        Assert.True(await store.PutAsync("club", Hash(Jpeg(2, 500)), Jpeg(2, 500), Cancellation));

        async Task RefusedAsync(BlobRefusal expected, string hash, byte[] bytes) => Assert.Equal(
            expected,
            (await Assert.ThrowsAsync<BlobRefusedException>(() => store.PutAsync("club", hash, bytes, Cancellation))).Refusal);
    }

    [Theory]
    [EveryEngine]
    public async Task Many_at_once_do_not_take_more_room_than_the_club_has(Engine engine)
    {
        var store = new BlobStore(await stores.NewAsync(engine), new(MostBytesOfClub: 3000));

        await Task.WhenAll(Enumerable.Range(0, 8).Select(async number =>
        {
            try
            {
                await store.PutAsync("club", Hash(Jpeg(number)), Jpeg(number), Cancellation);
            }
            catch (BlobRefusedException refused) when (refused.Refusal == BlobRefusal.ClubFull)
            {
            }
        }));

        Assert.Equal(3, (await store.ListAsync("club", Cancellation)).Count);
    }

    [Fact]
    public void Pictures_are_told_by_how_they_begin()
    {
        // The signatures as the three standards print them, and one step away from each.
        Assert.Equal("image/jpeg", MediaTypes.Of([0xFF, 0xD8, 0xFF, 0xDB]));
        Assert.Null(MediaTypes.Of([0xFF, 0xD8, 0xFE]));
        Assert.Equal("image/png", MediaTypes.Of([137, 80, 78, 71, 13, 10, 26, 10]));
        Assert.Null(MediaTypes.Of([137, 80, 78, 71, 10, 26, 10]));
        Assert.Equal("image/webp", MediaTypes.Of("RIFF\0\0\0\0WEBPVP8 "u8));
        Assert.Null(MediaTypes.Of("RIFF\0\0\0\0WAVEfmt "u8));
        Assert.Null(MediaTypes.Of("RIFF"u8));
    }
}
