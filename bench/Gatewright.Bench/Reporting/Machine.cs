using System.Runtime.InteropServices;

namespace Gatewright.Bench.Reporting;

/// <summary>What the figures were measured on, in one line.</summary>
internal static class Machine
{
    public static string Describe() =>
        $"{Processor()}, {Environment.ProcessorCount} logical cores, {RuntimeInformation.OSDescription}, "
        + $"{RuntimeInformation.FrameworkDescription} {RuntimeInformation.ProcessArchitecture}; {Load()} at the start";

    /// <summary>"load 0.52": beside other work everything takes longer, and only ratios of two times taken together still tell.</summary>
    public static string Load()
    {
        const string Linux = "/proc/loadavg";
        return $"load {(File.Exists(Linux) ? File.ReadAllText(Linux).Split(' ')[0] : "unknown")}";
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
