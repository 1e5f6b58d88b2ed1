using Bunit;
using Gatewright.App.Device;
using Gatewright.App.Frame;
using Gatewright.Journal.Facts;
using Gatewright.Words;
using Microsoft.Extensions.DependencyInjection;

namespace Gatewright.App.Tests.World;

/// <summary>A browser's page with a club in hand that lives on this device alone, and nothing recorded but its name.</summary>
internal sealed class ClubOnDevice : IAsyncDisposable
{
    private ClubOnDevice(BunitContext page, ClubInHand inHand, FullShelf shelf) => (Page, InHand, Shelf) = (page, inHand, shelf);

    public BunitContext Page { get; }

    public ClubInHand InHand { get; }

    /// <summary>Where it is kept: it can be made to have no more room.</summary>
    public FullShelf Shelf { get; }

    public static async Task<ClubOnDevice> StartAsync()
    {
        var shelf = new FullShelf();
        Replica.Device device = await Replica.Device.OpenAsync(shelf, TimeProvider.System);
        var inHand = new ClubInHand();
        inHand.Open(await device.StartClubAsync("Heron Rowing"), device);
        var page = new BunitContext();
        page.JSInterop.Mode = JSRuntimeMode.Loose;
        page.Services.AddSingleton(typeof(Texts<>));
        page.Services.AddSingleton<FocusNext>();
        page.Services.AddSingleton(TimeProvider.System);
        page.Services.AddSingleton(Wording.English);
        page.Services.AddSingleton(inHand);
        return new(page, inHand, shelf);
    }

    /// <summary>All that is recorded of a kind.</summary>
    public IReadOnlyList<T> Recorded<T>()
        where T : Fact => [.. InHand.Club.All().Select(r => r.Fact).OfType<T>()];

    public async ValueTask DisposeAsync()
    {
        InHand.Close();
        await Page.DisposeAsync();
    }
}
