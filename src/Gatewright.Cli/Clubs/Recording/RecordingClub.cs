using Gatewright.Cli.Clubs.Keeping;
using Gatewright.Journal.Exchange;
using Gatewright.Store;
using Gatewright.Store.Opening;

namespace Gatewright.Cli.Clubs.Recording;

/// <summary>The club that is recorded in: one there is, or one that is made; and whether the member belongs to it.</summary>
internal static class RecordingClub
{
    private const string Former = "former";

    public static async Task<OpenedClub?> OpenAsync(RecordRequest request, List<InputProblem> errors, CancellationToken cancellation)
    {
        OpenedClub? club = request.NewClub is { } name
            ? await NewAsync(request, name, errors, cancellation).ConfigureAwait(false)
            : await ThereAsync(request, errors, cancellation).ConfigureAwait(false);
        if (club is not null)
        {
            CheckMember(club.Kept, request.Member, errors);
        }

        return club;
    }

    private static async Task<OpenedClub?> ThereAsync(RecordRequest request, List<InputProblem> errors, CancellationToken cancellation)
    {
        int before = errors.Count;
        OpenedClub? club = await ClubChoice.OpenAsync(request.Place, errors, cancellation).ConfigureAwait(false);
        if (errors.Count > before && request.Place.Club is not null)
        {
            InputProblem none = errors[^1];
            errors[^1] = none with { Message = $"{none.Message} --new-club NAME makes it." };
        }

        return club;
    }

    /// <summary>A club that has the name already is gone on with, so that the same command may be given again.</summary>
    private static async Task<OpenedClub?> NewAsync(
        RecordRequest request, string name, List<InputProblem> errors, CancellationToken cancellation)
    {
        if (request.Place.Club is not { } id)
        {
            errors.Add(new("--new-club", null, null, name, "needs an id, too: say with --club which the club is to have."));
            return null;
        }

        if (errors.Count > 0)
        {
            // No store is made for files that are wrong.
            return null;
        }

        StoreLocation location = StoreFinder.KeptOrNew(request.Place);
        await StoreOpening.OpenAsync(location, cancellation).ConfigureAwait(false);
        IReadOnlyList<KeptClub> clubs = await new ClubDirectory(location).ListAsync(cancellation).ConfigureAwait(false);
        KeptClub kept = clubs.FirstOrDefault(c => c.Club == id) ?? new(id, 0, []);
        OpenedClub club = await OpenedClub.OfAsync(location, kept, cancellation).ConfigureAwait(false);
        if (club.Club.Count > 0 && club.Name != name)
        {
            errors.Add(new("--new-club", null, null, name, $"the club {club.Title} is there already: leave out --new-club, or give the new one another id."));
        }

        return club;
    }

    private static void CheckMember(KeptClub club, string member, List<InputProblem> errors)
    {
        List<KeptMember> members = [.. club.Members.Where(m => m.Role != Former)];
        if (members.Count > 0 && members.All(m => m.Member != member))
        {
            string known = string.Join(", ", members.Select(m => $"{m.Member} ({m.Role})"));
            errors.Add(new("--member", null, null, member, $"is no member of the club {club.Club}. Its members: {known}."));
        }
    }
}
