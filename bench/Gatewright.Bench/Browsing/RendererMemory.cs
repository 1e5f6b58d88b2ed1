using System.Globalization;

namespace Gatewright.Bench.Browsing;

/// <summary>What the process that runs a browser's page holds, by what Linux tells of it.</summary>
internal static class RendererMemory
{
    /// <summary>
    /// Megabytes of the largest page process of the browser that keeps its things in a folder: proportional set size, so that
    /// what it shares with the browser's other processes is charged to it in part.
    /// </summary>
    public static double Megabytes(string folder)
    {
        Dictionary<int, (int Parent, string Command)> all = [];
        foreach (string process in Directory.EnumerateDirectories("/proc"))
        {
            if (int.TryParse(Path.GetFileName(process), CultureInfo.InvariantCulture, out int id) && Told(process) is { } told)
            {
                all[id] = told;
            }
        }

        bool IsOurs(int id)
        {
            for (; all.TryGetValue(id, out (int Parent, string Command) process); id = process.Parent)
            {
                if (process.Command.Contains($"--user-data-dir={folder}", StringComparison.Ordinal))
                {
                    return true;
                }
            }

            return false;
        }

        return all.Where(p => p.Value.Command.Contains("--type=renderer", StringComparison.Ordinal) && IsOurs(p.Key)).Max(p => Pss(p.Key));
    }

    private static (int Parent, string Command)? Told(string process)
    {
        try
        {
            // After the name, which may hold anything in its brackets: state, parent.
            string stat = File.ReadAllText(Path.Combine(process, "stat"));
            int parent = int.Parse(stat[(stat.LastIndexOf(')') + 1)..].Split(' ', StringSplitOptions.RemoveEmptyEntries)[1], CultureInfo.InvariantCulture);
            return (parent, File.ReadAllText(Path.Combine(process, "cmdline")).Replace('\0', ' '));
        }
        catch (IOException)
        {
            return null;
        }
    }

    private static double Pss(int id)
    {
        try
        {
            string line = File.ReadLines(string.Create(CultureInfo.InvariantCulture, $"/proc/{id}/smaps_rollup")).First(l => l.StartsWith("Pss:", StringComparison.Ordinal));
            return double.Parse(line.Split(' ', StringSplitOptions.RemoveEmptyEntries)[1], CultureInfo.InvariantCulture) * 1024 / 1e6;
        }
        catch (IOException)
        {
            return 0;
        }
    }
}
