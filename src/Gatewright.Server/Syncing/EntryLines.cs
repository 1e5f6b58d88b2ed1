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
        while (true)
        {
            ReadResult read = await reader.ReadAsync(cancellation).ConfigureAwait(false);
            ReadOnlySequence<byte> buffer = read.Buffer;
            while (buffer.PositionOf((byte)'\n') is { } end)
            {
                ReadOnlySequence<byte> found = buffer.Slice(0, end);
                buffer = buffer.Slice(buffer.GetPosition(1, end));
                line++;
                if (skipping || found.Length > EntryLimits.Line + 1)
                {
                    skipping = false;
                    yield return (line, null);
                }
                else if (Trimmed(found) is { Length: > 0 } bytes)
                {
                    yield return (line, bytes);
                }
            }

            // A line that is longer than any entry is let go by, not gathered.
            if (buffer.Length > EntryLimits.Line + 1)
            {
                skipping = true;
                buffer = buffer.Slice(buffer.End);
            }

            if (read.IsCompleted)
            {
                if (skipping)
                {
                    yield return (line + 1, null);
                }
                else if (Trimmed(buffer) is { Length: > 0 } bytes)
                {
                    yield return (line + 1, bytes);
                }

                break;
            }

            reader.AdvanceTo(buffer.Start, buffer.End);
        }

        await reader.CompleteAsync().ConfigureAwait(false);
    }

    private static byte[] Trimmed(ReadOnlySequence<byte> line)
    {
        byte[] bytes = line.ToArray();
        return bytes is [.., (byte)'\r'] ? bytes[..^1] : bytes;
    }
}
