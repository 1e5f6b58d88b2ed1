using Gatewright.Journal.Entries;
using Gatewright.Journal.Members;
using Gatewright.Server.Hosting;
using Gatewright.Server.Pages;
using Gatewright.Store;
using Gatewright.Store.Schema;
using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Identity;

namespace Gatewright.Server.Starting;

/// <summary>The invented boathouse, and the way into it.</summary>
internal static class DemoShed
{
    private const string Club = "demo";
    private const string Member = "demo-keeper";
    private const string AccountName = "demo";

    /// <summary>Records the readings of the example files in a club of their own.</summary>
    public static async Task FillAsync(IServiceProvider services, CancellationToken cancellation)
    {
        await using AsyncServiceScope scope = services.CreateAsyncScope();
        UserManager<Account> accounts = scope.ServiceProvider.GetRequiredService<UserManager<Account>>();
        var account = new Account { UserName = AccountName, DisplayName = "Demo keeper" };
        await accounts.CreateAsync(account).ConfigureAwait(false);
        StoreDb db = scope.ServiceProvider.GetRequiredService<StoreDb>();
        db.Memberships.Add(new() { Club = Club, Member = Member, AccountId = account.Id, Role = Role.Keeper.Word() });
        await db.SaveChangesAsync(cancellation).ConfigureAwait(false);
        IReadOnlyList<Entry> entries = DemoEntries.Of(Club, Member, services.GetRequiredService<TimeProvider>().GetUtcNow());
        await services.GetRequiredService<JournalStore>().AppendAsync(Club, entries, cancellation).ConfigureAwait(false);
    }

    /// <summary>Lets whoever asks walk in; there in the demo alone.</summary>
    public static void MapDemo(this WebApplication app) =>
        app.MapPost("/demo", WalkInAsync).AllowAnonymous().RequireRateLimiting(RateLimits.SignIn).ExcludeFromDescription();

    private static async Task<IResult> WalkInAsync(
        HttpContext context, IAntiforgery antiforgery, UserManager<Account> accounts, SignInManager<Account> signIn)
    {
        if (!await antiforgery.IsRequestValidAsync(context).ConfigureAwait(false))
        {
            return TypedResults.BadRequest();
        }

        await signIn.SignInAsync((await accounts.FindByNameAsync(AccountName).ConfigureAwait(false))!, isPersistent: false).ConfigureAwait(false);
        bool isForPages = context.Request.HasFormContentType && context.Request.Form["to"] == "pages";
        return TypedResults.LocalRedirect(isForPages ? LocalPath.Of($"/club/{Club}") : AppFiles.Path + "/");
    }
}
