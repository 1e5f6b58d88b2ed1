using System.Reflection;
using System.Runtime.CompilerServices;
using Gatewright.Cli.Clubs.Keeping;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Exchange.Archive;
using Gatewright.Store;
using Gatewright.Store.Blobs;

namespace Gatewright.Cli.Clubs.Exporting;

/// <summary>Writes a club's file out of a store: never the whole of it in memory.</summary>
internal static class ClubFile
{
    private static readonly string Program =
        $"gatewright {typeof(ClubFile).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion}";

    /// <returns>How many entries and photos are in it.</returns>
    public static async Task<(long Entries, long Photos)> WriteAsync(OpenedClub club, Stream to, CancellationToken cancellation)
    {
        long entries = 0;
        long photos = 0;
        await ClubArchive.WriteAsync(to, club.Id, Program, EntriesAsync(cancellation), PhotosAsync(cancellation), cancellation).ConfigureAwait(false);
        return (entries, photos);

        async IAsyncEnumerable<Entry> EntriesAsync([EnumeratorCancellation] CancellationToken stop = default)
        {
            await foreach (IReadOnlyList<Numbered> page in OpenedClub.PagesAsync(club.Location, club.Id, stop).ConfigureAwait(false))
            {
                foreach (Numbered numbered in page)
                {
                    entries++;
                    yield return numbered.Entry;
                }
            }
        }

        async IAsyncEnumerable<ArchiveBlob> PhotosAsync([EnumeratorCancellation] CancellationToken stop = default)
        {
            var blobs = new BlobStore(club.Location);
            foreach (KeptBlob kept in await blobs.ListAsync(club.Id, stop).ConfigureAwait(false))
            {
                photos++;
                yield return new(kept.Sha256, kept.MediaType, async asked => (await blobs.GetAsync(club.Id, kept.Sha256, asked).ConfigureAwait(false))!.Content);
            }
        }
    }
}
