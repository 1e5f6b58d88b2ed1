using System.Diagnostics;
using System.Text.Json;
using Gatewright.Bench.WholeRuns;

namespace Gatewright.Bench.Serving;

/// <summary>
/// Asks at a steady rate, whether answers come or not, and counts from the moment each request was due: a server that
/// stands still for a while is charged for all who would have asked meanwhile. Before that it asks everything once, and
/// for some seconds that do not count.
/// </summary>
internal sealed class SteadyReads : IAlone
{
    private const int WarmUpSeconds = 3;

    public void Do(string argument) => RunAsync(argument).GetAwaiter().GetResult();

    private static async Task RunAsync(string argument)
    {
        ReadRun run = JsonSerializer.Deserialize<ReadRun>(await File.ReadAllTextAsync(argument))!;
        using var caller = new Caller(run.Server, run.Cookies);
        foreach (string path in run.Paths)
        {
            await caller.GetAsync(path);
        }

        var counted = new List<Task<double>>();
        var all = new List<Task>();
        int warmUp = run.ASecond * WarmUpSeconds;
        long start = Stopwatch.GetTimestamp();
        for (int i = 0; i < warmUp + (run.ASecond * run.Seconds); i++)
        {
            double due = (double)i / run.ASecond;
            double wait = due - Stopwatch.GetElapsedTime(start).TotalSeconds;
            if (wait > 0)
            {
                await Task.Delay(TimeSpan.FromSeconds(wait));
            }

            Task<double> asked = AskAsync(caller, run.Paths[i % run.Paths.Count], start, due);
            all.Add(asked);
            if (i >= warmUp)
            {
                counted.Add(asked);
            }
        }

        await Task.WhenAll(all);
        double[] times = [.. (await Task.WhenAll(counted)).Order()];
        var result = new ReadTimes(times[times.Length / 2], times[times.Length * 99 / 100], times[^1], times.Length);
        await File.WriteAllTextAsync(run.Results, JsonSerializer.Serialize(result));
    }

    private static async Task<double> AskAsync(Caller caller, string path, long start, double due)
    {
        await caller.GetAsync(path);
        return (Stopwatch.GetElapsedTime(start).TotalSeconds - due) * 1000;
    }
}
