namespace Gatewright.Core.Numerics;

/// <summary>Each of some rows given a column of its own, at the least total cost.</summary>
public static class Assignment
{
    /// <summary>The column of each row.</summary>
    /// <remarks>
    /// By shortest augmenting paths with prices on rows and columns (the Hungarian method after Jonker and Volgenant): exact;
    /// rows² · columns steps. [[400,150,400],[400,450,600],[300,225,300]] → 850.
    /// </remarks>
    /// <exception cref="ArgumentException">There are more rows than columns.</exception>
    public static int[] Least(int rows, int columns, Func<int, int, double> cost)
    {
        ArgumentNullException.ThrowIfNull(cost);
        if (rows > columns)
        {
            throw new ArgumentException("Each row needs a column of its own.", nameof(rows));
        }

        double[] rowPrice = new double[rows + 1];
        double[] columnPrice = new double[columns + 1];
        int[] rowOf = new int[columns + 1];
        for (int row = 1; row <= rows; row++)
        {
            int[] cameFrom = new int[columns + 1];
            double[] way = new double[columns + 1];
            bool[] isDone = new bool[columns + 1];
            Array.Fill(way, double.PositiveInfinity);
            rowOf[0] = row;
            int column = 0;
            do
            {
                column = Further(column);
            }
            while (rowOf[column] != 0);

            for (; column != 0; column = cameFrom[column])
            {
                rowOf[column] = rowOf[cameFrom[column]];
            }

            int Further(int from)
            {
                isDone[from] = true;
                double least = double.PositiveInfinity;
                int next = 0;
                for (int j = 1; j <= columns; j++)
                {
                    if (!isDone[j])
                    {
                        double here = cost(rowOf[from] - 1, j - 1) - rowPrice[rowOf[from]] - columnPrice[j];
                        (way[j], cameFrom[j]) = here < way[j] ? (here, from) : (way[j], cameFrom[j]);
                        (least, next) = way[j] < least ? (way[j], j) : (least, next);
                    }
                }

                for (int j = 0; j <= columns; j++)
                {
                    if (isDone[j])
                    {
                        rowPrice[rowOf[j]] += least;
                        columnPrice[j] -= least;
                    }
                    else
                    {
                        way[j] -= least;
                    }
                }

                return next;
            }
        }

        int[] result = new int[rows];
        for (int j = 1; j <= columns; j++)
        {
            if (rowOf[j] != 0)
            {
                result[rowOf[j] - 1] = j - 1;
            }
        }

        return result;
    }
}
