using Gatewright.Journal.Entries;
using Gatewright.Replica.Copies;

namespace Gatewright.Replica.Exchanging;

/// <summary>Entries that go in one request.</summary>
/// <param name="Entries">The entries, a line each, in order.</param>
/// <param name="Lines">Their lines.</param>
internal sealed record PushBatch(IReadOnlyList<OwnEntry> Entries, ReadOnlyMemory<byte> Lines)
{
    /// <summary>As many of the first as go together.</summary>
    public static PushBatch Of(IReadOnlyList<OwnEntry> unsent, int mostLines)
    {
        using var lines = new MemoryStream();
        int count = 0;
        foreach (OwnEntry own in unsent.Take(mostLines))
        {
            byte[] line = EntryJson.ToLine(own.Entry);
            if (count > 0 && lines.Length + line.Length + 1 > BatchSize.MostBytes)
            {
                break;
            }

            lines.Write(line);
            lines.WriteByte((byte)'\n');
            count++;
        }

        return new([.. unsent.Take(count)], lines.ToArray());
    }
}
