using System.Globalization;
using Gatewright.Bench.Reporting;
using Gatewright.Store;
using Gatewright.Store.Opening;

namespace Gatewright.Bench.Serving;

/// <summary>What the server takes of a small machine's memory while nobody asks for anything.</summary>
internal sealed class ServerMemory : IBench
{
    private static readonly TimeSpan Idle = TimeSpan.FromSeconds(5);

    public IEnumerable<Measured> Measure() => MeasureAsync().GetAwaiter().GetResult();

    private static async Task<IReadOnlyList<Measured>> MeasureAsync()
    {
        RunningServer.Publish();
        return [await FreshAsync(), await DemoAsync()];
    }

    private static async Task<Measured> FreshAsync()
    {
        string folder = Directory.CreateTempSubdirectory("gw-bench-").FullName;
        try
        {
            var location = StoreLocation.File(Path.Combine(folder, "gatewright.db"));
            await StoreOpening.OpenAsync(location);
            using RunningServer server = RunningServer.Over(location);
            using var caller = new Caller(server.Address, null);
            await caller.JoinAsync(server.Secret!);
            return await LookAsync("Memory of a server that is idle, SQLite", server, "after its first keeper joined");
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static async Task<Measured> DemoAsync()
    {
        using RunningServer server = RunningServer.Demo();
        using var caller = new Caller(server.Address, null);
        await caller.SendAsync("/demo", null);
        await caller.GetAsync("/club/demo");
        int bytes = (await caller.GetAsync("/api/clubs/demo/check")).Length;
        return await LookAsync(
            "The same after the demo shed was opened", server,
            string.Create(CultureInfo.InvariantCulture, $"its page, and all its boats with their causes, {bytes / 1e3:0} kB"));
    }

    private static async Task<Measured> LookAsync(string what, RunningServer server, string note)
    {
        await Task.Delay(Idle);
        return new(Target.AtMost(150, "MB", what), server.Megabytes, $"resident; {note}; {Machine.Load()}");
    }
}
