using System.Buffers;
using System.Buffers.Binary;
using System.Text;

namespace Gatewright.Journal.Replay.Snapshots;

/// <summary>Writes numbers, texts and bytes into blocks.</summary>
internal sealed class BlockWriter(Stream to)
{
    private readonly ArrayBufferWriter<byte> _block = new(SnapshotFormat.LongestBlock);
    private readonly Dictionary<string, int> _texts = new(StringComparer.Ordinal);
    private byte[] _hash = SnapshotFormat.Fingerprint;

    public bool IsFull => _block.WrittenCount >= SnapshotFormat.FullBlock;

    /// <summary>A number of 0 or more, seven bits a byte, the lowest first.</summary>
    public void Number(long value)
    {
        Span<byte> span = _block.GetSpan(10);
        int length = 0;
        for (ulong rest = (ulong)value; ; rest >>= 7)
        {
            if (rest < 0x80)
            {
                span[length++] = (byte)rest;
                break;
            }

            span[length++] = (byte)(rest | 0x80);
        }

        _block.Advance(length);
    }

    /// <summary>A text: its number among the texts so far; the next number means a new one, which follows.</summary>
    public void Text(string text)
    {
        if (_texts.TryGetValue(text, out int known))
        {
            Number(known);
            return;
        }

        Number(_texts.Count);
        _texts.Add(text, _texts.Count);
        Bytes(Encoding.UTF8.GetBytes(text));
    }

    public void Id(Guid id)
    {
        id.TryWriteBytes(_block.GetSpan(16), bigEndian: true, out int written);
        _block.Advance(written);
    }

    public void Bytes(ReadOnlySpan<byte> bytes)
    {
        Number(bytes.Length);
        _block.Write(bytes);
    }

    /// <summary>Writes the block out; an empty one is the end.</summary>
    public void Close()
    {
        Span<byte> length = stackalloc byte[4];
        BinaryPrimitives.WriteInt32LittleEndian(length, _block.WrittenCount);
        _hash = SnapshotFormat.Hash(_hash, _block.WrittenSpan);
        to.Write(length);
        to.Write(_hash);
        to.Write(_block.WrittenSpan);
        _block.ResetWrittenCount();
    }
}
