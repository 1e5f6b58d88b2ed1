using Gatewright.Journal.Entries;
using Gatewright.Journal.Exchange.Archive;
using Gatewright.Store;
using Gatewright.Store.Blobs;

namespace Gatewright.Cli.Clubs.Importing;

/// <summary>Takes what a club lacks out of its file, some thousand entries at a time: what is cut off can be done again.</summary>
internal sealed class Intake(StoreLocation location, string club)
{
    private const int Batch = 5000;

    private readonly JournalStore _journal = new(location);
    private readonly BlobStore _photos = new(location);
    private readonly List<string> _refusals = [];
    private long _last;

    public string Club => club;

    /// <summary>How many entries the file has of this club.</summary>
    public long Entries { get; private set; }

    /// <summary>How many of them the club did not have.</summary>
    public long NewEntries { get; private set; }

    /// <summary>How many photos the file has.</summary>
    public long Photos { get; private set; }

    /// <summary>How many of them the club did not have.</summary>
    public long NewPhotos { get; private set; }

    /// <summary>What was not taken, and why.</summary>
    public IReadOnlyList<string> Refusals => _refusals;

    public async Task TakeAsync(ArchiveReading reading, CancellationToken cancellation)
    {
        _last = await _journal.LastAsync(club, cancellation).ConfigureAwait(false);
        var batch = new List<Entry>(Batch);
        await foreach (Entry entry in reading.EntriesAsync(evenIfBroken: true, cancellation).ConfigureAwait(false))
        {
            if (entry.Club == club)
            {
                batch.Add(entry);
            }

            if (batch.Count == Batch)
            {
                await AppendAsync(batch, cancellation).ConfigureAwait(false);
                batch.Clear();
            }
        }

        await AppendAsync(batch, cancellation).ConfigureAwait(false);
        foreach (ArchiveBlob photo in reading.Blobs(evenIfBroken: true))
        {
            await PutAsync(photo, cancellation).ConfigureAwait(false);
        }
    }

    private async Task AppendAsync(List<Entry> entries, CancellationToken cancellation)
    {
        try
        {
            IReadOnlyList<long> numbers = await _journal.AppendAsync(club, entries, cancellation).ConfigureAwait(false);
            Count(entries.Count, numbers);
        }
        catch (EntryConflictException) when (entries.Count > 1)
        {
            // Nothing of the batch was taken: one by one, all but the entry that is otherwise there are.
            foreach (Entry entry in entries)
            {
                await AppendAsync([entry], cancellation).ConfigureAwait(false);
            }
        }
        catch (EntryConflictException conflict)
        {
            Entries++;
            _refusals.Add(conflict.Message);
        }
    }

    private void Count(int count, IReadOnlyList<long> numbers)
    {
        Entries += count;
        NewEntries += numbers.Where(n => n > _last).Distinct().Count();
        _last = numbers.Append(_last).Max();
    }

    private async Task PutAsync(ArchiveBlob photo, CancellationToken cancellation)
    {
        Photos++;
        try
        {
            using var bytes = new MemoryStream();
            Stream content = await photo.Open(cancellation).ConfigureAwait(false);
            await using (content.ConfigureAwait(false))
            {
                await content.CopyToAsync(bytes, cancellation).ConfigureAwait(false);
            }

            NewPhotos += await _photos.PutAsync(club, photo.Sha256, bytes.ToArray(), cancellation).ConfigureAwait(false) ? 1 : 0;
        }
        catch (BlobRefusedException refused)
        {
            _refusals.Add($"photo {photo.Sha256}: {refused.Message}");
        }
        catch (Exception broken) when (broken is ArchiveException or InvalidDataException or EndOfStreamException)
        {
            _refusals.Add($"photo {photo.Sha256}: cannot be read: {broken.Message}");
        }
    }
}
