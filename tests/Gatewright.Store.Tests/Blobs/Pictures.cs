using System.Security.Cryptography;

namespace Gatewright.Store.Tests.Blobs;

/// <summary>Bytes that begin as pictures do.</summary>
internal static class Pictures
{
    public static byte[] Jpeg(int number, int bytes = 1000)
    {
        byte[] picture = new byte[bytes];
        new byte[] { 0xFF, 0xD8, 0xFF, 0xE0, (byte)number, (byte)(number >> 8) }.CopyTo(picture, 0);
        return picture;
    }

    public static string Hash(byte[] picture) => Convert.ToHexStringLower(SHA256.HashData(picture));
}
