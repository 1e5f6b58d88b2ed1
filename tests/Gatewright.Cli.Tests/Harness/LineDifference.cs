using System.Text;

namespace Gatewright.Cli.Tests.Harness;

/// <summary>Says in which lines two texts differ.</summary>
internal static class LineDifference
{
    private const int MostLines = 60;

    /// <summary>Lines taken away with "-" and lines new with "+", each with its number; null when the texts are equal.</summary>
    public static string? Between(string expected, string actual)
    {
        if (expected == actual)
        {
            return null;
        }

        var text = new StringBuilder();
        int shown = 0;
        foreach (string line in Changes(expected.Split('\n'), actual.Split('\n')))
        {
            if (shown++ == MostLines)
            {
                text.Append("… and more\n");
                break;
            }

            text.Append(line).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>By the longest common subsequence of lines.</summary>
    private static IEnumerable<string> Changes(string[] old, string[] now)
    {
        int[,] common = new int[old.Length + 1, now.Length + 1];
        for (int i = old.Length - 1; i >= 0; i--)
        {
            for (int j = now.Length - 1; j >= 0; j--)
            {
                common[i, j] = old[i] == now[j] ? common[i + 1, j + 1] + 1 : Math.Max(common[i + 1, j], common[i, j + 1]);
            }
        }

        for ((int i, int j) = (0, 0); i < old.Length || j < now.Length;)
        {
            if (i < old.Length && j < now.Length && old[i] == now[j])
            {
                (i, j) = (i + 1, j + 1);
            }
            else if (i < old.Length && (j == now.Length || common[i + 1, j] >= common[i, j + 1]))
            {
                yield return $"{i + 1,4} - {old[i++]}";
            }
            else
            {
                yield return $"{j + 1,4} + {now[j++]}";
            }
        }
    }
}
