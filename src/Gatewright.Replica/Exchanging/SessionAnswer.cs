namespace Gatewright.Replica.Exchanging;

/// <summary>Who is signed in, as the server answers.</summary>
/// <param name="Account">Their sign-in name; null while nobody is.</param>
/// <param name="DisplayName">What the others see.</param>
/// <param name="Clubs">The clubs they belong to.</param>
/// <param name="Antiforgery">The token that every change carries.</param>
public sealed record SessionAnswer(string? Account, string? DisplayName, IReadOnlyList<SessionClub> Clubs, string Antiforgery);

/// <summary>A club as its member sees it.</summary>
/// <param name="Club">Its id.</param>
/// <param name="Name">Its name.</param>
/// <param name="Member">The member's id in its journal.</param>
/// <param name="Role">The member's role.</param>
public sealed record SessionClub(string Club, string Name, string Member, string Role);
