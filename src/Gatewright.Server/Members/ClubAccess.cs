using Gatewright.Journal.Members;

namespace Gatewright.Server.Members;

/// <summary>Who is asking, in the club they ask about.</summary>
/// <param name="Club">The club.</param>
/// <param name="Member">Their id in its journal; for crew, the link's.</param>
/// <param name="Role">What they are there.</param>
/// <param name="Boats">For crew, the boats they may see; null where all may be seen.</param>
internal sealed record ClubAccess(string Club, string Member, Role Role, IReadOnlySet<string>? Boats)
{
    /// <summary>Whether a boat may be seen.</summary>
    public bool Sees(string boat) => Boats is null || Boats.Contains(boat);

    /// <summary>That of a request to an endpoint that asks for a permission.</summary>
    public static ClubAccess Of(HttpContext context) =>
        context.Features.Get<ClubAccess>()
        ?? throw new InvalidOperationException("The endpoint asks for no permission in a club.");
}
