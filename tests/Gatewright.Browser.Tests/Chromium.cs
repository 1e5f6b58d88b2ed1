using Gatewright.Browser.Tests.App;
using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(Gatewright.Browser.Tests.Chromium))]
[assembly: Trait(Runs.Name, Runs.Once)]

// Somebody who walks through pages mostly waits for them: two at a time leave half of two processors.
[assembly: Xunit.v3.Parallelization(MaxThreads = 4)]

namespace Gatewright.Browser.Tests;

/// <summary>A real browser, without a window.</summary>
public sealed class Chromium : IAsyncLifetime
{
    private const string Program = "/usr/bin/chromium";
    private static readonly string[] Quietly =
    [
        "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
        "--disable-component-update", "--disable-sync",
        "--use-fake-device-for-media-stream", "--use-fake-ui-for-media-stream",
    ];

    private IPlaywright? _playwright;
    private IBrowser? _browser;

    public async ValueTask InitializeAsync()
    {
        if (!File.Exists(Program))
        {
            throw new InvalidOperationException("Chromium is not installed: ./test installs it where it may, or use apt-get install chromium.");
        }

        // A loaded machine is no fault of a page: what comes is waited for, and what comes late is a matter of the benches.
        Assertions.SetDefaultExpectTimeout(30_000);
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(new() { ExecutablePath = Program, Args = Quietly });
    }

    /// <summary>A browser of its own over a disk that outlives it.</summary>
    internal Task<IBrowserContext> PersistentAsync(string disk, Uri address, DeviceShape shape) =>
        _playwright!.Chromium.LaunchPersistentContextAsync(disk, new()
        {
            ExecutablePath = Program,
            Args = Quietly,
            BaseURL = address.ToString(),
            Locale = shape.Locale,
            ReducedMotion = ReducedMotion.Reduce,
            ViewportSize = new() { Width = shape.Width, Height = shape.Height },
            ColorScheme = shape.IsDark ? ColorScheme.Dark : ColorScheme.Light,
        });

    /// <summary>A visit in a browser that knows nothing yet, as on a phone or at a desk.</summary>
    internal async Task<Visit> VisitAsync(Uri address, bool isPhone, bool isDark)
    {
        IBrowserContext context = await _browser!.NewContextAsync(new()
        {
            BaseURL = address.ToString(),
            ViewportSize = isPhone ? new() { Width = 360, Height = 740 } : new() { Width = 1280, Height = 900 },
            ColorScheme = isDark ? ColorScheme.Dark : ColorScheme.Light,
        });
        return new(await context.NewPageAsync());
    }

    public async ValueTask DisposeAsync()
    {
        if (_browser is not null)
        {
            await _browser.DisposeAsync();
        }

        _playwright?.Dispose();
    }
}
