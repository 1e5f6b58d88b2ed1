using QRCoder;

namespace Gatewright.Server.Members;

/// <summary>A link as a picture that a phone's camera reads.</summary>
internal static class QrPicture
{
    private const int PixelsPerModule = 6;

    /// <summary>As SVG, dark on light whatever the page's colours: a camera wants it so.</summary>
    public static string Svg(string link)
    {
        using var generator = new QRCodeGenerator();
        using QRCodeData data = generator.CreateQrCode(link, QRCodeGenerator.ECCLevel.M);
        using var picture = new SvgQRCode(data);
        return picture.GetGraphic(PixelsPerModule);
    }
}
