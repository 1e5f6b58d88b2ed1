using Gatewright.Bench.WholeRuns;
using Microsoft.Playwright;

namespace Gatewright.Bench.Browsing;

/// <summary>
/// A browser as on a slow phone: its screen, touch, and a processor four times slower. What it keeps lies in a folder, so
/// that it can be closed and opened again.
/// </summary>
internal sealed class Phone : IAsyncDisposable
{
    /// <summary>How much slower than this machine.</summary>
    public const double Slower = 4;

    private const string Program = "/usr/bin/chromium";
    private const float Patience = 600_000;

    private readonly IBrowserContext _context;

    private Phone(IBrowserContext context, IPage page, ICDPSession session, string folder) =>
        (_context, Page, Session, Folder) = (context, page, session, folder);

    public IPage Page { get; }

    /// <summary>The browser's own tools for this page.</summary>
    public ICDPSession Session { get; }

    /// <summary>Where it keeps things.</summary>
    public string Folder { get; }

    /// <summary>Opens it.</summary>
    /// <param name="playwright">What drives it.</param>
    /// <param name="folder">What it kept; an empty one is that of a new phone.</param>
    /// <param name="isSlowed">Whether its processor is slowed from the start.</param>
    public static async Task<Phone> OpenAsync(IPlaywright playwright, string folder, bool isSlowed = true)
    {
        IBrowserContext context = await playwright.Chromium.LaunchPersistentContextAsync(folder, new()
        {
            ExecutablePath = Program,
            ViewportSize = new() { Width = 360, Height = 740 },
            HasTouch = true,
            Timeout = Patience,
            Args =
            [
                "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
                "--disable-component-update", "--disable-sync",
            ],
        });
        context.SetDefaultTimeout(Patience);
        await context.AddInitScriptAsync(await File.ReadAllTextAsync(
            Path.Combine(RepositoryRoot.Path, "bench", "Gatewright.Bench", "Browsing", "watch.js")));
        IPage page = context.Pages[0];
        ICDPSession session = await context.NewCDPSessionAsync(page);
        var phone = new Phone(context, page, session, folder);
        if (isSlowed)
        {
            await phone.SlowAsync();
        }

        return phone;
    }

    /// <summary>Slows its processor, as far as the page uses it; the worker's is left as it is.</summary>
    public Task SlowAsync() => Session.SendAsync("Emulation.setCPUThrottlingRate", new() { ["rate"] = Slower });

    /// <summary>Signs in with cookies had elsewhere.</summary>
    public Task SignInAsync(Uri site, string cookies) => _context.AddCookiesAsync(cookies.Split("; ").Select(cookie => new Cookie
    {
        Name = cookie[..cookie.IndexOf('=', StringComparison.Ordinal)],
        Value = cookie[(cookie.IndexOf('=', StringComparison.Ordinal) + 1)..],
        Url = new Uri(site, "/").ToString(),
    }));

    public ValueTask DisposeAsync() => _context.DisposeAsync();
}
