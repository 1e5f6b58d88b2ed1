using System.Diagnostics;
using System.Net;
using System.Net.Sockets;

namespace Gatewright.Browser.Tests.App;

/// <summary>
/// The server as the README's command starts it: published, in a process of its own. What trimming breaks shows only there.
/// </summary>
internal sealed class AppSite : IAsyncDisposable
{
    // The first start on a machine publishes the program.
    private static readonly TimeSpan LongestStart = TimeSpan.FromMinutes(6);
    private static readonly SemaphoreSlim Publishing = new(1);

    private readonly string _folder = Directory.CreateTempSubdirectory("gw-app-").FullName;
    private readonly bool _isDemo;
    private readonly int _port;
    private Process? _process;

    private AppSite(bool isDemo)
    {
        _isDemo = isDemo;
        using var probe = new TcpListener(IPAddress.Loopback, 0);
        probe.Start();
        _port = ((IPEndPoint)probe.LocalEndpoint).Port;
        Address = new($"http://localhost:{_port}");
    }

    /// <summary>Where it is.</summary>
    public Uri Address { get; }

    /// <summary>The one-time link of a store without a keeper.</summary>
    public Uri? FirstLink { get; private set; }

    public static async Task<AppSite> StartAsync(bool isDemo = true)
    {
        var site = new AppSite(isDemo);
        await site.StartAgainAsync();
        return site;
    }

    /// <summary>Starts it once more at the same address, over the same store.</summary>
    public async Task StartAgainAsync()
    {
        await Publishing.WaitAsync(TestContext.Current.CancellationToken);
        try
        {
            await RunAsync();
        }
        finally
        {
            Publishing.Release();
        }
    }

    /// <summary>Kills it: it gets no word of it.</summary>
    public async Task KillAsync()
    {
        if (_process is { } process)
        {
            _process = null;
            process.Kill(entireProcessTree: true);
            await process.WaitForExitAsync();
            process.Dispose();
        }
    }

    public async ValueTask DisposeAsync()
    {
        await KillAsync();
        Directory.Delete(_folder, recursive: true);
    }

    /// <summary>Where the project lies.</summary>
    internal static string Root()
    {
        string folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Gatewright.slnx")))
        {
            folder = Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("The tests do not run inside the project.");
        }

        return folder;
    }

    private async Task RunAsync()
    {
        var start = new ProcessStartInfo(Path.Combine(Root(), "gatewright"))
        {
            WorkingDirectory = _folder, RedirectStandardOutput = true, RedirectStandardError = true, RedirectStandardInput = true,
        };
        foreach (string argument in (string[])["serve", "--listen", $"http://localhost:{_port}", .. _isDemo ? ["--demo"] : new[] { "--data", _folder }])
        {
            start.ArgumentList.Add(argument);
        }

        _process = Process.Start(start)!;
        _process.StandardInput.Close();
        var said = new System.Collections.Concurrent.ConcurrentQueue<string>();
        void Hear(string? line)
        {
            said.Enqueue(line ?? string.Empty);
            if (line?.Contains("/join/", StringComparison.Ordinal) == true)
            {
                FirstLink = new(line.Trim());
            }
        }

        _process.OutputDataReceived += (_, line) => Hear(line.Data);
        _process.ErrorDataReceived += (_, line) => Hear(line.Data);
        _process.BeginOutputReadLine();
        _process.BeginErrorReadLine();
        using var client = new HttpClient();
        var watch = Stopwatch.StartNew();
        while (!await IsReadyAsync(client))
        {
            Assert.False(_process.HasExited || watch.Elapsed > LongestStart, string.Join('\n', said));
            await Task.Delay(100, TestContext.Current.CancellationToken);
        }
    }

    private async Task<bool> IsReadyAsync(HttpClient client)
    {
        try
        {
            return (await client.GetAsync(new Uri(Address, "/health/ready"), TestContext.Current.CancellationToken)).IsSuccessStatusCode;
        }
        catch (HttpRequestException)
        {
            return false;
        }
    }
}
