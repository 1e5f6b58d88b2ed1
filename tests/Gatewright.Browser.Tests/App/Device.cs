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
    private readonly AppSite _site;
    private readonly DeviceShape _shape;
    private readonly List<string> _complaints = [];
    private IBrowserContext? _browser;

    private Device(AppSite site, DeviceShape shape) => (_site, _shape) = (site, shape);

    /// <summary>The page.</summary>
    public IPage Page { get; private set; } = null!;

    /// <summary>What the console complained of, but for requests that a cut network failed.</summary>
    public IReadOnlyList<string> Complaints => _complaints;

    public static async Task<Device> StartAsync(AppSite site, Chromium chromium, DeviceShape? shape = null)
    {
        var device = new Device(site, shape ?? DeviceShape.Phone);
        await device.StartAgainAsync(chromium);
        return device;
    }

    /// <summary>Starts the browser over the disk as it is.</summary>
    public async Task StartAgainAsync(Chromium chromium)
    {
        _browser = await chromium.PersistentAsync(_disk, _site.Address, _shape);
        Page = _browser.Pages is [{ } first, ..] ? first : await _browser.NewPageAsync();
        Page.Console += (_, message) => Hear(message.Type == "error" ? message.Text : null);
        Page.PageError += (_, fault) => Hear(fault);
    }

    /// <summary>Walks into the demo shed and waits until the app stands there and is kept on the device.</summary>
    public async Task WalkInAsync()
    {
        await Page.GotoAsync("/");
        await Page.GetByRole(AriaRole.Button, new() { Name = "Walk in" }).ClickAsync();
        await Assertions.Expect(Page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync("The demo shed", new() { Timeout = 60_000 });
        await KeptAsync();
    }

    /// <summary>Waits until the worker has the whole program and looks after this page.</summary>
    public async Task KeptAsync() =>
        await Page.WaitForFunctionAsync("navigator.serviceWorker.controller !== null", null, new() { Timeout = 60_000 });

    /// <summary>Cuts the network, or brings it back.</summary>
    public Task OfflineAsync(bool isOffline) => _browser!.SetOfflineAsync(isOffline);

    /// <summary>Makes the processor slower.</summary>
    public async Task SlowAsync(int times)
    {
        ICDPSession session = await _browser!.NewCDPSessionAsync(Page);
        await session.SendAsync("Emulation.setCPUThrottlingRate", new() { ["rate"] = times });
    }

    /// <summary>A page more in the same browser, the one before closed.</summary>
    public async Task NewPageAsync()
    {
        IPage before = Page;
        Page = await _browser!.NewPageAsync();
        Page.Console += (_, message) => Hear(message.Type == "error" ? message.Text : null);
        await before.CloseAsync();
    }

    /// <summary>Kills the browser as an empty battery would: nobody gets word of it.</summary>
    public async Task KillAsync()
    {
        foreach (Process process in Process.GetProcesses())
        {
            if (IsOurs(process.Id))
            {
                process.Kill();
                await process.WaitForExitAsync();
            }

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

        Directory.Delete(_disk, recursive: true);
    }

    private void Hear(string? complaint)
    {
        // A request that fails because the test cut the network is no fault of the page.
        if (complaint is not null && !complaint.Contains("net::ERR_", StringComparison.Ordinal))
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
        catch (IOException)
        {
            return false;
        }
    }
}

/// <summary>What a device looks like.</summary>
/// <param name="Width">CSS pixels.</param>
/// <param name="Height">CSS pixels.</param>
/// <param name="IsDark">Whether it likes it dark.</param>
/// <param name="Locale">Its language.</param>
internal sealed record DeviceShape(int Width, int Height, bool IsDark = false, string Locale = "en-GB")
{
    /// <summary>A small phone.</summary>
    public static DeviceShape Phone { get; } = new(360, 740);

    /// <summary>A desk.</summary>
    public static DeviceShape Desk { get; } = new(1280, 800);
}
