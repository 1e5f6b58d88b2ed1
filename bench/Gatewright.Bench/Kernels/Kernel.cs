using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Loggers;
using BenchmarkDotNet.Reports;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;

namespace Gatewright.Bench.Kernels;

/// <summary>Runs the benchmark methods of a class in this process, long enough for a figure and no longer.</summary>
internal static class Kernel
{
    /// <summary>The median time of one operation of each method in nanoseconds, by the method's name.</summary>
    /// <exception cref="InvalidOperationException">A method failed.</exception>
    public static IReadOnlyDictionary<string, double> Nanoseconds<T>()
    {
        var log = new LogCapture();
        Summary summary = BenchmarkRunner.Run<T>(Config(log));
        return summary.Reports.Length > 0 && summary.Reports.All(report => report.ResultStatistics is not null)
            ? summary.Reports.ToDictionary(
                report => report.BenchmarkCase.Descriptor.WorkloadMethod.Name,
                report => report.ResultStatistics!.Median)
            : throw new InvalidOperationException(
                $"{typeof(T).Name} was not measured:{Environment.NewLine}{string.Concat(log.CapturedOutput.Select(part => part.Text))}");
    }

    private static ManualConfig Config(ILogger log) => ManualConfig.CreateEmpty()
        .AddJob(Job.ShortRun.WithToolchain(InProcessEmitToolchain.Instance))
        .AddLogger(log)
        .WithArtifactsPath(Path.Combine(Path.GetTempPath(), "gatewright-bench"));
}
