namespace Gatewright.Server.Accounts;

/// <summary>Signing in.</summary>
/// <param name="Name">The sign-in name.</param>
/// <param name="Password">The password.</param>
public sealed record SignInRequest(string? Name, string? Password);

/// <summary>Accepting an invitation.</summary>
/// <param name="Secret">The link's secret.</param>
/// <param name="Name">The sign-in name to have; left out by somebody who is signed in.</param>
/// <param name="Password">The password to have; left out by somebody who is signed in.</param>
/// <param name="DisplayName">What the others see; left out by somebody who is signed in.</param>
/// <param name="ClubName">What the club is called; for its first keeper.</param>
public sealed record JoinRequest(string? Secret, string? Name, string? Password, string? DisplayName, string? ClubName);

/// <summary>A secret to be looked at, or to come in by.</summary>
/// <param name="Secret">The link's secret.</param>
public sealed record SecretRequest(string? Secret);

/// <summary>What an invitation is for.</summary>
/// <param name="Club">The club's id.</param>
/// <param name="ClubName">Its name; null until its first keeper gives it one.</param>
/// <param name="Role">The role it gives.</param>
/// <param name="Label">What its maker called it.</param>
public sealed record InvitationSeen(string Club, string? ClubName, string Role, string Label);

/// <summary>Changing the name others see.</summary>
/// <param name="DisplayName">The name.</param>
public sealed record RenameRequest(string? DisplayName);

/// <summary>Changing a password.</summary>
/// <param name="Password">The one it was.</param>
/// <param name="NewPassword">The one it is to be.</param>
public sealed record PasswordRequest(string? Password, string? NewPassword);

/// <summary>Something that wants the password once more.</summary>
/// <param name="Password">The password.</param>
public sealed record ConfirmRequest(string? Password);

/// <summary>Who is signed in.</summary>
/// <param name="Account">Their sign-in name; null while nobody is.</param>
/// <param name="DisplayName">What the others see.</param>
/// <param name="Clubs">The clubs they belong to.</param>
/// <param name="Antiforgery">What every request that changes something carries in the header X-Gatewright-Token.</param>
public sealed record Session(string? Account, string? DisplayName, IReadOnlyList<SessionClub> Clubs, string Antiforgery);

/// <summary>A club as its member sees it.</summary>
/// <param name="Club">Its id.</param>
/// <param name="Name">Its name.</param>
/// <param name="Member">The member's id in its journal.</param>
/// <param name="Role">The member's role.</param>
public sealed record SessionClub(string Club, string Name, string Member, string Role);

/// <summary>A passkey that was made.</summary>
/// <param name="Credential">What navigator.credentials.create() gave, as JSON text.</param>
/// <param name="Name">What its owner calls it.</param>
public sealed record PasskeyRequest(string? Credential, string? Name);

/// <summary>A passkey.</summary>
/// <param name="Id">Its id, in base64url.</param>
/// <param name="Name">What its owner calls it.</param>
/// <param name="Made">When it was made.</param>
public sealed record PasskeySeen(string Id, string? Name, DateTimeOffset Made);
