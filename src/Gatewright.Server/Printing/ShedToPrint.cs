using Gatewright.Journal.Members;
using Gatewright.Journal.Standing;
using Gatewright.Printing;
using Gatewright.Server.Boats;
using Gatewright.Server.Members;
using Gatewright.Words;

namespace Gatewright.Server.Printing;

/// <summary>The club that is printed from, as far as whoever asks may see it.</summary>
internal sealed class ShedToPrint(OpenClubs clubs, MemberList members, TimeProvider clock)
{
    /// <summary>The club.</summary>
    public Task<OpenClub> OpenAsync(HttpContext context) => clubs.OpenAsync(ClubAccess.Of(context).Club, context.RequestAborted);

    /// <summary>The boats meant, by name: all that may be seen, or the one asked for; null where that may not be seen, or is not there.</summary>
    public async Task<(OpenClub Open, IReadOnlyList<BoatStanding>? Boats)> BoatsAsync(HttpContext context, string? boat)
    {
        ClubAccess access = ClubAccess.Of(context);
        OpenClub open = await OpenAsync(context).ConfigureAwait(false);
        if (boat is not null)
        {
            return (open, access.Sees(boat) && await open.Shed.BoatAsync(boat).ConfigureAwait(false) is { } one ? [one] : null);
        }

        IReadOnlyList<BoatStanding> seen = await BoatEndpoints.SeenAsync(open.Shed, access).ConfigureAwait(false);
        return (open, [.. seen.OrderBy(b => b.View.Name, StringComparer.OrdinalIgnoreCase)]);
    }

    /// <summary>What every page says of itself. Names of members are for members: a crew's link shows none.</summary>
    public async Task<Imprint> ImprintAsync(HttpContext context, OpenClub open, string? language)
    {
        var imprint = new Imprint(open.Name, DateOnly.FromDateTime(clock.GetUtcNow().UtcDateTime), Wording.In(Language.Of(language)));
        if (ClubAccess.Of(context).Role == Role.Crew)
        {
            return imprint.WithoutNames();
        }

        Dictionary<string, string> names = (await members.AllAsync(open.Club.Name, context.RequestAborted).ConfigureAwait(false))
            .ToDictionary(m => m.Member, m => m.Name, StringComparer.Ordinal);
        return imprint with { NameOf = member => names.GetValueOrDefault(member, member) };
    }
}
