using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Gatewright.Browser.Tests;

/// <summary>What is asked of every page.</summary>
internal static class Pages
{
    /// <summary>
    /// Nothing that axe finds against WCAG 2.2 AA, nothing wider than the screen, nothing that the page's own policy
    /// blocked; and a picture of it, to be looked at.
    /// </summary>
    public static async Task HoldAsync(this IPage page, string name)
    {
        string folder = Path.Combine(AppContext.BaseDirectory, "pictures");
        string scheme = await page.EvaluateAsync<string>("matchMedia('(prefers-color-scheme: dark)').matches ? 'dark' : 'light'");
        await page.ScreenshotAsync(new() { Path = Path.Combine(folder, $"{name}-{page.ViewportSize!.Width}-{scheme}.png"), FullPage = true });
        AxeResult result = await page.RunAxe(new AxeRunOptions
        {
            RunOnly = new() { Type = "tag", Values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"] },
        });
        Assert.True(result.Violations.Length == 0, string.Join('\n', result.Violations.Select(v =>
            $"{name}: {v.Id}: {v.Help}: {string.Join(" | ", v.Nodes.Select(n => n.Html))}")));
        int overhang = await page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth");
        Assert.True(overhang <= 0, $"{name} is {overhang} px wider than the screen");
        string small = await page.EvaluateAsync<string>(
            """
            [...document.querySelectorAll('main a.button, main button, main input:not([type=hidden]), main select, main summary, nav a')]
              .filter(e => e.offsetParent !== null && e.getBoundingClientRect().height < 48 && !(e.type === 'checkbox'))
              .map(e => e.outerHTML.slice(0, 80)).join('\n')
            """);
        Assert.True(small.Length == 0, $"{name}: lower than 48 px: {small}");
    }
}
