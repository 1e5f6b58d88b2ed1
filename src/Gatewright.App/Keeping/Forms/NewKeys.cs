using System.Security.Cryptography;
using Gatewright.Journal.Keeping;

namespace Gatewright.App.Keeping.Forms;

/// <summary>Keys for what is new here.</summary>
public static class NewKeys
{
    /// <summary>A key for a thing of some name.</summary>
    public static string For(string? name) => ThingKeys.New(name ?? string.Empty, BitConverter.ToUInt32(RandomNumberGenerator.GetBytes(4)));
}
