namespace Gatewright.Store.Blobs;

/// <summary>The kinds of picture that are kept, told by how they begin and not by what they are called.</summary>
public static class MediaTypes
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<string> All { get; } = ["image/jpeg", "image/png", "image/webp"];

    /// <summary>What a picture is; null when it is none of <see cref="All"/>.</summary>
    /// <remarks>
    /// JPEG: ITU-T T.81, annex B (start of image, then a marker). PNG: W3C PNG, section 5.2. WebP: RFC 9649, section 2.4.
    /// </remarks>
    public static string? Of(ReadOnlySpan<byte> picture) =>
        picture.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xD8, 0xFF]) ? All[0]
        : picture.StartsWith((ReadOnlySpan<byte>)[0x89, (byte)'P', (byte)'N', (byte)'G', 0x0D, 0x0A, 0x1A, 0x0A]) ? All[1]
        : picture.Length >= 12 && picture.StartsWith("RIFF"u8) && picture[8..].StartsWith("WEBP"u8) ? All[2]
        : null;
}
