using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Replica.Copies;
using Gatewright.Replica.Exchanging;
using Gatewright.Replica.Shelves;
using Gatewright.Server.Tests.Hosting;

namespace Gatewright.Replica.Tests.World;

/// <summary>A member's phone: what is on its shelf stays when the program ends.</summary>
internal sealed class Phone
{
    private readonly HttpClient _http;
    private (Device Device, Exchange Exchange)? _second;

    private Phone(Network network, BreakableShelf shelf, SetClock clock) =>
        (Network, Shelf, Clock, _http) = (network, shelf, clock, new(network) { BaseAddress = network.Address });

    public Network Network { get; }

    public BreakableShelf Shelf { get; private set; }

    public SetClock Clock { get; }

    public Device Device { get; private set; } = null!;

    public Exchange Exchange { get; private set; } = null!;

    public ExchangeStatus Status => Exchange.Status;

    public static async Task<Phone> StartAsync(Network network)
    {
        var phone = new Phone(network, new(new MemoryShelf()), new());
        await phone.OpenAsync();
        return phone;
    }

    /// <summary>Starts the program anew over the same shelf, which is whole again.</summary>
    public async Task OpenAsync()
    {
        Shelf = new(Shelf.Kept);
        _second = null;
        Device = await Device.OpenAsync(Shelf, Clock);
        Exchange = NewExchange(Device);
    }

    /// <summary>A second page of the same browser.</summary>
    public async Task<(Device Device, Exchange Exchange)> PageAsync()
    {
        Device device = await Device.OpenAsync(Shelf, Clock);
        return (device, NewExchange(device));
    }

    /// <summary>A second page that stays open as long as the first.</summary>
    public async Task<(Device Device, Exchange Exchange)> SecondPageAsync() => _second ??= await PageAsync();

    public Task<ClubCopy> ClubAsync(string club) => Device.ClubAsync(club);

    public async Task<Club> RecordAsync(string club, params Fact[] facts)
    {
        ClubCopy copy = await ClubAsync(club);
        IReadOnlyList<Guid> ids = await copy.RecordAsync(facts);
        Assert.All(ids.Zip(facts), told => Assert.Equal(told.Second.GetType(), copy.Club.Find(told.First)!.Fact.GetType()));
        return copy.Club;
    }

    public Task<ExchangeStatus> ExchangeAsync() => Exchange.RunAsync(TestContext.Current.CancellationToken);

    public Task<KeptPhoto?> PhotoAsync(string club, string sha256) =>
        Exchange.PhotoAsync(club, sha256, TestContext.Current.CancellationToken);

    /// <summary>Exchanges until all is shared, or for as long as any waits would be worth it.</summary>
    public async Task<ExchangeStatus> ShareAsync(int tries = 30)
    {
        ExchangeStatus status = await ExchangeAsync();
        for (int i = 0; i < tries && status.Phase != ExchangePhase.Shared; i++)
        {
            status = await ExchangeAsync();
        }

        Assert.Equal((ExchangePhase.Shared, null), (status.Phase, status.Trouble));
        return status;
    }

    private Exchange NewExchange(Device device) => new(_http, device, new(1), Gzip.PackAsync);
}
