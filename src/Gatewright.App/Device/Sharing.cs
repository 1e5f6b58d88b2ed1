using Gatewright.Replica.Copies;
using Gatewright.Replica.Exchanging;
using Gatewright.Replica.Shelves;
using Microsoft.JSInterop;

namespace Gatewright.App.Device;

/// <summary>Shares what this device has with the server and with other pages, for as long as the program runs.</summary>
public sealed class Sharing(HttpClient http, ThisDevice device, ClubInHand inHand, IJSRuntime script)
{
    private static readonly TimeSpan Drawn = TimeSpan.FromMilliseconds(100);
    private IJSObjectReference? _module;
    private Following? _following;
    private DotNetObjectReference<Sharing>? _self;
    private string? _followed;

    /// <summary>The exchange; null until it is begun.</summary>
    public Exchange? Exchange { get; private set; }

    /// <summary>Said when it stands otherwise between this device and the server.</summary>
    public event Action? Changed;

    /// <summary>Why nothing is shared until the program is started again; null while sharing runs.</summary>
    public string? Fault { get; private set; }

    /// <summary>Shares for as long as the program runs; what stops it is told, for nobody waits for it.</summary>
    public async Task RunAsync()
    {
        try
        {
            await BeginAsync();
        }
        catch (Exception broken)
        {
            Fault = $"{broken.GetType().Name}: {broken.Message}";
            Changed?.Invoke();
        }
    }

    /// <summary>Begins, in the background: no page waits for a network.</summary>
    private async Task BeginAsync()
    {
        Exchange = new(http, device.Device, Random.Shared, PackedAsync);
        Exchange.Changed += status => _ = StandAsync(status);
        _following = new(Exchange, device.Device);
        _module = await script.InvokeAsync<IJSObjectReference>("import", "./sharing.js");
        _self = DotNetObjectReference.Create(this);
        await _module.InvokeVoidAsync("listen", _self);
        device.Device.HasNews += copy => _ = TellOthersAsync(copy.Held.Club);
        await _following.RunAsync(CancellationToken.None);
    }

    // The browser packs by itself: a program that could would be 10 kB more to load.
    private async ValueTask<byte[]?> PackedAsync(ReadOnlyMemory<byte> sent) =>
        _module is { } browser ? await browser.InvokeAsync<byte[]?>("pack", sent.ToArray()) : null;

    /// <summary>Other pages look once this one has drawn what was recorded.</summary>
    private async Task TellOthersAsync(string club)
    {
        await Task.Delay(Drawn);
        await _module!.InvokeVoidAsync("tellOthers", club);
    }

    /// <summary>Tries now.</summary>
    [JSInvokable]
    public void Woken() => _following?.Wake();

    /// <summary>Another page has written to the shelf.</summary>
    [JSInvokable]
    public async Task WrittenElsewhere(string club)
    {
        if (inHand.IsOpen && inHand.Held.Club == club)
        {
            await inHand.Copy.LookAgainAsync();
        }
    }

    /// <summary>A club's journal on the server has come to a number.</summary>
    [JSInvokable]
    public Task Grown(string club, long number) => _following?.NewsAsync(club, number) ?? Task.CompletedTask;

    /// <summary>The server has closed the stream of news: it is asked for again after the next exchange.</summary>
    [JSInvokable]
    public void NewsLost() => _followed = null;

    /// <summary>Somebody has signed in or out.</summary>
    public void SessionChanged()
    {
        Exchange?.SessionChanged();
        Woken();
    }

    private async Task StandAsync(ExchangeStatus status)
    {
        if (!inHand.IsOpen && device.Device.Clubs is [{ } first, ..])
        {
            await OpenFirstAsync(first);
        }

        await FollowAsync();
        if (status.Phase == ExchangePhase.Shared && inHand.IsOpen)
        {
            await RestAsync(inHand.Copy);
        }

        Changed?.Invoke();
    }

    /// <summary>News of a club is had by its members alone: there is none before somebody has signed in.</summary>
    private async Task FollowAsync()
    {
        string? club = Exchange?.Session is not null && inHand.IsOpen && inHand.Held.Home == ClubHome.Server ? inHand.Held.Club : null;
        if (club != _followed && _module is not null)
        {
            _followed = club;
            try
            {
                await _module.InvokeVoidAsync("follow", _self, club);
            }
            catch (JSException)
            {
                // Without the stream of news what others record comes with the next exchange; it is asked for again then.
                _followed = null;
            }
        }
    }

    private async Task OpenFirstAsync(HeldClub first)
    {
        try
        {
            await device.OpenClubAsync(first.Club);
        }
        catch (ShelfException)
        {
            // The next round finds it as it is, and says so.
        }
    }

    private static async Task RestAsync(ClubCopy copy)
    {
        try
        {
            await copy.RestAsync(isIdle: true);
        }
        catch (ShelfException)
        {
            // Without a snapshot the next start takes longer; nothing is lost.
        }
    }
}
