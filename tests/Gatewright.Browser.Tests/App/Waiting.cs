using System.Diagnostics;
using Microsoft.Playwright;

namespace Gatewright.Browser.Tests.App;

/// <summary>Waits for what a page says of itself.</summary>
internal static class Waiting
{
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(60);
    private static readonly TimeSpan Answered = TimeSpan.FromSeconds(30);
    private static readonly TimeSpan Often = TimeSpan.FromMilliseconds(50);

    /// <summary>
    /// Waits until an expression is true. Playwright's own wait evaluates text within the page, which the page's policy forbids.
    /// </summary>
    public static async Task UntilAsync(this IPage page, string expression)
    {
        var watch = Stopwatch.StartNew();
        while (!await IsAsync(page, expression))
        {
            Assert.True(watch.Elapsed < Longest, $"never came true: {expression}");
            await Task.Delay(Often, TestContext.Current.CancellationToken);
        }
    }

    private static async Task<bool> IsAsync(IPage page, string expression)
    {
        try
        {
            return await page.EvaluateAsync<bool>(expression);
        }
        catch (PlaywrightException gone) when (gone.Message.Contains("navigation", StringComparison.Ordinal))
        {
            return false;
        }
    }

    /// <summary>Waits until the page works nothing out any more: while it does, it says so in words that end in an ellipsis.</summary>
    public static Task SettledAsync(this IPage page) => page.UntilAsync(
        "!document.querySelector('main [aria-busy=\"true\"]') && !/…(\\s|$)/.test(document.querySelector('main')?.innerText ?? '…')");

    /// <summary>
    /// Touches something until what it brings is there: now and then one of two touches right after a start is not heard, and whoever
    /// gets no answer touches again. A page that answers neither says what stood on it.
    /// </summary>
    public static async Task TouchAsync(this IPage page, ILocator what, string brings)
    {
        for (int touches = 1; ; touches++)
        {
            await what.ClickAsync();
            var watch = Stopwatch.StartNew();
            while (watch.Elapsed < Answered)
            {
                if (await IsAsync(page, brings))
                {
                    return;
                }

                await Task.Delay(Often, TestContext.Current.CancellationToken);
            }

            Assert.True(touches < 2, $"Touched twice, and never: {brings}. At {page.Url} stood: {await page.Locator("body").InnerTextAsync()}");
        }
    }

    /// <summary>Waits for the first heading, of the program itself: not of the shed as it was last seen, which stands there before.</summary>
    public static Task HeadedAsync(this IPage page, string text) =>
        Assertions.Expect(page.Locator("#app:not([inert]) h1")).ToContainTextAsync(text, new() { Timeout = 60_000 });

    /// <summary>Goes to one of the places of the frame.</summary>
    public static async Task PlaceAsync(this IPage page, string name)
    {
        await page.Locator(".places").GetByRole(AriaRole.Link, new() { Name = name, Exact = true }).ClickAsync();
        await page.HeadedAsync(name == "Shed" ? "The demo shed" : name);
    }

    /// <summary>Shows a screen by its address without starting the program anew, and waits for a first heading that is its own.</summary>
    public static async Task ShowAsync(this IPage page, string address)
    {
        await page.EvaluateAsync("address => { document.querySelector('#app h1').dataset.before = ''; Blazor.navigateTo(address); }", address);
        await page.Locator("#app h1:not([data-before])").WaitForAsync();
    }
}
