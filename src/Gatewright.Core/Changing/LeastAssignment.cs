namespace Gatewright.Core.Changing;

/// <summary>
/// Who goes where at the least cost in all, exactly: the assignment problem, by shortest augmenting paths with potentials
/// (Kuhn 1955, Munkres 1957; in this form Jonker and Volgenant 1987). n³ steps: of two eights nothing.
/// </summary>
public static class LeastAssignment
{
    /// <summary>The column of each row.</summary>
    /// <param name="cost">As many columns as rows; whole numbers, so that nothing is lost by rounding.</param>
    /// <exception cref="ArgumentException">It is not square.</exception>
    public static int[] Of(long[][] cost)
    {
        ArgumentNullException.ThrowIfNull(cost);
        int size = cost.Length;
        if (Array.Exists(cost, row => row.Length != size))
        {
            throw new ArgumentException("There must be as many columns as rows.", nameof(cost));
        }

        // Rows and columns are numbered from 1: 0 is the root of each search.
        long[] ofRow = new long[size + 1];
        long[] ofColumn = new long[size + 1];
        int[] rowAt = new int[size + 1];
        for (int row = 1; row <= size; row++)
        {
            Augment(cost, row, ofRow, ofColumn, rowAt);
        }

        int[] columns = new int[size];
        for (int column = 1; column <= size; column++)
        {
            columns[rowAt[column] - 1] = column - 1;
        }

        return columns;
    }

    private static void Augment(long[][] cost, int start, long[] ofRow, long[] ofColumn, int[] rowAt)
    {
        int size = cost.Length;
        long[] nearest = new long[size + 1];
        int[] cameFrom = new int[size + 1];
        bool[] isDone = new bool[size + 1];
        Array.Fill(nearest, long.MaxValue);
        rowAt[0] = start;
        int at = 0;
        while (rowAt[at] != 0)
        {
            isDone[at] = true;
            int row = rowAt[at];
            int next = 0;
            long least = long.MaxValue;
            for (int column = 1; column <= size; column++)
            {
                if (isDone[column])
                {
                    continue;
                }

                long reduced = cost[row - 1][column - 1] - ofRow[row] - ofColumn[column];
                if (reduced < nearest[column])
                {
                    (nearest[column], cameFrom[column]) = (reduced, at);
                }

                if (nearest[column] < least)
                {
                    (least, next) = (nearest[column], column);
                }
            }

            for (int column = 0; column <= size; column++)
            {
                if (isDone[column])
                {
                    ofRow[rowAt[column]] += least;
                    ofColumn[column] -= least;
                }
                else
                {
                    nearest[column] -= least;
                }
            }

            at = next;
        }

        while (at != 0)
        {
            rowAt[at] = rowAt[cameFrom[at]];
            at = cameFrom[at];
        }
    }
}
