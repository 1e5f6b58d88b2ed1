namespace Gatewright.Architecture.Tests.Samples;

/// <summary>Types as Core has them.</summary>
public static class Lasting
{
    public const int Most = 3;

    public static IReadOnlyList<int> All { get; } = [1, 2, 3];

    public static Func<int, int> Twice { get; } = number => 2 * number;

    public static ReadOnlySpan<double> Table => [1, 2];

    public readonly record struct Value(double Degrees);

    public sealed record Named(string Name)
    {
        public double Weight { get; init; } = 1;

        public string Shown
        {
            get => field ?? Name;
            init;
        }
    }

    public sealed class WithInside(double factor)
    {
        private readonly double[] _inside = [1, 2];

        public string Name => field ??= $"{factor}";

        public double First => factor * _inside[0];

        public IEnumerable<double> Each()
        {
            foreach (double value in _inside)
            {
                yield return factor * value;
            }
        }
    }
}
