using Gatewright.Journal.Members;
using Gatewright.Server.Hosting;
using Gatewright.Server.Members;
using Gatewright.Store.Schema;
using Microsoft.EntityFrameworkCore;

namespace Gatewright.Server.Starting;

/// <summary>The way in to a store that has no account yet.</summary>
internal static class FirstKeeper
{
    private static readonly TimeSpan Life = TimeSpan.FromDays(2);

    /// <summary>
    /// Makes the link, and ends those that earlier starts made; null where there is an account. It leads to the club that
    /// was recorded from a terminal where there is one, and opens a club where there is none, or more than one. The link is
    /// written to the console alone, never to the log.
    /// </summary>
    public static async Task<string?> InviteAsync(IServiceProvider services, string listening, CancellationToken cancellation)
    {
        await using AsyncServiceScope scope = services.CreateAsyncScope();
        StoreDb db = scope.ServiceProvider.GetRequiredService<StoreDb>();
        if (await db.Users.AnyAsync(cancellation).ConfigureAwait(false))
        {
            return null;
        }

        await scope.ServiceProvider.GetRequiredService<Invitations>().EndFirstAsync(cancellation).ConfigureAwait(false);
        List<string> recorded = await db.Clubs.Where(c => c.Last > 0).Select(c => c.Club).Take(2).ToListAsync(cancellation).ConfigureAwait(false);
        return await MakeAsync(services, listening, recorded is [{ } only] ? only : null, cancellation).ConfigureAwait(false);
    }

    /// <summary>Whether a club is on record.</summary>
    public static async Task<bool> HasAsync(IServiceProvider services, string club, CancellationToken cancellation)
    {
        await using AsyncServiceScope scope = services.CreateAsyncScope();
        StoreDb db = scope.ServiceProvider.GetRequiredService<StoreDb>();
        return await db.Clubs.AnyAsync(c => c.Club == club && c.Last > 0, cancellation).ConfigureAwait(false);
    }

    /// <summary>Makes a link for a keeper of a club: of one that is on record, or with null the first of one that is not yet.</summary>
    public static async Task<string> MakeAsync(
        IServiceProvider services, string listening, string? club, CancellationToken cancellation)
    {
        await using AsyncServiceScope scope = services.CreateAsyncScope();
        (_, string secret) = await scope.ServiceProvider.GetRequiredService<Invitations>().MakeAsync(
            club ?? Secret.NewId(), Role.Keeper, "keeper", null, null, Life, cancellation).ConfigureAwait(false);
        return services.GetRequiredService<PublicAddress>().Link(listening, "join", secret);
    }
}
