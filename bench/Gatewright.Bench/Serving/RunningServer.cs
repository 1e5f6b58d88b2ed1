using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;
using Gatewright.Bench.WholeRuns;
using Gatewright.Store;

namespace Gatewright.Bench.Serving;

/// <summary>The published server, started as people start it: by the command at the root.</summary>
internal sealed class RunningServer : IDisposable
{
    private const string Link = "/join/";

    private readonly Process _process;

    private RunningServer(Process process, Uri address, string? secret) => (_process, Address, Secret) = (process, address, secret);

    public Uri Address { get; }

    /// <summary>What lets the first keeper in; null where there is one.</summary>
    public string? Secret { get; }

    /// <summary>Memory that is its own or that it shares with others, as it is now.</summary>
    public double Megabytes
    {
        get
        {
            _process.Refresh();
            return _process.WorkingSet64 / 1e6;
        }
    }

    /// <summary>Processor time it has taken so far, in seconds: unlike the clock, it hardly grows when the machine does other work beside.</summary>
    public double ProcessorSeconds
    {
        get
        {
            _process.Refresh();
            return _process.TotalProcessorTime.TotalSeconds;
        }
    }

    /// <summary>Publishes it, where that was not done since its sources changed.</summary>
    public static void Publish() => Processes.Run(RepositoryRoot.Path, Command, "serve", "--help");

    public static RunningServer Over(StoreLocation location) => location.Engine == Engine.Sqlite
        ? Start(["--data", Path.GetDirectoryName(location.Name)!], null)
        : Start([], location.ConnectionString);

    public static RunningServer Demo() => Start(["--demo"], null);

    public void Dispose()
    {
        Processes.Run("/", "kill", "-TERM", _process.Id.ToString(CultureInfo.InvariantCulture));
        _process.WaitForExit();
        _process.Dispose();
    }

    private static string Command => Path.Combine(RepositoryRoot.Path, "gatewright");

    /// <summary>Starts it and waits until it says that it listens.</summary>
    private static RunningServer Start(string[] store, string? database)
    {
        string address = string.Create(CultureInfo.InvariantCulture, $"http://127.0.0.1:{FreePort()}");
        string[] listen = store is ["--demo"] ? [] : ["--listen", address];
        var start = new ProcessStartInfo(Command, ["serve", .. store, .. listen]) { RedirectStandardOutput = true };
        if (database is not null)
        {
            start.Environment["GATEWRIGHT_DATABASE"] = database;
        }

        Process process = Process.Start(start)!;
        string? secret = null;
        string? at = null;
        while (process.StandardOutput.ReadLine() is { } line)
        {
            at ??= line.StartsWith("Gatewright is at ", StringComparison.Ordinal) ? line.Split(' ')[^1] : null;
            secret ??= line.IndexOf(Link, StringComparison.Ordinal) is >= 0 and var found ? line[(found + Link.Length)..] : null;
            if (line.StartsWith("Stop with", StringComparison.Ordinal))
            {
                return new(process, new(at!), secret);
            }
        }

        process.WaitForExit();
        throw new InvalidOperationException($"gatewright serve ended with status {process.ExitCode}.");
    }

    private static int FreePort()
    {
        using var probe = new TcpListener(IPAddress.Loopback, 0);
        probe.Start();
        return ((IPEndPoint)probe.LocalEndpoint).Port;
    }
}
