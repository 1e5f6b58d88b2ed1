using FsCheck.Xunit;
using Gatewright.Core.Changing;
using Gatewright.Core.Tests.Support;

namespace Gatewright.Core.Tests.Changing;

public class LeastAssignmentTests
{
    // SciPy, scipy/optimize/tests/test_linear_assignment.py, test_linear_sum_assignment_small_inputs: the first two matrices, whose
    // optimal costs there are [150, 400, 300] and [10, 1, 7].
    [Fact]
    public void A_square_of_hundreds_costs_850() => Assert.Equal(850, Sum([[400, 150, 400], [400, 450, 600], [300, 225, 300]]));

    [Fact]
    public void A_square_of_small_costs_costs_18() => Assert.Equal(18, Sum([[10, 10, 8], [9, 8, 1], [9, 7, 4]]));

    // OR-Library (J. E. Beasley), assignment problem assign100: optimal value 305 as given on the library's page.
    [Fact]
    public void Assign100_of_the_OR_Library_costs_305()
    {
        long[] numbers = [.. string.Join(' ', Embedded.Lines("Published/assign100.txt"))
            .Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Select(long.Parse)];
        long[][] cost = [.. numbers.Skip(1).Chunk((int)numbers[0])];

        Assert.Equal(100, cost.Length);
        Assert.Equal(305, Sum(cost));
    }

    [Property]
    public void It_costs_as_little_as_the_cheapest_of_all_orders(byte[] numbers)
    {
        const int Size = 5;
        long[][] cost = [.. Enumerable.Range(0, Size).Select(row => Enumerable.Range(0, Size)
            .Select(column => numbers.Length == 0 ? 0L : numbers[((row * Size) + column) % numbers.Length] - 100L).ToArray())];

        Assert.Equal(Orders.Of(Size).Min(order => order.Select((column, row) => cost[row][column]).Sum()), Sum(cost));
    }

    [Fact]
    public void A_table_that_is_not_square_is_refused() =>
        Assert.Throws<ArgumentException>(() => LeastAssignment.Of([[1, 2], [3]]));

    private static long Sum(long[][] cost)
    {
        int[] columns = LeastAssignment.Of(cost);
        Assert.Equal(Enumerable.Range(0, cost.Length), columns.Order());
        return columns.Select((column, row) => cost[row][column]).Sum();
    }
}
