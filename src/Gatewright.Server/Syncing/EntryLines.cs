using System.Buffers;
using System.IO.Pipelines;
using System.Runtime.CompilerServices;
using Gatewright.Journal.Entries;

namespace Gatewright.Server.Syncing;

/// <summary>Splits what was sent into lines, none longer than an entry may be.</summary>
internal static class EntryLines
{
    /// <summary>Lines without their ends, blank ones left out; each with its number from 1.</summary>
    public static async IAsyncEnumerable<(int Line, byte[]? Bytes)> ReadAsync(
        PipeReader reader, [EnumeratorCancellation] CancellationToken cancellation)
    {
        int line = 0;
        bool skipping = false;
        bool isCompleted = false;
        var found = new List<(int Line, byte[]? Bytes)>();
        while (!isCompleted)
        {
            ReadResult read = await reader.ReadAsync(cancellation).ConfigureAwait(false);
            ReadOnlySequence<byte> buffer = read.Buffer;
            while (buffer.PositionOf((byte)'\n') is { } end)
            {
                Add(found, ++line, buffer.Slice(0, end), skipping);
                skipping = false;
                buffer = buffer.Slice(buffer.GetPosition(1, end));
            }

            isCompleted = read.IsCompleted;
            if (isCompleted)
            {
                Add(found, line + 1, buffer, skipping);
                buffer = buffer.Slice(buffer.End);
            }
            else if (buffer.Length > EntryLimits.Line + 1)
            {
                // A line that is longer than any entry is let go by, not gathered.
                skipping = true;
                buffer = buffer.Slice(buffer.End);
            }

            // Before any line is handed on: whoever takes them may stop at any of them.
            reader.AdvanceTo(buffer.Start, buffer.End);
            foreach ((int Line, byte[]? Bytes) one in found)
            {
                yield return one;
            }

            found.Clear();
        }
    }

    private static void Add(List<(int Line, byte[]? Bytes)> found, int line, ReadOnlySequence<byte> bytes, bool isTail)
    {
        if (isTail || bytes.Length > EntryLimits.Line + 1)
        {
            found.Add((line, null));
        }
        else if (Trimmed(bytes) is { Length: > 0 } trimmed)
        {
            found.Add((line, trimmed));
        }
    }

    private static byte[] Trimmed(ReadOnlySequence<byte> line)
    {
        byte[] bytes = line.ToArray();
        return bytes is [.., (byte)'\r'] ? bytes[..^1] : bytes;
    }
}
