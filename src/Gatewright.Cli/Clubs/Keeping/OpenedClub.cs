using System.Globalization;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;
using Gatewright.Store;
using Gatewright.Store.Faults;

namespace Gatewright.Cli.Clubs.Keeping;

/// <summary>A club as its journal in a store tells it.</summary>
/// <param name="Location">The store.</param>
/// <param name="Kept">What the store says of it.</param>
/// <param name="Club">The club.</param>
/// <param name="LastDay">The day of its last entry, by universal time; null while it has none.</param>
internal sealed record OpenedClub(StoreLocation Location, KeptClub Kept, Club Club, DateOnly? LastDay)
{
    private const int Page = 5000;

    /// <summary>Its id.</summary>
    public string Id => Kept.Club;

    /// <summary>What it is called; null while it has no name.</summary>
    public string? Name { get; } = ClubSettings.Name(Club);

    /// <summary>"demo (The demo shed)"; the id alone while it has no name.</summary>
    public string Title => TitleOf(Id, Name);

    /// <summary>"demo (The demo shed)".</summary>
    public static string TitleOf(string id, string? name) => name is null ? id : $"{id} ({name})";

    /// <summary>Opens a club of a store.</summary>
    /// <exception cref="StoreException">It cannot be read; an entry that is not as it was written is a reason.</exception>
    public static async Task<OpenedClub> OfAsync(StoreLocation location, KeptClub kept, CancellationToken cancellation)
    {
        Club club = Club.Empty(kept.Club);
        Entry? last = null;
        await foreach (IReadOnlyList<Numbered> page in PagesAsync(location, kept.Club, cancellation).ConfigureAwait(false))
        {
            club = club.With(page.Select(n => Read(location, n)));
            last = page[^1].Entry;
        }

        return new(location, kept, club, last is null ? null : Day.Of(last));
    }

    private static Recorded Read(StoreLocation location, Numbered numbered)
    {
        try
        {
            return Recorded.Of(numbered.Entry);
        }
        catch (FormatException damaged)
        {
            throw new StoreException(
                StoreFault.Damaged,
                string.Create(CultureInfo.InvariantCulture, $"Entry {numbered.Number} of the club {numbered.Entry.Club} in the store {location.Name} is not as it was written: {damaged.Message.TrimEnd('.')}."),
                "Look the store through with gatewright club verify, which says what to do.",
                damaged);
        }
    }

    /// <summary>A club's journal, some thousand entries at a time.</summary>
    public static async IAsyncEnumerable<IReadOnlyList<Numbered>> PagesAsync(
        StoreLocation location,
        string club,
        [System.Runtime.CompilerServices.EnumeratorCancellation] CancellationToken cancellation)
    {
        var store = new JournalStore(location);
        long after = 0;
        while (true)
        {
            IReadOnlyList<Numbered> page = await store.ReadAsync(club, after, Page, cancellation).ConfigureAwait(false);
            if (page.Count > 0)
            {
                yield return page;
                after = page[^1].Number;
            }

            if (page.Count < Page)
            {
                yield break;
            }
        }
    }
}
