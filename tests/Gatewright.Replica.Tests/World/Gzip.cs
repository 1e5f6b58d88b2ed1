using System.IO.Compression;

namespace Gatewright.Replica.Tests.World;

/// <summary>Packs what a phone sends, as its browser does.</summary>
internal static class Gzip
{
    public static ValueTask<byte[]?> PackAsync(ReadOnlyMemory<byte> sent)
    {
        using var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.Fastest, leaveOpen: true))
        {
            gzip.Write(sent.Span);
        }

        return ValueTask.FromResult<byte[]?>(packed.ToArray());
    }
}
