using Gatewright.Journal.Members;
using Gatewright.Replica.Tests.World;
using Gatewright.Server.Boats;
using Gatewright.Server.Tests.Hosting;
using Gatewright.Store;
using Gatewright.Store.Opening;
using Microsoft.Extensions.DependencyInjection;

[assembly: AssemblyFixture(typeof(ServerOfTheRun))]

namespace Gatewright.Replica.Tests.World;

/// <summary>One server for all tests, over a store in a file; each test has clubs of its own.</summary>
public sealed class ServerOfTheRun : IAsyncLifetime
{
    private readonly string _folder = Directory.CreateTempSubdirectory("gw-replica-").FullName;
    private RunningServer? _server;
    private int _clubs;

    internal RunningServer Server => _server!;

    public async ValueTask InitializeAsync() => _server = await StartAsync();

    public async ValueTask DisposeAsync()
    {
        await Server.DisposeAsync();
        Directory.Delete(_folder, recursive: true);
    }

    /// <summary>A server over a new, empty store.</summary>
    internal async Task<RunningServer> StartAsync()
    {
        var location = StoreLocation.File(Path.Combine(_folder, $"{Guid.NewGuid():N}.db"));
        await StoreOpening.OpenAsync(location);
        return await RunningServer.StartAsync(location);
    }

    public string NewClub() => $"club-{Interlocked.Increment(ref _clubs)}";

    /// <summary>A new member of a club with a phone of their own.</summary>
    internal async Task<Phone> PhoneAsync(string club, string member, Role role = Role.Keeper) =>
        await Phone.StartAsync(new(await Server.MemberAsync(club, member, role), Server.Address));

    /// <summary>The club as the server has it.</summary>
    internal async Task<Journal.Replay.Club> ClubAsync(string club, RunningServer? server = null) =>
        (await (server ?? Server).Services.GetRequiredService<OpenClubs>().OpenAsync(club, CancellationToken.None)).Club;
}
