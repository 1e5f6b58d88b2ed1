using Gatewright.Journal.Facts;
using Gatewright.Journal.Members;
using Gatewright.Server.Members;
using Gatewright.Server.Problems;
using Gatewright.Server.Syncing;
using Gatewright.Store.Schema;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;

namespace Gatewright.Server.Accounts;

/// <summary>Lets somebody into a club by an invitation: all of it happens, or none.</summary>
internal sealed class Joining(
    StoreDb db, UserManager<Account> accounts, Invitations invitations, ServerEntries entries, SignInLog log)
{
    private const int LongestName = 100;

    /// <summary>Accepts an invitation.</summary>
    /// <param name="request">What was asked.</param>
    /// <param name="signedIn">The account of whoever asks, if they are signed in.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <returns>The account that is now a member, or what is wrong.</returns>
    public async Task<(Account? Account, Fields Wrong)> AcceptAsync(
        JoinRequest request, Account? signedIn, CancellationToken cancellation)
    {
        var fields = new Fields();
        InvitationRow? invitation = await invitations.FindAsync(request.Secret, cancellation).ConfigureAwait(false);
        Role? role = Roles.Of(invitation?.Role);
        fields.Expect(
            role is { } given && Roles.OfAccounts.Contains(given),
            "secret",
            "a link that still works: it may have been used, revoked, or be too old; ask a keeper for a new one");
        if (invitation is null)
        {
            return (null, fields);
        }

        bool isFirst = await invitations.OpensClubAsync(invitation, cancellation).ConfigureAwait(false);
        if (isFirst)
        {
            fields.ExpectLine(request.ClubName, "clubName", LongestName);
        }

        Check(fields, request, signedIn);
        if (fields.Any)
        {
            return (null, fields);
        }

        Account? account = await db.OneAfterAnotherAsync(
            async transaction =>
            {
                Account? let = await LetInAsync(invitation, request, signedIn, fields, cancellation).ConfigureAwait(false);
                if (let is not null)
                {
                    await transaction.CommitAsync(cancellation).ConfigureAwait(false);
                }

                return let;
            },
            cancellation).ConfigureAwait(false);
        if (account is null)
        {
            return (null, fields);
        }

        if (isFirst)
        {
            await NameClubAsync(invitation.Club, account, request.ClubName!, cancellation).ConfigureAwait(false);
        }

        return (account, fields);
    }

    private static void Check(Fields fields, JoinRequest request, Account? signedIn)
    {
        if (signedIn is not null)
        {
            return;
        }

        fields.Expect(
            request.Name is { Length: >= 2 and <= 64 } name && name.All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '.' or '_' or '@'),
            "name",
            "2 to 64 letters (a to z), digits or - . _ @, to sign in by");
        fields.ExpectLine(request.DisplayName, "displayName", LongestName);
        PasswordRules.Check(fields, request.Password, "password");
    }

    private async Task<Account?> LetInAsync(
        InvitationRow invitation, JoinRequest request, Account? signedIn, Fields fields, CancellationToken cancellation)
    {
        // First, so that of two who use one link at once only one goes on.
        if (!await invitations.EndAsync(invitation.Club, invitation.Invitation, cancellation).ConfigureAwait(false))
        {
            fields.Expect(false, "secret", "a link that was not used a moment ago");
            return null;
        }

        if (!await db.Users.AnyAsync(cancellation).ConfigureAwait(false))
        {
            await invitations.EndFirstAsync(cancellation).ConfigureAwait(false);
        }

        Account account = signedIn ?? new() { UserName = request.Name, DisplayName = request.DisplayName!.Trim() };
        if (signedIn is null)
        {
            await MakeAsync(account, request.Password!, fields).ConfigureAwait(false);
        }
        else if (await db.Memberships.AnyAsync(m => m.Club == invitation.Club && m.AccountId == account.Id, cancellation).ConfigureAwait(false))
        {
            fields.Expect(false, "secret", "a link to a club you are not in yet");
        }

        if (fields.Any)
        {
            return null;
        }

        db.Memberships.Add(new() { Club = invitation.Club, Member = Secret.NewId(), AccountId = account.Id, Role = invitation.Role });
        await db.SaveChangesAsync(cancellation).ConfigureAwait(false);
        await log.AddAsync("joined", account.Id, invitation.Club, cancellation).ConfigureAwait(false);
        return account;
    }

    private async Task MakeAsync(Account account, string password, Fields fields)
    {
        const string AnotherName = "another name: somebody has this one";
        try
        {
            IdentityResult made = await accounts.CreateAsync(account, password).ConfigureAwait(false);
            foreach (IdentityError error in made.Errors)
            {
                bool isName = error.Code is nameof(IdentityErrorDescriber.DuplicateUserName) or nameof(IdentityErrorDescriber.InvalidUserName);
                fields.Expect(false, isName ? "name" : "password", isName ? AnotherName : error.Description);
            }
        }
        catch (DbUpdateException thrown) when (StoreTrouble.IsTaken(thrown))
        {
            // Somebody took it between the look and the writing.
            fields.Expect(false, "name", AnotherName);
        }
    }

    private async Task NameClubAsync(string club, Account account, string name, CancellationToken cancellation)
    {
        string member = await db.Memberships
            .Where(m => m.Club == club && m.AccountId == account.Id)
            .Select(m => m.Member)
            .FirstAsync(cancellation).ConfigureAwait(false);
        var set = new ThingSet(Things.Settings, "club", new Dictionary<string, string?> { ["name"] = name.Trim() });
        await entries.AppendAsync(club, member, [set], cancellation).ConfigureAwait(false);
    }
}
