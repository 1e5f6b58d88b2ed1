namespace Gatewright.Replica.Exchanging;

/// <summary>How long to leave a server alone that does not answer: longer each time, never quite the same for two devices.</summary>
/// <param name="chance">What the difference is drawn from.</param>
internal sealed class Waits(Random chance)
{
    private const double Shortest = 2;
    private const double Longest = 300;

    private int _times;

    /// <summary>The next wait: half of it fixed, half drawn, and not shorter than the server asks for.</summary>
    public TimeSpan Next(TimeSpan? asked)
    {
        double most = Math.Min(Longest, Shortest * Math.Pow(2, Math.Min(_times++, 20)));
        var drawn = TimeSpan.FromSeconds((most / 2) + (most / 2 * chance.NextDouble()));
        return asked > drawn ? asked.Value + TimeSpan.FromSeconds(chance.NextDouble()) : drawn;
    }

    /// <summary>It has answered.</summary>
    public void Reset() => _times = 0;
}
