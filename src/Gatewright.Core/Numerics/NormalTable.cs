using System.Collections.Immutable;

namespace Gatewright.Core.Numerics;

/// <summary>
/// Φ from a table: for sums over many thousand probabilities where the last digits do not matter.
/// </summary>
/// <remarks>
/// Linear between points 1/256 apart: the error is at most h²/8 · max |φ′| = 4.7e-7. Ten times as fast as
/// <see cref="Normal.Cdf"/>. Never used for a verdict.
/// </remarks>
internal static class NormalTable
{
    private const int PerUnit = 256;
    private const int Reach = 8;
    private static readonly ImmutableArray<double> Table = Make();

    public static double Cdf(double x)
    {
        double place = (x + Reach) * PerUnit;
        if (!(place > 0))
        {
            return 0;
        }

        if (place >= Table.Length - 1)
        {
            return 1;
        }

        int below = (int)place;
        return Table[below] + ((place - below) * (Table[below + 1] - Table[below]));
    }

    private static ImmutableArray<double> Make()
    {
        double[] table = new double[(2 * Reach * PerUnit) + 1];
        for (int i = 0; i < table.Length; i++)
        {
            table[i] = Normal.Cdf(((double)i / PerUnit) - Reach);
        }

        return [.. table];
    }
}
