using System.Globalization;
using System.Security.Cryptography;

namespace Gatewright.Store.Blobs;

/// <summary>Whether a picture may be kept under a hash.</summary>
internal static class BlobCheck
{
    /// <returns>Its media type.</returns>
    public static string Check(string sha256, byte[] picture, BlobSettings settings)
    {
        if (sha256.Length != 2 * SHA256.HashSizeInBytes || !sha256.All(char.IsAsciiHexDigitLower))
        {
            throw new BlobRefusedException(
                BlobRefusal.NotAHash, "A picture is kept by its SHA-256, written as 64 hexadecimal digits in lower case.");
        }

        if (picture.Length > settings.MostBytes)
        {
            throw new BlobRefusedException(BlobRefusal.TooLarge, string.Create(
                CultureInfo.InvariantCulture,
                $"The picture has {picture.Length} bytes: at most {settings.MostBytes} are taken. Send a smaller copy."));
        }

        if (MediaTypes.Of(picture) is not { } mediaType)
        {
            throw new BlobRefusedException(
                BlobRefusal.NotAPicture, $"This is not a picture of a kind that is kept: {string.Join(", ", MediaTypes.All)}.");
        }

        return Convert.ToHexStringLower(SHA256.HashData(picture)) == sha256
            ? mediaType
            : throw new BlobRefusedException(
                BlobRefusal.OtherHash, $"The bytes are not those of picture {sha256}: something was lost on the way. Send it again.");
    }
}
