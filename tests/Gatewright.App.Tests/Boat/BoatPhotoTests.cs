using System.Globalization;
using System.Net;
using System.Security.Cryptography;
using Bunit;
using Gatewright.App.Boat;
using Gatewright.App.Tests.World;
using Gatewright.Journal.Facts;

namespace Gatewright.App.Tests.Boat;

/// <summary>A picture that is on the server alone is looked for there as soon as it can be.</summary>
public sealed class BoatPhotoTests
{
    private static readonly byte[] Picture = [1, 2, 3];
    private readonly SharedClub _server = new();
    private bool _hasPicture = true;
    private bool _isReached = true;

    public BoatPhotoTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    [Fact]
    public async Task Before_sharing_has_begun_it_is_said_to_be_coming_and_then_comes()
    {
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper", Answer);
        IRenderedComponent<BoatPhoto> photo = Photo(club);
        Assert.Equal("Teal: the picture is being fetched.", photo.Find("[role=status]").TextContent);

        await SharedClub.ShareAsync(club);

        Assert.StartsWith("data:image/jpeg;base64,AQID", photo.WaitForElement("img").GetAttribute("src"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Where_the_server_is_not_reached_it_is_said_to_be_elsewhere_and_comes_once_it_is()
    {
        _isReached = false;
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper", Answer);
        IRenderedComponent<BoatPhoto> photo = Photo(club);
        await SharedClub.ShareAsync(club);
        photo.WaitForAssertion(() => Assert.Equal("Teal: the picture is not on this device.", photo.Find("[role=status]").TextContent));

        _isReached = true;
        await SharedClub.ShareAsync(club);
        photo.WaitForElement("img");
    }

    [Fact]
    public async Task One_that_nobody_has_is_not_said_to_be_coming_for_ever()
    {
        _hasPicture = false;
        await using ClubOfTwo club = await ClubOfTwo.StartAsync("keeper", Answer);
        IRenderedComponent<BoatPhoto> photo = Photo(club);

        await SharedClub.ShareAsync(club);

        photo.WaitForAssertion(() => Assert.Equal("Teal: the picture is not on this device.", photo.Find("[role=status]").TextContent));
    }

    private HttpResponseMessage Answer(HttpRequestMessage request)
    {
        if (!_isReached)
        {
            throw new HttpRequestException("There is no way there.");
        }

        if (request.Method != HttpMethod.Get || !request.RequestUri!.AbsolutePath.Contains("/photos/", StringComparison.Ordinal))
        {
            return _server.Answer(request);
        }

        var answer = new HttpResponseMessage(_hasPicture ? HttpStatusCode.OK : HttpStatusCode.NotFound) { Content = new ByteArrayContent(Picture) };
        answer.Content.Headers.ContentType = new("image/jpeg");
        return answer;
    }

    private static IRenderedComponent<BoatPhoto> Photo(ClubOfTwo club) => club.Page.Render<BoatPhoto>(p => p
        .Add(b => b.Photo, new PhotoTaken(Things.Boat, "teal", Convert.ToHexStringLower(SHA256.HashData(Picture)), 3, "image/jpeg"))
        .Add(b => b.Name, "Teal"));
}
