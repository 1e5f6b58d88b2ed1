using System.Text;
using Gatewright.Journal.Entries;
using Gatewright.Replica.Shelves;

namespace Gatewright.Replica.Copies;

/// <summary>Own entries as text, for a file: why the server did not take each, and the entry on a line as journals have it.</summary>
public static class OwnText
{
    /// <summary>Writes entries, then what a newer program recorded as it left it.</summary>
    public static string Of(IReadOnlyList<OwnEntry> entries, IReadOnlyList<OwnRecord> unreadable)
    {
        ArgumentNullException.ThrowIfNull(entries);
        ArgumentNullException.ThrowIfNull(unreadable);
        var text = new StringBuilder();
        foreach (OwnEntry own in entries)
        {
            foreach (string reason in own.Reasons)
            {
                text.Append("# ").Append(own.Code).Append(": ").Append(reason.ReplaceLineEndings(" ")).Append('\n');
            }

            text.Append(Encoding.UTF8.GetString(EntryJson.ToLine(own.Entry))).Append('\n');
        }

        foreach (OwnRecord record in unreadable)
        {
            text.Append("# from a newer program\n").Append(record.Text).Append('\n');
        }

        return text.ToString();
    }
}
