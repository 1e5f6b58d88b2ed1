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
    /// Makes the link, and ends those that earlier starts made; null where there is an account. The link is written to
    /// the console alone, never to the log.
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
        return await MakeAsync(services, listening, cancellation).ConfigureAwait(false);
    }

    /// <summary>Makes a link for the first keeper of a club that is not there yet.</summary>
    public static async Task<string> MakeAsync(IServiceProvider services, string listening, CancellationToken cancellation)
    {
        await using AsyncServiceScope scope = services.CreateAsyncScope();
        (_, string secret) = await scope.ServiceProvider.GetRequiredService<Invitations>().MakeAsync(
            Secret.NewId(), Role.Keeper, "first keeper", null, null, Life, cancellation).ConfigureAwait(false);
        return services.GetRequiredService<PublicAddress>().Link(listening, "join", secret);
    }
}
