using System.Runtime.InteropServices;

namespace Gatewright.Bench.Reporting;

/// <summary>What the figures were measured on, in one line.</summary>
internal static class Machine
{
    public static string Describe() =>
        $"{Processor()}, {Environment.ProcessorCount} logical cores, {RuntimeInformation.OSDescription}, "
        + $"{RuntimeInformation.FrameworkDescription} {RuntimeInformation.ProcessArchitecture}{Load()}";

    /// <summary>Beside other work everything takes longer, and only ratios of two times taken together still tell.</summary>
    private static string Load()
    {
        const string Linux = "/proc/loadavg";
        return File.Exists(Linux) ? $"; load before the start {File.ReadAllText(Linux).Split(' ')[0]}" : string.Empty;
    }

    private static string Processor()
    {
        const string Linux = "/proc/cpuinfo";
        string? name = File.Exists(Linux)
            ? File.ReadLines(Linux).FirstOrDefault(line => line.StartsWith("model name", StringComparison.Ordinal))
            : Environment.GetEnvironmentVariable("PROCESSOR_IDENTIFIER");
        return name?.Split(':')[^1].Trim() ?? "unnamed processor";
    }
}
