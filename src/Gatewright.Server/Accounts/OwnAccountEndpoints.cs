using Gatewright.Server.Hosting;
using Gatewright.Server.Problems;
using Gatewright.Store.Schema;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Identity;

namespace Gatewright.Server.Accounts;

/// <summary>What somebody who is signed in does with their own account.</summary>
internal static class OwnAccountEndpoints
{
    /// <summary>The policy that asks for an account, whatever its clubs.</summary>
    public const string SignedIn = "signed-in";

    /// <summary>Adds them to the routes.</summary>
    public static void MapOwnAccount(this RouteGroupBuilder api)
    {
        RouteGroupBuilder own = api.MapGroup("/account").RequireAuthorization(SignedIn);
        own.MapPut("/name", async (HttpContext context, RenameRequest request, OwnAccount account) =>
                Answer(await account.RenameAsync(context, request.DisplayName).ConfigureAwait(false)))
            .WithSummary("Change the name the others see.");
        own.MapPut("/password", async (HttpContext context, PasswordRequest request, OwnAccount account) =>
                Answer(await account.ChangePasswordAsync(context, request.Password, request.NewPassword).ConfigureAwait(false)))
            .RequireRateLimiting(RateLimits.SignIn)
            .WithSummary("Change the password; every other device is signed out within minutes.");
        own.MapGet("/data", (HttpContext context, OwnData data, UserManager<Account> accounts) =>
                TypedResults.Stream(to => data.WriteAsync(accounts.GetUserId(context.User)!, to, context.RequestAborted), "application/json", "gatewright-own-data.json"))
            .WithSummary("All that is held on you: account, memberships, sign-ins, and every entry you made.");
        own.MapPost("/end", async (HttpContext context, ConfirmRequest request, OwnAccount account) =>
                Answer(await account.EndAsync(context, request.Password).ConfigureAwait(false)))
            .RequireRateLimiting(RateLimits.SignIn)
            .WithSummary("End the account: the name is gone everywhere, what was recorded stays under the member's id.");
        own.MapGet("/passkeys", ListPasskeysAsync).WithSummary("Your passkeys.");
        own.MapPost("/passkeys/options", PasskeyOptionsAsync).WithSummary("What navigator.credentials.create() takes.");
        own.MapPost("/passkeys", AddPasskeyAsync).WithSummary("Keep a passkey that was made.");
        own.MapDelete("/passkeys/{id}", RemovePasskeyAsync).WithSummary("Forget a passkey.");
        api.MapPost("/session/passkey/options", async (SignInManager<Account> signIn) =>
                TypedResults.Content(await signIn.MakePasskeyRequestOptionsAsync(null!).ConfigureAwait(false), "application/json"))
            .AllowAnonymous().RequireRateLimiting(RateLimits.SignIn)
            .WithSummary("What navigator.credentials.get() takes.");
        api.MapPost("/session/passkey", SignInByPasskeyAsync)
            .AllowAnonymous().RequireRateLimiting(RateLimits.SignIn)
            .WithSummary("Sign in by a passkey.");
    }

    private static Results<NoContent, ProblemHttpResult> Answer(Fields wrong) =>
        wrong.Any ? Problem.Fields(wrong.Errors) : TypedResults.NoContent();

    private static async Task<Ok<PasskeySeen[]>> ListPasskeysAsync(HttpContext context, UserManager<Account> accounts)
    {
        Account account = (await accounts.GetUserAsync(context.User).ConfigureAwait(false))!;
        IList<UserPasskeyInfo> keys = await accounts.GetPasskeysAsync(account).ConfigureAwait(false);
        return TypedResults.Ok<PasskeySeen[]>([.. keys.Select(k => new PasskeySeen(
            System.Buffers.Text.Base64Url.EncodeToString(k.CredentialId), k.Name, k.CreatedAt))]);
    }

    private static async Task<ContentHttpResult> PasskeyOptionsAsync(
        HttpContext context, UserManager<Account> accounts, SignInManager<Account> signIn)
    {
        Account account = (await accounts.GetUserAsync(context.User).ConfigureAwait(false))!;
        string options = await signIn.MakePasskeyCreationOptionsAsync(new()
        {
            Id = account.Id,
            Name = account.UserName!,
            DisplayName = account.DisplayName,
        }).ConfigureAwait(false);
        return TypedResults.Content(options, "application/json");
    }

    private static async Task<Results<NoContent, ProblemHttpResult>> AddPasskeyAsync(
        HttpContext context, PasskeyRequest request, UserManager<Account> accounts, SignInManager<Account> signIn, SignInLog log)
    {
        var fields = new Fields();
        fields.Expect(request.Credential is { Length: > 0 and <= 16_384 }, "credential", "what navigator.credentials.create() gave, as JSON");
        fields.ExpectLine(request.Name, "name", 60);
        if (fields.Any)
        {
            return Problem.Fields(fields.Errors);
        }

        PasskeyAttestationResult made = await signIn.PerformPasskeyAttestationAsync(request.Credential!).ConfigureAwait(false);
        Account account = (await accounts.GetUserAsync(context.User).ConfigureAwait(false))!;
        if (made.Succeeded)
        {
            made.Passkey.Name = request.Name!.Trim();
        }

        if (!made.Succeeded || !(await accounts.AddOrUpdatePasskeyAsync(account, made.Passkey).ConfigureAwait(false)).Succeeded)
        {
            return Problem.Of(StatusCodes.Status400BadRequest, "The passkey is not taken", "It was not made for this server and account just now: try again.");
        }

        await log.AddAsync("passkey-added", account.Id, null, context.RequestAborted).ConfigureAwait(false);
        return TypedResults.NoContent();
    }

    private static async Task<Results<NoContent, ProblemHttpResult>> RemovePasskeyAsync(
        HttpContext context, string id, UserManager<Account> accounts, SignInLog log)
    {
        Account account = (await accounts.GetUserAsync(context.User).ConfigureAwait(false))!;
        if (!System.Buffers.Text.Base64Url.IsValid(id)
            || await accounts.GetPasskeyAsync(account, System.Buffers.Text.Base64Url.DecodeFromChars(id)).ConfigureAwait(false) is not { } key)
        {
            return Problem.NotFound("passkey");
        }

        await accounts.RemovePasskeyAsync(account, key.CredentialId).ConfigureAwait(false);
        await log.AddAsync("passkey-removed", account.Id, null, context.RequestAborted).ConfigureAwait(false);
        return TypedResults.NoContent();
    }

    private static async Task<Results<Ok<Session>, ProblemHttpResult>> SignInByPasskeyAsync(
        HttpContext context, PasskeyRequest request, SignIns signIns) =>
        request.Credential is { Length: > 0 and <= 16_384 } credential
        && (await signIns.ByPasskeyAsync(credential, context.RequestAborted).ConfigureAwait(false)).Succeeded
            ? TypedResults.Ok(await signIns.SessionAsync(context).ConfigureAwait(false))
            : AccountEndpoints.Refused();
}
