using Bunit;
using Gatewright.App.Boat;
using Gatewright.App.Device;
using Gatewright.App.Keeping.People;
using Gatewright.App.Tests.World;
using Gatewright.Journal.Facts;
using Gatewright.Replica.Shelves;
using Gatewright.Words;
using Microsoft.Extensions.DependencyInjection;

namespace Gatewright.App.Tests.Rig;

/// <summary>A club on this device with one boat, Teal.</summary>
internal sealed class RigInHand : IAsyncDisposable
{
    public const string Key = "teal";

    private RigInHand(ClubOnDevice club) => Club = club;

    public ClubOnDevice Club { get; }

    public static async Task<RigInHand> StartAsync(string boatClass = "2x")
    {
        ClubOnDevice club = await ClubOnDevice.StartAsync();
        club.Page.Services.AddSingleton(Wording.English);
        club.Page.Services.AddSingleton<IDeviceShelf, MemoryShelf>();
        club.Page.Services.AddSingleton<BrowserRoom>();
        club.Page.Services.AddSingleton<ThisDevice>();
        club.Page.Services.AddSingleton<HttpClient>();
        club.Page.Services.AddSingleton<Sharing>();
        club.Page.Services.AddSingleton<ClubPeople>();
        club.Page.Services.AddSingleton<MemberNames>();
        club.Page.Services.AddSingleton<RecordWords>();
        await club.InHand.RecordAsync(new ThingSet(Things.Boat, Key, new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = boatClass }));
        return new(club);
    }

    public Task MeasureAsync(string measure, params (int Seat, decimal Value)[] taken) =>
        Club.InHand.RecordAsync([.. taken.Select(t => new MeasureTaken(Key, measure, t.Seat, t.Value, "cm"))]);

    public ValueTask DisposeAsync() => Club.DisposeAsync();
}
