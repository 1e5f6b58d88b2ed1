using Gatewright.Planning.Choosing;

namespace Gatewright.Planning.Tests.Choosing.Published;

/// <summary>
/// John Burkardt, KNAPSACK_01: data for the 01 knapsack problem (Florida State University), data sets P01, P02, P03 and
/// P06 with their optimal selections. The optimal profits are those of the selections he gives.
/// </summary>
public class KnapsackTests
{
    public static TheoryData<int, int[], int[], int> Sets { get; } = new()
    {
        { 165, [23, 31, 29, 44, 53, 38, 63, 85, 89, 82], [92, 57, 49, 68, 60, 43, 67, 84, 87, 72], 309 },
        { 26, [12, 7, 11, 8, 9], [24, 13, 23, 15, 16], 51 },
        { 190, [56, 59, 80, 64, 75, 17], [50, 50, 64, 46, 50, 5], 150 },
        { 170, [41, 50, 49, 59, 55, 57, 60], [442, 525, 511, 593, 546, 564, 617], 1735 },
    };

    [Theory]
    [MemberData(nameof(Sets))]
    public void The_fullest_knapsack_is_worth_what_is_published(int capacity, int[] weights, int[] values, int optimum)
    {
        var items = weights.Select(w => (IReadOnlyList<Choice>)[Choice.Free, new([new(0, w)])]).ToList();
        int[][] worth = [.. values.Select(v => new[] { 0, v })];

        Solution solution = new ChoiceSolver(SolverLimits.Default).Solve(
            new(items, [new Resource(capacity)], []), [new Aim.OfOptions("value", true, worth)]);

        Assert.True(solution.Aims[0].IsProven);
        Assert.Equal(optimum, solution.Aims[0].Value);
        Assert.InRange(weights.Where((_, item) => solution.Chosen[item] == 1).Sum(), 0, capacity);
    }
}
