using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using Gatewright.Store;

namespace Gatewright.Tests.Databases;

/// <summary>
/// A PostgreSQL server of the tests' own, on a free port of the loopback, in a folder that goes when they end.
/// </summary>
/// <remarks>PostgreSQL does not run as root, so as root it is run as the account its package made.</remarks>
public sealed class PostgresServer : IAsyncDisposable
{
    private readonly string _folder;
    private readonly string _programs;
    private readonly int _port;

    private PostgresServer(string folder, string programs, int port) => (_folder, _programs, _port) = (folder, programs, port);

    public static async Task<PostgresServer> StartAsync()
    {
        string programs = Programs();
        string folder = Directory.CreateTempSubdirectory("gw-pg-").FullName;
        var server = new PostgresServer(folder, programs, FreePort());
        if (Environment.UserName == "root")
        {
            await RunAsync("chown", "postgres", folder);
        }

        await server.AsPostgresAsync("initdb", "-D", $"{folder}/data", "-U", "app", "--auth=trust", "-E", "UTF8", "--locale=C.UTF-8");
        await server.StartAgainAsync();
        return server;
    }

    /// <summary>Starts it where it left off, on the same port.</summary>
    /// <remarks>After its first process was killed the others take a while to notice, and it does not start beside them.</remarks>
    public async Task StartAgainAsync()
    {
        for (int left = 50; ; left--)
        {
            try
            {
                await AsPostgresAsync(
                    "pg_ctl", "-s", "-D", $"{_folder}/data", "-w", "-l", $"{_folder}/log", "-o",
                    $"-p {_port} -c listen_addresses=127.0.0.1 -c unix_socket_directories='{_folder}'", "start");
                return;
            }
            catch (InvalidOperationException) when (left > 0)
            {
                await Task.Delay(200);
            }
        }
    }

    /// <summary>Ends it at once, as when the machine goes down: nothing is written out.</summary>
    public Task StopAtOnceAsync() => AsPostgresAsync("pg_ctl", "-D", $"{_folder}/data", "-m", "immediate", "-w", "stop");

    /// <summary>Kills its first process, without a word.</summary>
    public Task KillAsync() => RunAsync("kill", "-9", File.ReadLines($"{_folder}/data/postmaster.pid").First());

    public async Task<StoreLocation> NewDatabaseAsync()
    {
        string name = "t" + Guid.NewGuid().ToString("N");
        await AsPostgresAsync("createdb", "-h", "127.0.0.1", "-p", $"{_port}", "-U", "app", name);
        return StoreLocation.Server($"Host=127.0.0.1;Port={_port};Username=app;Database={name};Maximum Pool Size=20");
    }

    public async ValueTask DisposeAsync()
    {
        await StopAtOnceAsync();
        await RunAsync("rm", "-rf", _folder);
    }

    private static string Programs()
    {
        const string Versions = "/usr/lib/postgresql";
        return Directory.Exists(Versions)
            ? $"{Directory.GetDirectories(Versions).OrderByDescending(d => int.Parse(Path.GetFileName(d), System.Globalization.CultureInfo.InvariantCulture)).First()}/bin"
            : throw new InvalidOperationException("PostgreSQL is not installed: ./test installs it where it may, or use apt-get install postgresql.");
    }

    private static int FreePort()
    {
        using var probe = new TcpListener(IPAddress.Loopback, 0);
        probe.Start();
        return ((IPEndPoint)probe.LocalEndpoint).Port;
    }

    private Task AsPostgresAsync(string program, params string[] arguments) => Environment.UserName == "root"
        ? RunAsync("runuser", ["-u", "postgres", "--", $"{_programs}/{program}", .. arguments])
        : RunAsync($"{_programs}/{program}", arguments);

    private static async Task RunAsync(string program, params string[] arguments)
    {
        // The server inherits what it is started with: its output goes to its log, or it would hold ours open for ever.
        var start = new ProcessStartInfo(program)
        {
            RedirectStandardError = true, RedirectStandardOutput = !arguments.Contains("start"), WorkingDirectory = "/",
        };
        foreach (string argument in arguments)
        {
            start.ArgumentList.Add(argument);
        }

        using Process process = Process.Start(start)!;
        if (start.RedirectStandardOutput)
        {
            process.BeginOutputReadLine();
        }

        await process.WaitForExitAsync();
        if (process.ExitCode != 0)
        {
            throw new InvalidOperationException($"{program} {string.Join(' ', arguments)} ended with {process.ExitCode}.");
        }
    }
}
