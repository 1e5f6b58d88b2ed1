using FsCheck.Xunit;
using Gatewright.Core.Numerics;

namespace Gatewright.Core.Tests.Numerics;

public class AssignmentTests
{
    /// <summary>The tests of SciPy's linear_sum_assignment: 850 and 18.</summary>
    [Theory]
    [InlineData(new double[] { 400, 150, 400, 400, 450, 600, 300, 225, 300 }, 850)]
    [InlineData(new double[] { 10, 10, 8, 9, 8, 1, 9, 7, 4 }, 18)]
    public void Known_least_costs(double[] costs, double least) =>
        Assert.Equal(least, Sum(costs, 3, Assignment.Least(3, 3, (r, c) => costs[(3 * r) + c])));

    [Property]
    public void Nothing_is_cheaper_than_it(byte[] bytes, byte shape)
    {
        int rows = 1 + (shape % 4);
        int columns = rows + (shape / 4 % 3);
        if (bytes.Length < rows * columns)
        {
            return;
        }

        double[] costs = [.. bytes.Take(rows * columns).Select(b => (double)b)];
        int[] chosen = Assignment.Least(rows, columns, (r, c) => costs[(columns * r) + c]);

        Assert.Equal(rows, chosen.Distinct().Count());
        Assert.Equal(Cheapest(costs, rows, columns, 0, []), Sum(costs, columns, chosen));
    }

    [Fact]
    public void Each_row_needs_a_column() => Assert.Throws<ArgumentException>(() => Assignment.Least(2, 1, (_, _) => 0));

    private static double Sum(double[] costs, int columns, int[] chosen) => chosen.Select((c, r) => costs[(columns * r) + c]).Sum();

    private static double Cheapest(double[] costs, int rows, int columns, int row, HashSet<int> taken) => row == rows
        ? 0
        : Enumerable.Range(0, columns).Where(c => !taken.Contains(c))
            .Min(c => costs[(columns * row) + c] + Cheapest(costs, rows, columns, row + 1, [.. taken, c]));
}
