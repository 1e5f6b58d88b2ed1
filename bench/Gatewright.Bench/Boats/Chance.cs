namespace Gatewright.Bench.Boats;

/// <summary>Numbers that look drawn at random and are the same for the same seed, in every version of .NET.</summary>
internal sealed class Chance(int seed)
{
    private readonly Random _random = new(seed);

    public bool OneIn(int count) => _random.Next(count) == 0;

    /// <summary>Normal about 0, by Box and Muller's transformation.</summary>
    public double Normal(double deviation) =>
        deviation * Math.Sqrt(-2 * Math.Log(1 - _random.NextDouble())) * Math.Cos(2 * Math.PI * _random.NextDouble());
}
