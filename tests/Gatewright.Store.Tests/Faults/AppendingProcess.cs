using System.Diagnostics;
using System.Globalization;
using Gatewright.Store.Faults;

namespace Gatewright.Store.Tests.Faults;

/// <summary>An <see cref="Appender"/> in a process of its own, and what it has said so far.</summary>
internal sealed class AppendingProcess : IAsyncDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);
    private readonly Process _process;
    private readonly Task _listening;
    private readonly List<string> _said = [];
    private long _acknowledged;

    private AppendingProcess(Process process)
    {
        // First of all: listening begins at once, and listens to it.
        _process = process;
        _listening = Task.Run(ListenAsync);
    }

    /// <summary>The number of the last entry that was acknowledged.</summary>
    public long Acknowledged => Interlocked.Read(ref _acknowledged);

    /// <summary>Starts one.</summary>
    /// <param name="location">Where it appends.</param>
    /// <param name="first">The entry it starts with.</param>
    /// <param name="before">What goes before it on its command line, such as a program that runs it as somebody else.</param>
    public static AppendingProcess Start(StoreLocation location, long first, params string[] before)
    {
        string[] line =
        [
            .. before, "dotnet", typeof(AppendingProcess).Assembly.Location, Appender.Switch, location.Engine.ToString(),
            location.ConnectionString, first.ToString(CultureInfo.InvariantCulture),
        ];
        var start = new ProcessStartInfo(line[0], line[1..]) { RedirectStandardOutput = true };
        return new(Process.Start(start)!);
    }

    /// <summary>How often it has told a fault.</summary>
    public int Told(StoreFault fault)
    {
        lock (_said)
        {
            return _said.Count(line => line == $"fault {fault}");
        }
    }

    /// <summary>Waits until something is so, and fails when it takes too long or the process ends before.</summary>
    public async Task UntilAsync(Func<bool> holds)
    {
        var clock = Stopwatch.StartNew();
        while (!holds())
        {
            Assert.True(clock.Elapsed < Patience && !_process.HasExited, $"at {Acknowledged}: {string.Join("; ", _said.TakeLast(3))}");
            await Task.Delay(5);
        }
    }

    /// <summary>Kills it with SIGKILL and takes in what it had said.</summary>
    public async Task KillAsync()
    {
        _process.Kill(entireProcessTree: true);
        await _process.WaitForExitAsync();
        await _listening;
    }

    public async ValueTask DisposeAsync()
    {
        if (!_process.HasExited)
        {
            await KillAsync();
        }

        _process.Dispose();
    }

    private async Task ListenAsync()
    {
        while (await _process.StandardOutput.ReadLineAsync() is { } line)
        {
            if (line.StartsWith("ack ", StringComparison.Ordinal))
            {
                Interlocked.Exchange(ref _acknowledged, long.Parse(line[4..], CultureInfo.InvariantCulture));
            }
            else
            {
                lock (_said)
                {
                    _said.Add(line);
                }
            }
        }
    }
}
