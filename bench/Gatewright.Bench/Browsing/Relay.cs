using System.Net;
using System.Net.Sockets;

namespace Gatewright.Bench.Browsing;

/// <summary>
/// Stands between a browser and a server and counts every byte that the server sends: headers too, and whoever asked, page
/// or worker.
/// </summary>
internal sealed class Relay : IAsyncDisposable
{
    private readonly TcpListener _listener = new(IPAddress.Loopback, 0);
    private readonly CancellationTokenSource _end = new();
    private readonly int _port;
    private readonly Task _listening;
    private long _sent;

    public Relay(Uri server)
    {
        _port = server.Port;
        _listener.Start();
        Address = new($"http://127.0.0.1:{((IPEndPoint)_listener.LocalEndpoint).Port}");
        _listening = ListenAsync();
    }

    /// <summary>Where the browser finds the server.</summary>
    public Uri Address { get; }

    /// <summary>Bytes the server has sent so far.</summary>
    public long Sent => Interlocked.Read(ref _sent);

    public async ValueTask DisposeAsync()
    {
        await _end.CancelAsync();
        _listener.Stop();
        await _listening;
        _end.Dispose();
    }

    private async Task ListenAsync()
    {
        try
        {
            while (true)
            {
                _ = ConnectAsync(await _listener.AcceptTcpClientAsync(_end.Token));
            }
        }
        catch (Exception ended) when (ended is OperationCanceledException or SocketException)
        {
            // Nobody is let in any more.
        }
    }

    private async Task ConnectAsync(TcpClient browser)
    {
        using var server = new TcpClient { NoDelay = true };
        using (browser)
        {
            try
            {
                browser.NoDelay = true;
                await server.ConnectAsync(IPAddress.Loopback, _port, _end.Token);
                await Task.WhenAny(
                    browser.GetStream().CopyToAsync(server.GetStream(), _end.Token),
                    CountAsync(server.GetStream(), browser.GetStream()));
            }
            catch (Exception ended) when (ended is OperationCanceledException or SocketException or IOException)
            {
                // Either has hung up.
            }
        }
    }

    private async Task CountAsync(NetworkStream from, NetworkStream to)
    {
        byte[] buffer = new byte[1 << 16];
        int read;
        while ((read = await from.ReadAsync(buffer, _end.Token)) > 0)
        {
            Interlocked.Add(ref _sent, read);
            await to.WriteAsync(buffer.AsMemory(0, read), _end.Token);
        }
    }
}
