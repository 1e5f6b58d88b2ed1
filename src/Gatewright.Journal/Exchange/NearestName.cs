namespace Gatewright.Journal.Exchange;

/// <summary>Finds the name that was probably meant by one that is not known.</summary>
internal static class NearestName
{
    /// <summary>Further apart than this, two words are two words.</summary>
    private const int MostEdits = 2;

    /// <summary>The nearest of some names, if it is at most two slips of the keyboard away and fewer than half its letters; else null.</summary>
    public static string? Of(string typed, IEnumerable<string> names)
    {
        string? nearest = null;
        int fewest = MostEdits + 1;
        foreach (string name in names)
        {
            int edits = Edits(typed, name);
            if (edits < fewest && 2 * edits < name.Length)
            {
                (nearest, fewest) = (name, edits);
            }
        }

        return nearest;
    }

    /// <summary>
    /// Letters put in, left out, or mistaken, and neighbours exchanged: the optimal string alignment distance.
    /// Case does not count.
    /// </summary>
    private static int Edits(string typed, string name)
    {
        if (Math.Abs(typed.Length - name.Length) > MostEdits)
        {
            return MostEdits + 1;
        }

        int[,] d = new int[typed.Length + 1, name.Length + 1];
        for (int i = 0; i <= typed.Length; i++)
        {
            for (int j = 0; j <= name.Length; j++)
            {
                d[i, j] = i == 0 || j == 0 ? i + j : Cheapest(typed, name, d, i, j);
            }
        }

        return d[typed.Length, name.Length];
    }

    private static int Cheapest(string typed, string name, int[,] d, int i, int j)
    {
        int least = Math.Min(d[i - 1, j] + 1, d[i, j - 1] + 1);
        least = Math.Min(least, d[i - 1, j - 1] + (Same(typed[i - 1], name[j - 1]) ? 0 : 1));
        bool areExchanged = i > 1 && j > 1 && Same(typed[i - 1], name[j - 2]) && Same(typed[i - 2], name[j - 1]);
        return areExchanged ? Math.Min(least, d[i - 2, j - 2] + 1) : least;
    }

    private static bool Same(char a, char b) => char.ToLowerInvariant(a) == char.ToLowerInvariant(b);
}
