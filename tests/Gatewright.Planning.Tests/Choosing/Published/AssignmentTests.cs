using Gatewright.Planning.Choosing;

namespace Gatewright.Planning.Tests.Choosing.Published;

public class AssignmentTests
{
    // SciPy, scipy/optimize/tests/test_linear_assignment.py, test_linear_sum_assignment_small_inputs: the first two
    // matrices, whose optimal costs there are [150, 400, 300] and [10, 1, 7].
    [Fact]
    public void A_square_of_hundreds_costs_850() =>
        Assert.Equal(850, Proven(Assignment.Solve([[400, 150, 400], [400, 450, 600], [300, 225, 300]])));

    [Fact]
    public void A_square_of_small_costs_costs_18() =>
        Assert.Equal(18, Proven(Assignment.Solve([[10, 10, 8], [9, 8, 1], [9, 7, 4]])));

    // OR-Library (J. E. Beasley), assignment problem assign100: cost matrix in assign100.txt beside this file; optimal
    // value 305 as given on the library's page of assignment problems.
    [Fact]
    public void Assign100_of_the_OR_Library_costs_305()
    {
        int[][] cost = Assignment.Read("assign100.txt");

        Solution solution = Assignment.Solve(cost);

        Assert.Equal(305, Proven(solution));
        Assert.Equal(100, solution.Chosen.Distinct().Count());
        Assert.Equal(305, solution.Chosen.Select((task, worker) => cost[worker][task]).Sum());
    }

    [Fact]
    public void The_file_is_read_whole()
    {
        int[][] cost = Assignment.Read("assign100.txt");

        Assert.Equal(100, cost.Length);
        Assert.All(cost, row => Assert.Equal(100, row.Length));
    }

    private static long Proven(Solution solution)
    {
        Assert.True(solution.Aims[0].IsProven);
        return solution.Aims[0].Value;
    }
}
