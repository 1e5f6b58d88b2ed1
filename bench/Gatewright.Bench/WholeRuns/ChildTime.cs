using System.Globalization;

namespace Gatewright.Bench.WholeRuns;

/// <summary>
/// Processor time of the processes this one has started and seen end: unlike the clock, it hardly grows when the machine
/// does other work beside.
/// </summary>
internal static class ChildTime
{
    /// <summary>proc(5), /proc/pid/stat: fields 16 and 17, cutime and cstime, in ticks of 1/100 s.</summary>
    private const int FirstField = 16;
    private const double TicksPerSecond = 100;

    /// <summary>Seconds so far, or null where the system does not tell.</summary>
    public static double? Seconds()
    {
        const string Linux = "/proc/self/stat";
        if (!File.Exists(Linux))
        {
            return null;
        }

        // The second field is the program's name in brackets and may hold blanks: counting starts behind it.
        string stat = File.ReadAllText(Linux);
        string[] fields = stat[(stat.LastIndexOf(')') + 2)..].Split(' ');
        return fields.Skip(FirstField - 3).Take(2).Sum(ticks => long.Parse(ticks, CultureInfo.InvariantCulture)) / TicksPerSecond;
    }

    /// <summary>"; 0.24 s of processor time each", or nothing.</summary>
    public static string Note(double? before, int runs) => Seconds() - before is { } seconds
        ? string.Create(CultureInfo.InvariantCulture, $"; {seconds / runs:G3} s of processor time each")
        : string.Empty;
}
