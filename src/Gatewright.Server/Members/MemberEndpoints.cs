using System.Text.Json;
using Gatewright.Journal.Members;
using Gatewright.Server.Hosting;
using Gatewright.Server.Problems;
using Gatewright.Store.Schema;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.EntityFrameworkCore;

namespace Gatewright.Server.Members;

/// <summary>Members and invitations, for keepers.</summary>
internal static class MemberEndpoints
{
    private const int LongestLabel = 100;
    private const int MostBoats = 200;

    /// <summary>Adds them to the routes of a club.</summary>
    public static void MapMembers(this RouteGroupBuilder club)
    {
        club.MapGet("/members", async (HttpContext context, MemberList members) =>
                await members.AllAsync(ClubAccess.Of(context).Club, context.RequestAborted).ConfigureAwait(false))
            .Needs(ClubRight.ReadJournal)
            .WithSummary("Who belongs to the club, those who left included, without their names.");
        club.MapPut("/members/{member}/role", ChangeRoleAsync)
            .Needs(ClubRight.Keep)
            .WithSummary("Give a member another role.");
        club.MapDelete("/members/{member}", EndAsync)
            .Needs(ClubRight.Keep)
            .WithSummary("End a membership: the name goes, what was recorded stays under the member's id.");
        club.MapGet("/invitations", ListAsync)
            .Needs(ClubRight.Keep)
            .WithSummary("The links that let people in.");
        club.MapPost("/invitations", InviteAsync)
            .Needs(ClubRight.Keep)
            .WithSummary("Make a link: for an account it works once, for crew until it is revoked.");
        club.MapDelete("/invitations/{invitation}", RevokeAsync)
            .Needs(ClubRight.Keep)
            .WithSummary("Revoke a link.");
        club.MapGet("/sign-ins", SignInsAsync)
            .Needs(ClubRight.Keep)
            .WithSummary("The record of sign-ins of the club's members, latest first, 500 at most.");
    }

    private static async Task<Results<NoContent, ProblemHttpResult>> ChangeRoleAsync(
        HttpContext context, string member, RoleRequest request, MemberList members)
    {
        if (Roles.Of(request.Role) is not { } role || !Roles.OfAccounts.Contains(role))
        {
            var fields = new Fields();
            fields.Expect(false, "role", "keeper, helper or coach");
            return Problem.Fields(fields.Errors);
        }

        return Answer(await members.ChangeRoleAsync(ClubAccess.Of(context).Club, member, role, context.RequestAborted).ConfigureAwait(false));
    }

    private static async Task<Results<NoContent, ProblemHttpResult>> EndAsync(HttpContext context, string member, MemberList members) =>
        Answer(await members.EndAsync(ClubAccess.Of(context).Club, member, context.RequestAborted).ConfigureAwait(false));

    private static Results<NoContent, ProblemHttpResult> Answer(Change change) => change switch
    {
        Change.Done => TypedResults.NoContent(),
        Change.NoSuchMember => Problem.NotFound("member"),
        _ => Problem.Of(StatusCodes.Status409Conflict, "The last keeper", "A club keeps one keeper at least: make somebody else one first."),
    };

    private static async Task<Ok<InvitationListed[]>> ListAsync(HttpContext context, Invitations invitations)
    {
        IReadOnlyList<InvitationRow> rows = await invitations.ListAsync(ClubAccess.Of(context).Club, context.RequestAborted).ConfigureAwait(false);
        return TypedResults.Ok<InvitationListed[]>([.. rows.Select(row => new InvitationListed(
            row.Invitation,
            row.Role,
            row.Label,
            row.Boats is null ? null : JsonSerializer.Deserialize(row.Boats, ServerJson.Default.StringArray),
            row.MadeBy,
            new(row.MadeTicks, TimeSpan.Zero),
            new(row.ExpiresTicks, TimeSpan.Zero),
            row.EndedTicks is { } ended ? new(ended, TimeSpan.Zero) : null))]);
    }

    private static async Task<Results<Ok<InvitationMade>, ProblemHttpResult>> InviteAsync(
        HttpContext context, InviteRequest request, Invitations invitations, PublicAddress address)
    {
        var fields = new Fields();
        Role? role = Roles.Of(request.Role);
        bool isCrew = role == Role.Crew;
        fields.Expect(role is not null, "role", "keeper, helper, coach or crew");
        fields.ExpectLine(request.Label, "label", LongestLabel);
        fields.Expect(
            !isCrew || request.Boats is { Count: > 0 and <= MostBoats }, "boats", $"for crew, the keys of 1 to {MostBoats} boats");
        int longest = (int)(isCrew ? Invitations.OfCrew : Invitations.Longest).TotalDays;
        fields.Expect(request.Days is null || (request.Days > 0 && request.Days <= longest), "days", $"1 to {longest}");
        if (fields.Any)
        {
            return Problem.Fields(fields.Errors);
        }

        ClubAccess access = ClubAccess.Of(context);
        TimeSpan life = request.Days is { } days ? TimeSpan.FromDays(days) : isCrew ? Invitations.OfCrew : Invitations.Usual;
        (InvitationRow row, string secret) = await invitations.MakeAsync(
            access.Club, role!.Value, request.Label!.Trim(), isCrew ? request.Boats : null, access.Member, life, context.RequestAborted).ConfigureAwait(false);
        string link = address.Link(context.Request, isCrew ? "crew" : "join", secret);
        return TypedResults.Ok(new InvitationMade(row.Invitation, link, QrPicture.Svg(link), new(row.ExpiresTicks, TimeSpan.Zero)));
    }

    private static async Task<Results<NoContent, ProblemHttpResult>> RevokeAsync(
        HttpContext context, string invitation, Invitations invitations) =>
        await invitations.EndAsync(ClubAccess.Of(context).Club, invitation, context.RequestAborted).ConfigureAwait(false)
            ? TypedResults.NoContent()
            : Problem.NotFound("link that still works");

    private static async Task<Ok<SignInListed[]>> SignInsAsync(HttpContext context, StoreDb db)
    {
        const int Most = 500;
        string club = ClubAccess.Of(context).Club;
        Dictionary<string, string> members = await db.Memberships
            .Where(m => m.Club == club && m.AccountId != null)
            .ToDictionaryAsync(m => m.AccountId!, m => m.Member, context.RequestAborted).ConfigureAwait(false);
        List<SignInRow> rows = await db.SignIns.AsNoTracking()
            .Where(s => s.Club == club || (s.Club == null && s.AccountId != null && members.Keys.Contains(s.AccountId)))
            .OrderByDescending(s => s.AtTicks)
            .Take(Most)
            .ToListAsync(context.RequestAborted).ConfigureAwait(false);
        return TypedResults.Ok<SignInListed[]>([.. rows.Select(row => new SignInListed(
            new(row.AtTicks, TimeSpan.Zero),
            row.AccountId is null ? null : members.GetValueOrDefault(row.AccountId),
            row.Outcome))]);
    }
}
