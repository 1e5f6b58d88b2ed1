using System.Security.Cryptography;

namespace Gatewright.Journal.Exchange.Archive;

/// <summary>The hash of the last line, which takes in all before it: the same as the journal's own chain.</summary>
internal sealed class LineChain : IDisposable
{
    private readonly IncrementalHash _sha256 = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
    private readonly byte[] _last = new byte[SHA256.HashSizeInBytes];

    public long Count { get; private set; }

    public string Head => Convert.ToHexStringLower(_last);

    public void Add(ReadOnlySpan<byte> line)
    {
        _sha256.AppendData(_last);
        _sha256.AppendData(line);
        _sha256.GetHashAndReset(_last);
        Count++;
    }

    public void Dispose() => _sha256.Dispose();
}
