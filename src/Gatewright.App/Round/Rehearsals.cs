namespace Gatewright.App.Round;

/// <summary>Has readings rehearsed that nobody takes (<see cref="Rehearsal"/>), once for as long as the program runs.</summary>
public sealed class Rehearsals(IServiceProvider services, ILoggerFactory logs)
{
    private bool _isBegun;

    /// <summary>How many came to their end.</summary>
    public int Finished { get; private set; }

    /// <summary>Rehearses, unless that was begun before.</summary>
    /// <param name="round">The round's key.</param>
    /// <param name="boat">The boat's key.</param>
    public async Task RehearseAsync(string round, string boat)
    {
        if (!_isBegun)
        {
            _isBegun = true;
            await using var unseen = new UnseenRenderer(services, logs);
            Finished += await unseen.DrawAsync(round, boat) ? 1 : 0;
        }
    }
}
