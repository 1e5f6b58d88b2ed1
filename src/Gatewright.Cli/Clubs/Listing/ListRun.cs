using Gatewright.Cli.Clubs.Keeping;
using Gatewright.Cli.Clubs.Telling;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;
using Gatewright.Store;
using Gatewright.Store.Opening;
using Gatewright.Words;

namespace Gatewright.Cli.Clubs.Listing;

/// <summary>Lists the clubs of a store.</summary>
internal static class ListRun
{
    public static async Task<Answer> RunAsync(StorePlace place, CancellationToken cancellation)
    {
        StoreLocation location = StoreFinder.Kept(place);
        await StoreOpening.OpenAsync(location, cancellation).ConfigureAwait(false);
        var clubs = new List<ListedClub>();
        foreach (KeptClub kept in await new ClubDirectory(location).ListAsync(cancellation).ConfigureAwait(false))
        {
            OpenedClub club = await OpenedClub.OfAsync(location, kept, cancellation).ConfigureAwait(false);
            clubs.Add(new(kept.Club, club.Name, kept.Entries, club.LastDay, Roles(kept)));
        }

        return new Answer.Done(
            ExitStatus.Good, [Heading(location, clubs.Count), .. clubs.Select(Sentence)], new ClubsDocument(location.Name, clubs));
    }

    private static SortedDictionary<string, int> Roles(KeptClub club) =>
        new(club.Members.CountBy(m => m.Role).ToDictionary(), StringComparer.Ordinal);

    private static string Heading(StoreLocation location, int count) => count == 0
        ? $"The store {location.Name} has no club yet."
        : $"The store {location.Name} has {Counted.Of(count, "club")}:";

    /// <summary>"demo (The demo shed): 540 entries, the last of 2026-11-25; 1 keeper, 2 helpers."</summary>
    private static string Sentence(ListedClub club)
    {
        string last = club.LastDay is { } day ? $", the last of {Language.English.Day(day)}" : string.Empty;
        string members = club.Members.Count == 0
            ? "no members"
            : string.Join(", ", club.Members.Select(m => Role(m.Key, m.Value)));
        return $"{OpenedClub.TitleOf(club.Club, club.Name)}: {Counted.Of(club.Entries, "entry", "entries")}{last}; {members}.";
    }

    private static string Role(string role, int count) => role switch
    {
        "coach" => Counted.Of(count, "coach", "coaches"),
        "crew" => Counted.Of(count, "crew", "crew"),
        "former" => Counted.Of(count, "who left", "who left"),
        _ => Counted.Of(count, role),
    };
}
