using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;

namespace Gatewright.Server.Members;

/// <summary>What a link is worth: 256 random bits. Only its hash is kept.</summary>
internal static class Secret
{
    private const int Bytes = 32;

    /// <summary>A new one, as it stands in a link.</summary>
    public static string New() => Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(Bytes));

    /// <summary>A new id that need not be secret: 96 random bits.</summary>
    public static string NewId() => Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(12));

    /// <summary>What is kept of a secret.</summary>
    public static string Hash(string secret) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(secret)));
}
