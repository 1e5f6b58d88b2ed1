using System.Data.Common;
using Gatewright.Journal.Entries;

namespace Gatewright.Store;

/// <summary>An entry as a row of its table.</summary>
internal static class EntryRow
{
    /// <summary>What is selected of it, its number first; what comes behind is the caller's.</summary>
    public const string Columns = "\"Number\", \"Id\", \"Member\", \"Device\", \"Milliseconds\", \"Counter\", \"Kind\", \"Version\", \"Body\"";

    /// <summary>The entry of a row of <see cref="Columns"/>.</summary>
    public static Entry Of(string club, DbDataReader row) => new()
    {
        Id = row.GetGuid(1),
        Club = club,
        Member = row.GetString(2),
        Device = row.GetString(3),
        Time = new(row.GetInt64(4), row.GetInt32(5)),
        Kind = row.GetString(6),
        Version = row.GetInt32(7),
        Body = (byte[])row.GetValue(8),
    };
}
