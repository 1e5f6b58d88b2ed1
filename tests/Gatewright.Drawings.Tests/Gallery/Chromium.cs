using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(Gatewright.Drawings.Tests.Gallery.Chromium))]

namespace Gatewright.Drawings.Tests.Gallery;

/// <summary>A real browser, without a window, started when a page is first asked for.</summary>
public sealed class Chromium : IAsyncDisposable
{
    private const string Program = "/usr/bin/chromium";
    private readonly SemaphoreSlim _starting = new(1);
    private IPlaywright? _playwright;
    private IBrowser? _browser;

    /// <summary>A page with that content, as on a phone or at a desk.</summary>
    public async Task<IPage> PageAsync(string html, BrowserNewContextOptions options)
    {
        await _starting.WaitAsync();
        try
        {
            _playwright ??= await Playwright.CreateAsync();
            _browser ??= await _playwright.Chromium.LaunchAsync(new()
            {
                ExecutablePath = Program,
                Args = ["--no-sandbox", "--disable-gpu", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
            });
        }
        finally
        {
            _starting.Release();
        }

        IBrowserContext context = await _browser.NewContextAsync(options);
        IPage page = await context.NewPageAsync();
        await page.SetContentAsync(html);
        return page;
    }

    public async ValueTask DisposeAsync()
    {
        if (_browser is not null)
        {
            await _browser.DisposeAsync();
        }

        _playwright?.Dispose();
        _starting.Dispose();
    }
}
