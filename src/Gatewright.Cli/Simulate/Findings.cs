using Gatewright.Core.Diagnosing;
using Gatewright.Core.Simulating;

namespace Gatewright.Cli.Simulate;

/// <summary>What a simulation found.</summary>
/// <param name="Ranking">How often the truth came first.</param>
/// <param name="Reliability">Whether what was called so probable was so often true.</param>
/// <param name="Reading">How many readings it took to decide, each way of reading.</param>
internal sealed record Findings(Ranking Ranking, Reliability Reliability, IReadOnlyList<ReadingCount> Reading)
{
    public static Findings Of(SimulateRequest request, DiagnosingSettings settings)
    {
        var plan = new BoatPlan(request.Class) { Stations = request.Stations, Settings = settings };
        return new(Ranking.Of(plan, request), Reliability.Of(plan, request), ReadingCount.Of(plan, request));
    }

    /// <summary>
    /// Each boat with random numbers of its own, so that boats can be drawn side by side and one more boat changes none of
    /// the others.
    /// </summary>
    public static List<T> ForEachBoat<T>(SimulateRequest request, int kind, Func<Draws, T> one) =>
    [
        .. Enumerable.Range(0, request.Boats)
            .AsParallel()
            .AsOrdered()
            .Select(boat => one(new(new Random(SeedOf(request.Seed, kind, boat)).NextDouble))),
    ];

    private static int SeedOf(int seed, int kind, int boat) => unchecked((((seed * 31) + kind) * 1_000_003) + boat);
}
