using System.Threading.RateLimiting;

namespace Gatewright.Server.Planning;

/// <summary>
/// Whose plan is worked out now: one at a time on the whole server, of each club a few a minute, so that no club keeps the
/// solver from the others. Nobody waits for long.
/// </summary>
/// <param name="patience">How long somebody waits for the plans before theirs.</param>
internal sealed class PlanTurns(TimeSpan patience) : IDisposable
{
    /// <summary>So many plans of one club are worked out in a minute. One that stands already is told as often as anybody asks.</summary>
    public const int AMinute = 6;

    private readonly SemaphoreSlim _one = new(1);
    private readonly PartitionedRateLimiter<string> _ofClub = PartitionedRateLimiter.Create<string, string>(club =>
        RateLimitPartition.GetFixedWindowLimiter(club, _ => new() { PermitLimit = AMinute, Window = TimeSpan.FromMinutes(1) }));

    /// <summary>Waits for a club's turn; dispose it when the plan is made.</summary>
    /// <exception cref="PlanLaterException">It is not to be had now.</exception>
    public async Task<IDisposable> EnterAsync(string club, CancellationToken cancellation)
    {
        using RateLimitLease lease = _ofClub.AttemptAcquire(club);
        if (!lease.IsAcquired)
        {
            throw new PlanLaterException(
                StatusCodes.Status429TooManyRequests, lease.TryGetMetadata(MetadataName.RetryAfter, out TimeSpan wait) ? wait : TimeSpan.FromMinutes(1));
        }

        return await _one.WaitAsync(patience, cancellation).ConfigureAwait(false)
            ? new Turn(_one)
            : throw new PlanLaterException(StatusCodes.Status503ServiceUnavailable, patience);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _one.Dispose();
        _ofClub.Dispose();
    }

    private sealed class Turn(SemaphoreSlim one) : IDisposable
    {
        public void Dispose() => one.Release();
    }
}

/// <summary>A plan is not worked out now.</summary>
/// <param name="status">429 where the club has asked too often, 503 where others' plans take too long.</param>
/// <param name="wait">When to ask again.</param>
internal sealed class PlanLaterException(int status, TimeSpan wait) : Exception
{
    public int Status { get; } = status;

    public TimeSpan Wait { get; } = wait;
}
