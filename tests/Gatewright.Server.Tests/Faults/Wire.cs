using System.Collections.Concurrent;
using System.Net;
using System.Net.Sockets;
using Gatewright.Store;
using Npgsql;

namespace Gatewright.Server.Tests.Faults;

/// <summary>The wire between a server and its database, which can be cut and mended.</summary>
internal sealed class Wire : IDisposable
{
    private readonly ConcurrentDictionary<TcpClient, byte> _open = [];
    private readonly IPEndPoint _here;
    private readonly IPEndPoint _there;
    private TcpListener? _listener;

    private Wire(IPEndPoint here, IPEndPoint there) => (_here, _there) = (here, there);

    /// <summary>Lays a wire to a database.</summary>
    public static (Wire Wire, StoreLocation Location) To(StoreLocation location)
    {
        var there = new NpgsqlConnectionStringBuilder(location.ConnectionString);
        using var probe = new TcpListener(IPAddress.Loopback, 0);
        probe.Start();
        var here = (IPEndPoint)probe.LocalEndpoint;
        probe.Stop();
        var wire = new Wire(here, new(IPAddress.Loopback, there.Port));
        wire.Mend();
        there.Port = here.Port;
        there.Timeout = 5;
        return (wire, StoreLocation.Server(there.ConnectionString));
    }

    public void Mend()
    {
        TcpListener listener = _listener = new(_here);
        listener.Start();
        _ = CarryAsync(listener);
    }

    public void Cut()
    {
        _listener?.Dispose();
        _listener = null;
        foreach (TcpClient client in _open.Keys)
        {
            client.Close();
        }

        _open.Clear();
    }

    public void Dispose() => Cut();

    private async Task CarryAsync(TcpListener listener)
    {
        try
        {
            while (true)
            {
                TcpClient near = await listener.AcceptTcpClientAsync();
                _ = CarryAsync(near);
            }
        }
        catch (Exception ended) when (ended is SocketException or ObjectDisposedException or InvalidOperationException)
        {
            // It was cut.
        }
    }

    private async Task CarryAsync(TcpClient near)
    {
        using var far = new TcpClient();
        try
        {
            _open.TryAdd(near, 0);
            _open.TryAdd(far, 0);
            await far.ConnectAsync(_there);
            await Task.WhenAny(near.GetStream().CopyToAsync(far.GetStream()), far.GetStream().CopyToAsync(near.GetStream()));
        }
        catch (Exception ended) when (ended is SocketException or ObjectDisposedException or InvalidOperationException or IOException)
        {
            // It was cut.
        }
        finally
        {
            near.Dispose();
            _open.TryRemove(near, out _);
            _open.TryRemove(far, out _);
        }
    }
}
