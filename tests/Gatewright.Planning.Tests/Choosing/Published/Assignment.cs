using Gatewright.Planning.Choosing;

namespace Gatewright.Planning.Tests.Choosing.Published;

/// <summary>
/// The assignment problem as a choice: each worker is a group, each task an option and a thing of which there is one.
/// </summary>
internal static class Assignment
{
    public static Solution Solve(int[][] cost) =>
        new ChoiceSolver(SolverLimits.Default).Solve(Model(cost), [new Aim.OfOptions("cost", false, cost)]);

    public static ChoiceModel Model(int[][] cost) => new(
        [.. cost.Select(row => (IReadOnlyList<Choice>)[.. row.Select((_, task) => new Choice([new Use(task, 1)]))])],
        [.. cost[0].Select(_ => new Resource(1))],
        []);

    /// <summary>Numbers separated by space: how many there are in a row, then the rows one after another.</summary>
    public static int[][] Read(string resource)
    {
        using var stream = typeof(Assignment).Assembly.GetManifestResourceStream(typeof(Assignment), resource)!;
        using var reader = new StreamReader(stream);
        int[] numbers = [.. reader.ReadToEnd().Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Select(int.Parse)];
        return [.. numbers.Skip(1).Chunk(numbers[0])];
    }
}
