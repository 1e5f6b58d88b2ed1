using Gatewright.Core.Simulating;

namespace Gatewright.Core.Tests.Simulating;

/// <summary>Draws that are the same in every run: a seeded generator keeps its sequence from one version of .NET to the next.</summary>
internal static class SeededDraws
{
    public static Draws Of(int seed) => new(new Random(seed).NextDouble);

    /// <summary>
    /// How many boats a simulation takes: the tests' own number, or ten times that when GATEWRIGHT_LONG is set.
    /// </summary>
    public static int Boats(int usual) => LongRun.IsAsked ? 10 * usual : usual;
}
