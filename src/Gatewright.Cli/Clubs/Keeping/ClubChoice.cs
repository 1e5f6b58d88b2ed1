using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;
using Gatewright.Journal.Exchange;
using Gatewright.Store;
using Gatewright.Store.Opening;

namespace Gatewright.Cli.Clubs.Keeping;

/// <summary>The club that a command line names, or the one there is.</summary>
internal static class ClubChoice
{
    private const string Option = "--club";

    /// <summary>Opens the club, or says which there are, for a command that only looks.</summary>
    /// <param name="place">What was named.</param>
    /// <param name="errors">Where the error goes.</param>
    /// <returns>The club, or null and an error.</returns>
    public static OpenedClub? Open(StorePlace place, List<InputProblem> errors) => Waited.For(OpenAsync(place, errors, CancellationToken.None));

    /// <summary>Opens the club, or says which there are.</summary>
    /// <param name="place">What was named.</param>
    /// <param name="errors">Where the error goes.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <returns>The club, or null and an error.</returns>
    public static async Task<OpenedClub?> OpenAsync(StorePlace place, List<InputProblem> errors, CancellationToken cancellation)
    {
        StoreLocation location = StoreFinder.Kept(place);
        await StoreOpening.OpenAsync(location, cancellation).ConfigureAwait(false);
        IReadOnlyList<KeptClub> clubs = await new ClubDirectory(location).ListAsync(cancellation).ConfigureAwait(false);
        KeptClub? chosen = place.Club is { } id ? clubs.FirstOrDefault(c => c.Club == id) : clubs.Count == 1 ? clubs[0] : null;
        if (chosen is not null)
        {
            return await OpenedClub.OfAsync(location, chosen, cancellation).ConfigureAwait(false);
        }

        errors.Add(await NoneAsync(location, place.Club, clubs, cancellation).ConfigureAwait(false));
        return null;
    }

    /// <summary>That a store has no such club, or several, and which.</summary>
    public static async Task<InputProblem> NoneAsync(
        StoreLocation location, string? id, IReadOnlyList<KeptClub> clubs, CancellationToken cancellation)
    {
        var titles = new List<string>();
        foreach (KeptClub club in clubs)
        {
            titles.Add((await OpenedClub.OfAsync(location, club, cancellation).ConfigureAwait(false)).Title);
        }

        string known = titles.Count == 0 ? "none yet" : string.Join(", ", titles);
        return id is null
            ? new(Option, null, null, null, clubs.Count == 0
                ? $"the store {location.Name} has no club yet."
                : $"the store {location.Name} has several clubs: say which. They are {known}.")
            : new(Option, null, null, id, $"is no club of the store {location.Name}. Its clubs: {known}.");
    }
}
