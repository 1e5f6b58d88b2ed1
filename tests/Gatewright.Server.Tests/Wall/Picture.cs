using System.Security.Cryptography;

namespace Gatewright.Server.Tests.Wall;

/// <summary>The smallest picture: one pixel.</summary>
internal static class Picture
{
    public static byte[] Bytes { get; } = Convert.FromBase64String(
        "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==");

    public static string Sha256 { get; } = Convert.ToHexStringLower(SHA256.HashData(Bytes));

    public static ByteArrayContent Content
    {
        get
        {
            var content = new ByteArrayContent(Bytes);
            content.Headers.ContentType = new("image/png");
            return content;
        }
    }
}
