using Gatewright.Store.Schema;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Diagnostics.HealthChecks;

namespace Gatewright.Server.Hosting;

/// <summary>Whether the store answers: a server without it lives, and is not ready.</summary>
internal sealed class StoreHealth(StoreDb db) : IHealthCheck
{
    /// <inheritdoc/>
    public async Task<HealthCheckResult> CheckHealthAsync(
        HealthCheckContext context, CancellationToken cancellationToken = default)
    {
        try
        {
            await db.Clubs.AsNoTracking().Select(c => c.Last).FirstOrDefaultAsync(cancellationToken).ConfigureAwait(false);
            return HealthCheckResult.Healthy();
        }
        catch (Exception broken) when (broken is System.Data.Common.DbException or InvalidOperationException or TimeoutException)
        {
            return HealthCheckResult.Unhealthy("The store does not answer.");
        }
    }
}
