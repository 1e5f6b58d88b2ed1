using Gatewright.Journal.Replay;

namespace Gatewright.Journal.Views;

/// <summary>Reads what a snapshot has left unread, a little at a time.</summary>
public static class RecordReading
{
    private const int AtOnce = 8;

    /// <summary>Reads the facts of records.</summary>
    /// <param name="records">The records.</param>
    /// <param name="breathe">Called after each few that had to be read, and awaited.</param>
    public static async Task ReadAsync(IEnumerable<Recorded> records, Func<ValueTask> breathe)
    {
        ArgumentNullException.ThrowIfNull(records);
        ArgumentNullException.ThrowIfNull(breathe);
        int read = 0;
        foreach (Recorded record in records)
        {
            if (!record.IsRead)
            {
                _ = record.Fact;
                if (++read % AtOnce == 0)
                {
                    await breathe().ConfigureAwait(true);
                }
            }
        }
    }
}
