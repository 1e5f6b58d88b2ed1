using Gatewright.Core.Numerics;

namespace Gatewright.Core.Oars;

/// <summary>Oars that go well together.</summary>
/// <param name="Oars">Which, in the pool's order.</param>
/// <param name="Spread">The widest of their ranges, in tolerances: up to 1 no two of them differ by more than the tolerance.</param>
public sealed record MatchedOars(IReadOnlyList<Oar> Oars, double Spread);

/// <summary>Chooses from a pool the oars that are most alike in length, inboard and sleeve.</summary>
/// <remarks>
/// Exact, not by trial: the best so many lie in a box whose lower corner is made of values that the oars have, so each such corner is
/// tried, and of each the so-many-th nearest oar says how large the box must be. A pool of n takes n³ corners: 40 oars are
/// 64,000. Oars of which not all three are known cannot be matched and are left out.
/// </remarks>
public static class OarMatching
{
    private const int Items = 3;
    private const double Hair = 1e-9;

    /// <summary>The so many oars with the least spread; null where the pool has not so many of which all is known.</summary>
    public static MatchedOars? Best(IReadOnlyList<Oar> pool, int count, OarTolerances? tolerances = null)
    {
        ArgumentNullException.ThrowIfNull(pool);
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        List<Oar> known = Known(pool);
        if (known.Count < count)
        {
            return null;
        }

        double[][] scaled = Scaled(known, tolerances ?? OarTolerances.Default);
        double best = double.PositiveInfinity;
        double[] corner = [0, 0, 0];
        double[] needed = new double[known.Count];
        double[] sorted = new double[known.Count];
        int[] chosen = [];
        for (int a = 0; a < known.Count; a++)
        {
            for (int b = 0; b < known.Count; b++)
            {
                for (int c = 0; c < known.Count; c++)
                {
                    (corner[0], corner[1], corner[2]) = (scaled[a][0], scaled[b][1], scaled[c][2]);
                    if (Needed(scaled, corner, needed) < count)
                    {
                        continue;
                    }

                    needed.CopyTo(sorted, 0);
                    Array.Sort(sorted);
                    if (sorted[count - 1] < best - Hair)
                    {
                        best = sorted[count - 1];
                        chosen = Within(needed, best, count);
                    }
                }
            }
        }

        return new([.. Array.ConvertAll(chosen, i => known[i])], best);
    }

    /// <summary>
    /// As many pairs of a port and a starboard oar as there are, so that the sum of their spreads is least.
    /// </summary>
    /// <remarks>
    /// The least-cost assignment, by growing one shortest path after another (Kuhn's Hungarian method in the form of
    /// Jonker and Volgenant): exact, n³ steps.
    /// </remarks>
    public static IReadOnlyList<MatchedOars> Pairs(IReadOnlyList<Oar> pool, OarTolerances? tolerances = null)
    {
        ArgumentNullException.ThrowIfNull(pool);
        List<Oar> port = Known(pool).FindAll(o => o.Side == Side.Port);
        List<Oar> starboard = Known(pool).FindAll(o => o.Side == Side.Starboard);
        List<Oar> fewer = port.Count <= starboard.Count ? port : starboard;
        List<Oar> more = port.Count <= starboard.Count ? starboard : port;
        double[][] one = Scaled(fewer, tolerances ?? OarTolerances.Default);
        double[][] other = Scaled(more, tolerances ?? OarTolerances.Default);
        int[] partner = Assignment.Least(fewer.Count, more.Count, (i, j) => Apart(one[i], other[j]));
        var pairs = new List<MatchedOars>();
        for (int i = 0; i < partner.Length; i++)
        {
            (Oar p, Oar s) = fewer == port ? (fewer[i], more[partner[i]]) : (more[partner[i]], fewer[i]);
            pairs.Add(new([p, s], Apart(one[i], other[partner[i]])));
        }

        pairs.Sort((x, y) => x.Spread.CompareTo(y.Spread));
        return pairs;
    }

    private static List<Oar> Known(IReadOnlyList<Oar> pool)
    {
        var known = new List<Oar>();
        foreach (Oar oar in pool)
        {
            if (oar is { Sleeve: not null, Length: not null, Inboard: not null })
            {
                known.Add(oar);
            }
        }

        return known;
    }

    private static double[][] Scaled(List<Oar> oars, OarTolerances tolerances) => [.. oars.ConvertAll(o => new[]
    {
        o.Sleeve!.Value / tolerances.Sleeve, o.Length!.Value / tolerances.Length, o.Inboard!.Value / tolerances.Inboard,
    })];

    private static double Apart(double[] one, double[] other)
    {
        double most = 0;
        for (int k = 0; k < Items; k++)
        {
            most = Math.Max(most, Math.Abs(one[k] - other[k]));
        }

        return most;
    }

    /// <summary>How large a box from the corner must be to hold each oar; infinite for those that lie below it.</summary>
    private static int Needed(double[][] scaled, double[] corner, double[] needed)
    {
        int above = 0;
        for (int i = 0; i < scaled.Length; i++)
        {
            double most = 0;
            for (int k = 0; k < Items; k++)
            {
                double over = scaled[i][k] - corner[k];
                most = over < 0 ? double.PositiveInfinity : Math.Max(most, over);
            }

            needed[i] = most;
            above += double.IsFinite(most) ? 1 : 0;
        }

        return above;
    }

    private static int[] Within(double[] needed, double size, int count)
    {
        var chosen = new List<int>();
        for (int i = 0; i < needed.Length && chosen.Count < count; i++)
        {
            if (needed[i] <= size)
            {
                chosen.Add(i);
            }
        }

        return [.. chosen];
    }
}
