namespace Gatewright.Server.Members;

/// <summary>A member as keepers see them.</summary>
/// <param name="Member">Their id in the journal.</param>
/// <param name="Name">Their name; "former member" once they have left.</param>
/// <param name="Role">keeper, helper, coach, or former.</param>
public sealed record MemberSeen(string Member, string Name, string Role);

/// <summary>Changing a member's role.</summary>
/// <param name="Role">The new one.</param>
public sealed record RoleRequest(string? Role);

/// <summary>Inviting somebody.</summary>
/// <param name="Role">keeper, helper, coach or crew.</param>
/// <param name="Label">What the keeper calls it.</param>
/// <param name="Boats">For crew, the keys of the boats to show.</param>
/// <param name="Days">For how many days it works; for an account at most 31.</param>
public sealed record InviteRequest(string? Role, string? Label, IReadOnlyList<string>? Boats, int? Days);

/// <summary>An invitation that was made: the only time its link is seen.</summary>
/// <param name="Invitation">Its id, by which it can be revoked.</param>
/// <param name="Link">The link.</param>
/// <param name="QrCode">The link as a picture: SVG.</param>
/// <param name="Expires">When it stops working.</param>
public sealed record InvitationMade(string Invitation, string Link, string QrCode, DateTimeOffset Expires);

/// <summary>An invitation in a keeper's list.</summary>
/// <param name="Invitation">Its id.</param>
/// <param name="Role">The role it gives.</param>
/// <param name="Label">What its maker called it.</param>
/// <param name="Boats">For crew, the boats it shows.</param>
/// <param name="MadeBy">The member who made it; null where the server did.</param>
/// <param name="Made">When it was made.</param>
/// <param name="Expires">When it stops working.</param>
/// <param name="Ended">When it was used or revoked.</param>
public sealed record InvitationListed(
    string Invitation,
    string Role,
    string Label,
    IReadOnlyList<string>? Boats,
    string? MadeBy,
    DateTimeOffset Made,
    DateTimeOffset Expires,
    DateTimeOffset? Ended);

/// <summary>A line of the record of sign-ins.</summary>
/// <param name="At">When.</param>
/// <param name="Member">Who, by member id; null where it is not known.</param>
/// <param name="Outcome">What happened.</param>
public sealed record SignInListed(DateTimeOffset At, string? Member, string Outcome);
