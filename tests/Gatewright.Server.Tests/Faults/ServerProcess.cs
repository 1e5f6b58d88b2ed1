using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using Gatewright.Store;

namespace Gatewright.Server.Tests.Faults;

/// <summary>The program itself, in a process of its own that can be killed.</summary>
internal sealed class ServerProcess : IDisposable
{
    private static readonly TimeSpan LongestStart = TimeSpan.FromSeconds(60);

    private readonly string? _folder;
    private readonly StoreLocation _location;
    private Process? _process;

    /// <param name="location">Its store; a file must be the one its folder holds.</param>
    public ServerProcess(StoreLocation location)
    {
        _location = location;
        _folder = location.Engine == Engine.Sqlite
            ? Path.GetDirectoryName(new Microsoft.Data.Sqlite.SqliteConnectionStringBuilder(location.ConnectionString).DataSource)
            : null;
        using var probe = new TcpListener(IPAddress.Loopback, 0);
        probe.Start();
        Address = new($"http://127.0.0.1:{((IPEndPoint)probe.LocalEndpoint).Port}");
    }

    public Uri Address { get; }

    /// <summary>Starts it and waits until it is ready.</summary>
    public async Task StartAsync()
    {
        var start = new ProcessStartInfo("dotnet")
        {
            WorkingDirectory = "/", RedirectStandardOutput = true, RedirectStandardError = true,
        };
        start.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, "gatewright-server.dll"));
        start.ArgumentList.Add("--listen");
        start.ArgumentList.Add(Address.GetLeftPart(UriPartial.Authority));
        if (_folder is null)
        {
            start.Environment["GATEWRIGHT_DATABASE"] = _location.ConnectionString;
        }
        else
        {
            start.ArgumentList.Add("--data");
            start.ArgumentList.Add(_folder);
        }

        _process = Process.Start(start)!;
        var said = new System.Collections.Concurrent.ConcurrentQueue<string?>();
        _process.OutputDataReceived += (_, line) => said.Enqueue(line.Data);
        _process.ErrorDataReceived += (_, line) => said.Enqueue(line.Data);
        _process.BeginOutputReadLine();
        _process.BeginErrorReadLine();
        using var client = new HttpClient();
        var watch = Stopwatch.StartNew();
        while (true)
        {
            try
            {
                if ((await client.GetAsync(new Uri(Address, "/health/ready"))).IsSuccessStatusCode)
                {
                    return;
                }
            }
            catch (HttpRequestException)
            {
                // Not yet.
            }

            Assert.False(_process.HasExited || watch.Elapsed > LongestStart, string.Join('\n', said));
            await Task.Delay(50);
        }
    }

    /// <summary>Kills it in the middle of whatever it does: it gets no word of it (SIGKILL).</summary>
    public async Task KillAsync()
    {
        if (_process is { } process)
        {
            _process = null;
            process.Kill();
            await process.WaitForExitAsync();
            process.Dispose();
        }
    }

    public void Dispose()
    {
        if (_process is { HasExited: false } process)
        {
            process.Kill();
            process.WaitForExit();
        }

        _process?.Dispose();
    }
}
