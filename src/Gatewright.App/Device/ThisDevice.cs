using Gatewright.App.Frame;
using Gatewright.Replica.Shelves;
using Microsoft.JSInterop;

namespace Gatewright.App.Device;

/// <summary>The device the program runs on: its shelf, the clubs on it, and the one that was last open.</summary>
public sealed class ThisDevice(IDeviceShelf shelf, BrowserRoom room, ClubInHand inHand, TimeProvider clock, Texts<DeviceTexts> texts)
{
    private const string LastClub = "club";

    // A small club is open sooner, and its first screen is the shed; of a large one something is to be seen meanwhile.
    private static readonly TimeSpan Patience = TimeSpan.FromMilliseconds(150);
    private readonly TaskCompletionSource _opened = new();
    private Replica.Device? _device;

    /// <summary>What was wrong when it was opened; null for nothing.</summary>
    public OpeningFault? Fault { get; private set; }

    /// <summary>The device, once it is open.</summary>
    /// <exception cref="InvalidOperationException">It is not.</exception>
    public Replica.Device Device => _device ?? throw new InvalidOperationException("The device is not open.");

    /// <summary>Whether it is open.</summary>
    public bool IsOpen => _device is not null;

    /// <summary>The club that is being opened, where that takes a while; null for none.</summary>
    public HeldClub? Opening { get; private set; }

    /// <summary>Done when the club that was last open is open again, or nothing could be opened.</summary>
    public Task Opened => _opened.Task;

    /// <summary>Opens it, and begins to open the club that was last open. What fails is told by <see cref="Fault"/>.</summary>
    public async Task OpenAsync()
    {
        try
        {
            _device = await Replica.Device.OpenAsync(shelf, clock, inHand.Breath.TakeAsync);
        }
        catch (Exception broken)
        {
            Fault = OpeningFault.Of(broken, texts);
            _opened.SetResult();
            return;
        }

        _device.ClubsChanged += inHand.ClubsHeard;
        _ = OpenLastAsync(_device);
        await Task.WhenAny(Opened, Task.Delay(Patience));
    }

    private async Task OpenLastAsync(Replica.Device device)
    {
        string? last = device.Settings.GetValueOrDefault(LastClub);
        Opening = device.Clubs.FirstOrDefault(c => c.Club == last) ?? (device.Clubs is [{ } first, ..] ? first : null);
        try
        {
            if (Opening is { } club)
            {
                await OpenClubAsync(club.Club);
            }

            await ForgetUnreadAsync(device);
        }
        catch (Exception broken)
        {
            // Whatever it was: the screen that says "opening" would stand for ever.
            Fault = OpeningFault.Of(broken, texts);
            inHand.PutDown();
        }
        finally
        {
            Opening = null;
            _opened.SetResult();
        }
    }

    /// <summary>Settings of clubs under names that nothing reads any more: no club would take them along when it goes.</summary>
    private static async Task ForgetUnreadAsync(Replica.Device device)
    {
        foreach (string setting in device.Settings.Keys
            .Where(k => k.StartsWith("plan:", StringComparison.Ordinal) || (k.StartsWith("ticks ", StringComparison.Ordinal) && !k.Contains('/', StringComparison.Ordinal)))
            .ToArray())
        {
            try
            {
                await device.SetAsync(setting, null);
            }
            catch (ShelfException)
            {
                // The next start tries again.
            }
        }
    }

    /// <summary>Opens a club that the device holds.</summary>
    /// <exception cref="ShelfException">It cannot be read.</exception>
    public async Task OpenClubAsync(string club)
    {
        inHand.Open(await Device.ClubAsync(club), Device);
        if (Device.Settings.GetValueOrDefault(LastClub) != club)
        {
            await Device.SetAsync(LastClub, club);
        }
    }

    /// <summary>Begins a club that lives on this device alone, and opens it.</summary>
    /// <exception cref="ShelfException">There is no such club.</exception>
    public async Task StartClubAsync(string name)
    {
        Replica.Copies.ClubCopy copy = await Device.StartClubAsync(name);
        await OpenClubAsync(copy.Held.Club);
        try
        {
            await room.PersistAsync();
        }
        catch (JSException)
        {
            // The browser does not say: the club is there all the same, and what is shared tells whether it is kept for good.
        }
    }

    /// <summary>Lets go of a club with all that is kept of it here, and opens another where there is one. What was not sent is lost: ask before.</summary>
    /// <exception cref="ShelfException">It is still held, or some of its small settings are still there.</exception>
    public async Task LetGoAsync(string club)
    {
        try
        {
            await Device.LetGoAsync(club);
        }
        finally
        {
            // What is no longer held is not gone on with, though something small of it is still there.
            if (inHand.IsOpen && inHand.Held.Club == club && Device.Clubs.All(c => c.Club != club))
            {
                await LeaveAsync();
            }
        }
    }

    /// <summary>Hands a club of this device alone over to one that a server keeps, and opens that.</summary>
    /// <exception cref="ShelfException">Nothing was done; or it is handed over, and something small of the one that is no more is still there.</exception>
    public async Task HandOverAsync(string from, string to)
    {
        try
        {
            await Device.HandOverAsync(from, to);
        }
        finally
        {
            // What is no longer held is not gone on with: what was recorded in it would be kept nowhere.
            if (Device.Clubs.All(c => c.Club != from))
            {
                await OpenClubAsync(to);
            }
        }
    }

    /// <summary>Opens another club in place of one that is gone, where there is one.</summary>
    private async Task LeaveAsync()
    {
        if (Device.Clubs is [{ } other, ..])
        {
            await OpenClubAsync(other.Club);
        }
        else
        {
            inHand.PutDown();
            await Device.SetAsync(LastClub, null);
        }
    }
}
