using System.Diagnostics;
using Microsoft.Playwright;

namespace Gatewright.Browser.Tests.App;

/// <summary>
/// A phone or a desk with a browser of its own, whose disk outlives it: it can be killed and started again, and comes back
/// with what had reached the disk.
/// </summary>
internal sealed class Device : IAsyncDisposable
{
    private readonly string _disk = Directory.CreateTempSubdirectory("gw-device-").FullName;
    private readonly Uri _address;
    private readonly Chromium _chromium;
    private readonly DeviceShape _shape;
    private readonly List<string> _complaints = [];
    private IBrowserContext? _browser;
    private bool _isCut;

    private Device(Uri address, Chromium chromium, DeviceShape shape) => (_address, _chromium, _shape) = (address, chromium, shape);

    /// <summary>The page.</summary>
    public IPage Page { get; private set; } = null!;

    /// <summary>What the console complained of, but for requests that failed while the test had cut the network.</summary>
    public IReadOnlyList<string> Complaints => _complaints;

    /// <summary>A device that is switched on, with nothing on it yet.</summary>
    public static async Task<Device> StartAsync(Uri address, Chromium chromium, DeviceShape? shape = null)
    {
        var device = new Device(address, chromium, shape ?? DeviceShape.Phone);
        if (device._shape.HasLargeText)
        {
            await device.EnlargeAsync();
        }

        await device.StartAgainAsync();
        return device;
    }

    /// <summary>A device with the demo shed on it.</summary>
    public static async Task<Device> InShedAsync(Uri address, Chromium chromium, DeviceShape? shape = null)
    {
        Device device = await StartAsync(address, chromium, shape);
        await device.WalkInAsync();
        return device;
    }

    /// <summary>Starts the browser over the disk as it is.</summary>
    public async Task StartAgainAsync()
    {
        _browser = await _chromium.PersistentAsync(_disk, _address, _shape);
        Follow(_browser.Pages is [{ } first, ..] ? first : await _browser.NewPageAsync());
    }

    /// <summary>Walks into the demo shed and waits until the app stands there and is kept on the device.</summary>
    public async Task WalkInAsync()
    {
        await Page.GotoAsync("/");
        await Page.Locator("form button.main").ClickAsync();
        await Page.HeadedAsync("The demo shed");
        await KeptAsync();
    }

    /// <summary>Waits until the worker has the whole program and looks after this page.</summary>
    public Task KeptAsync() => Page.UntilAsync("navigator.serviceWorker.controller !== null");

    /// <summary>Cuts the network, or brings it back.</summary>
    public Task OfflineAsync(bool isOffline)
    {
        _isCut |= isOffline;
        return _browser!.SetOfflineAsync(isOffline);
    }

    /// <summary>Answers requests in the server's place; what fails then is no complaint.</summary>
    public Task RouteAsync(string url, Func<IRoute, Task> handler)
    {
        _isCut = true;
        return _browser!.RouteAsync(url, handler);
    }

    /// <summary>Lets the server answer again.</summary>
    public Task UnrouteAsync(string url) => _browser!.UnrouteAsync(url);

    /// <summary>A page more in the same browser, the one before closed.</summary>
    public async Task NewPageAsync()
    {
        IPage before = Page;
        Follow(await _browser!.NewPageAsync());
        await before.CloseAsync();
    }

    /// <summary>Kills the browser as an empty battery would: nobody gets word of it.</summary>
    public async Task KillAsync()
    {
        List<Process> ours = [];
        foreach (Process process in Process.GetProcesses())
        {
            if (IsOurs(process.Id))
            {
                ours.Add(process);
                process.Kill();
            }
            else
            {
                process.Dispose();
            }
        }

        foreach (Process process in ours)
        {
            await process.WaitForExitAsync();
            process.Dispose();
        }

        _browser = null;
    }

    public async ValueTask DisposeAsync()
    {
        if (_browser is not null)
        {
            await _browser.CloseAsync();
        }

        try
        {
            Directory.Delete(_disk, recursive: true);
        }
        catch (IOException)
        {
            // A child of the browser is still writing: the folder is one of the machine's temporary ones.
        }
    }

    /// <summary>Has all text twice as large as usual, as a person sets it in the browser; before the first start.</summary>
    private async Task EnlargeAsync()
    {
        string profile = Directory.CreateDirectory(Path.Combine(_disk, "Default")).FullName;
        await File.WriteAllTextAsync(Path.Combine(profile, "Preferences"), """{"webkit":{"webprefs":{"default_font_size":32}}}""");
    }

    private void Follow(IPage page)
    {
        Page = page;
        page.Console += (_, message) => Hear(message.Type == "error" ? message.Text : null);
        page.PageError += (_, fault) => Hear(fault);
    }

    private void Hear(string? complaint)
    {
        // A request that fails because the test cut the network is no fault of the page.
        if (complaint is not null && !(_isCut && complaint.Contains("net::ERR_", StringComparison.Ordinal)))
        {
            _complaints.Add(complaint);
        }
    }

    /// <summary>Whether a process is the browser, or a child of it, over this very disk.</summary>
    private bool IsOurs(int id)
    {
        try
        {
            return File.ReadAllText($"/proc/{id}/cmdline").Contains("--user-data-dir=" + _disk, StringComparison.Ordinal);
        }
        catch (Exception gone) when (gone is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }
}
