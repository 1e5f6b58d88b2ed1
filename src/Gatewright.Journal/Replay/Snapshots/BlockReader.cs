using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;

namespace Gatewright.Journal.Replay.Snapshots;

/// <summary>Reads what <see cref="BlockWriter"/> wrote. Blocks stay in memory as long as any slice of them is used.</summary>
/// <param name="from">The blocks.</param>
/// <param name="isVouched">Whether they are known to be whole: then their hashes are left alone.</param>
internal sealed class BlockReader(Stream from, bool isVouched = false)
{
    private readonly List<string> _texts = [];
    private byte[] _hash = SnapshotFormat.Fingerprint;
    private byte[] _block = [];
    private int _at;

    public bool IsAtEnd => _at == _block.Length;

    /// <summary>Takes the next block.</summary>
    /// <returns>False at the end.</returns>
    /// <exception cref="SnapshotException">It is damaged or missing.</exception>
    public bool Next()
    {
        Span<byte> head = stackalloc byte[4 + SHA256.HashSizeInBytes];
        Fill(head);
        int length = BinaryPrimitives.ReadInt32LittleEndian(head);
        if (length is < 0 or > SnapshotFormat.LongestBlock)
        {
            throw Damaged();
        }

        (_block, _at) = (GC.AllocateUninitializedArray<byte>(length), 0);
        Fill(_block);
        if (isVouched)
        {
            return length > 0;
        }

        _hash = SnapshotFormat.Hash(_hash, _block);
        return _hash.AsSpan().SequenceEqual(head[4..]) ? length > 0 : throw Damaged();
    }

    public long Number()
    {
        ulong value = 0;
        for (int shift = 0; shift < 64; shift += 7)
        {
            byte next = _at < _block.Length ? _block[_at++] : throw Damaged();
            value |= (ulong)(next & 0x7F) << shift;
            if (next < 0x80)
            {
                return value <= long.MaxValue ? (long)value : throw Damaged();
            }
        }

        throw Damaged();
    }

    public int Count() => Number() is var value && value <= int.MaxValue ? (int)value : throw Damaged();

    public string Text()
    {
        int number = Count();
        if (number == _texts.Count)
        {
            _texts.Add(Encoding.UTF8.GetString(Bytes().Span));
        }

        return number < _texts.Count ? _texts[number] : throw Damaged();
    }

    public Guid Id() => new(Take(16).Span, bigEndian: true);

    public ReadOnlyMemory<byte> Bytes() => Take(Count());

    public static SnapshotException Damaged() => new("The snapshot is damaged: replay the journal.");

    public void Fill(Span<byte> bytes)
    {
        if (from.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false) < bytes.Length)
        {
            throw new SnapshotException("The snapshot ends too soon: replay the journal.");
        }
    }

    private ReadOnlyMemory<byte> Take(int length)
    {
        if (length > _block.Length - _at)
        {
            throw Damaged();
        }

        _at += length;
        return _block.AsMemory(_at - length, length);
    }
}
