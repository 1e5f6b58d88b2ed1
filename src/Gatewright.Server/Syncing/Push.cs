using System.IO.Pipelines;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Replay;
using Gatewright.Server.Boats;
using Gatewright.Server.Members;
using Gatewright.Store;

namespace Gatewright.Server.Syncing;

/// <summary>Takes what a device has recorded. Sending it again, whole or in part, in whatever order, changes nothing.</summary>
internal sealed class Push(JournalStore store, OpenClubs clubs, ClubNews news, TimeProvider clock)
{
    /// <summary>Lines in one request: 5,000.</summary>
    public const int MostLines = 5000;

    /// <summary>Bytes in one request, unpacked: 8 MiB.</summary>
    public const int MostBytes = 8 * 1024 * 1024;

    /// <summary>Reads, decides and appends.</summary>
    /// <returns>Null when more lines were sent than are taken at once.</returns>
    public async Task<PushAnswer?> TakeAsync(ClubAccess access, PipeReader body, CancellationToken cancellation)
    {
        OpenClub open = await clubs.OpenAsync(access.Club, cancellation).ConfigureAwait(false);
        DateTimeOffset now = clock.GetUtcNow();
        var admission = new Admission(access, open.Club, now);
        var admitted = new List<(int Line, Entry Entry)>();
        var refused = new List<Refused>();
        int lines = 0;
        await foreach ((int line, byte[]? bytes) in EntryLines.ReadAsync(body, cancellation).ConfigureAwait(false))
        {
            if (++lines > MostLines)
            {
                return null;
            }

            IReadOnlyList<string> problems = [$"an entry of more than {EntryLimits.Line} bytes: put what is long into several"];
            if (bytes is null || EntryJson.Read(bytes, out problems) is not { } entry)
            {
                refused.Add(new(line, null, RefusalCode.Malformed, problems));
            }
            else if (admission.Refusal(entry) is { } refusal)
            {
                refused.Add(new(line, entry.Id, refusal.Code, refusal.Reasons));
            }
            else
            {
                admitted.Add((line, entry));
            }
        }

        List<Taken> taken = await AppendAsync(access.Club, admitted, refused, cancellation).ConfigureAwait(false);
        long last = await store.LastAsync(access.Club, cancellation).ConfigureAwait(false);
        if (last > open.Number)
        {
            news.Tell(access.Club, last);
        }

        return new(now.ToUnixTimeMilliseconds(), last, taken, [.. refused.OrderBy(r => r.Line)]);
    }

    /// <summary>
    /// Appends what is good. Where another request was quicker with other entries under some of the ids, those are
    /// refused and the rest goes on.
    /// </summary>
    private async Task<List<Taken>> AppendAsync(
        string club, List<(int Line, Entry Entry)> admitted, List<Refused> refused, CancellationToken cancellation)
    {
        while (admitted.Count > 0)
        {
            try
            {
                IReadOnlyList<long> numbers = await store.AppendAsync(club, [.. admitted.Select(a => a.Entry)], cancellation).ConfigureAwait(false);
                return [.. admitted.Select((a, i) => new Taken(a.Entry.Id, numbers[i])).DistinctBy(t => t.Id)];
            }
            catch (EntryConflictException conflict)
            {
                // All of them at once: one at a time, many conflicts would be as many transactions.
                Club now = (await clubs.OpenAsync(club, cancellation).ConfigureAwait(false)).Club;
                bool IsOther(Entry entry) =>
                    entry.Id == conflict.Id || (now.Find(entry.Id) is { } known && !Admission.IsSame(known.Entry, entry));
                refused.AddRange(admitted
                    .Where(a => IsOther(a.Entry))
                    .Select(a => new Refused(a.Line, a.Entry.Id, RefusalCode.Conflict, [new EntryConflictException(a.Entry.Id).Message])));
                admitted.RemoveAll(a => IsOther(a.Entry));
            }
        }

        return [];
    }
}
