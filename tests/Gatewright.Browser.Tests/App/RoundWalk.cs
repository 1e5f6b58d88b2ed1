using System.Globalization;
using Microsoft.Playwright;

namespace Gatewright.Browser.Tests.App;

/// <summary>Somebody with a gauge, walking round a boat.</summary>
internal static class RoundWalk
{
    /// <summary>How the place that is read now is written: "3 starboard, at the catch".</summary>
    public static async Task<string> NowAsync(this IPage page) => (await page.Locator(".now b").TextContentAsync())!.Trim();

    /// <summary>Taps the half degree that the gauge shows, and waits until the number stands in the boat.</summary>
    public static async Task TapAsync(this IPage page, decimal degrees)
    {
        ILocator now = page.Locator(".now");
        string before = (await now.TextContentAsync())!;
        await page.Locator($"#pad [data-value='{degrees.ToString("0.0", CultureInfo.InvariantCulture)}']").ClickAsync();
        await Assertions.Expect(now).Not.ToHaveTextAsync(before);
    }

    /// <summary>
    /// Reads every gate that is still to be read, with what the gauge shows at a place, by how the place is written; answers
    /// with how many those were.
    /// </summary>
    public static async Task<int> ReadAllAsync(this IPage page, Func<string, decimal> gauge)
    {
        int read = 0;
        for (; await page.Locator("#pad").CountAsync() > 0; read++)
        {
            await page.TapAsync(gauge(await page.NowAsync()));
        }

        return read;
    }

    /// <summary>From the shed to the first gate of a boat.</summary>
    public static async Task BeginAsync(this IPage page, string boat)
    {
        await page.TouchAsync(page.GetByRole(AriaRole.Link, new() { Name = $"Read {boat}", Exact = true }), "location.pathname.includes('/round')");
        await page.HeadedAsync(boat);
        await page.Locator("#pad").WaitForAsync();
    }
}
