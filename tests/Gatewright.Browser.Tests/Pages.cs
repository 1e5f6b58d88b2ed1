using Microsoft.Playwright;

namespace Gatewright.Browser.Tests;

/// <summary>What is asked of every page.</summary>
internal static class Pages
{
    private const string OfApp = "app-";

    /// <summary>The screens that the documentation shows.</summary>
    private static readonly string[] Shown =
    [
        "shed", "round", "reading", "story", "summary", "boat", "gate", "job-new", "job", "recheck", "job-closed", "jobs", "report-what", "more", "stores",
        "explain", "empty-shed", "rig", "measure", "targets", "boat-stroke", "boat-water", "change", "compare", "oars-one",
    ];

    private static readonly string[] Asked = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

    /// <summary>
    /// Nothing that axe finds against WCAG 2.2 AA, nothing wider than the screen, nothing too small to touch; and a picture
    /// of it, to be looked at.
    /// </summary>
    public static async Task HoldAsync(this IPage page, string name)
    {
        List<string> faults = await page.FaultsAsync(name);
        Assert.True(faults.Count == 0, string.Join('\n', faults));
    }

    /// <summary>The same by day and at dusk, what does not depend on colours by day alone; told at the end of a walk, all together.</summary>
    public static async Task HoldBothAsync(this IPage page, string name, List<string> faults, Daylight light = Daylight.Both)
    {
        await page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Light });
        if (light != Daylight.Dusk)
        {
            faults.AddRange(await page.FaultsAsync(name));
        }

        if (light != Daylight.Day)
        {
            await page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Dark });
            await page.PictureAsync(name);
            faults.AddRange((await page.AxeAsync("rule", "color-contrast")).Select(f => $"{name}, dark: {f}"));
            await page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Light });
        }
    }

    private static async Task<List<string>> FaultsAsync(this IPage page, string name)
    {
        await page.PictureAsync(name);
        List<string> faults = [.. await page.AxeAsync("tag", Asked)];
        foreach (string found in (string[])[await page.OverhangingAsync(), await page.SmallAsync(), await page.CoveredAsync()])
        {
            faults.AddRange(found.Split('\n', StringSplitOptions.RemoveEmptyEntries));
        }

        return [.. faults.Select(f => $"{name}: {f}")];
    }

    /// <summary>
    /// A picture of the whole page, and for the design's own page one of what a screen shows at once; in a long run, or where
    /// GATEWRIGHT_PICTURES says where they go: for people to look at, they are a minute of a short one.
    /// </summary>
    public static async Task PictureAsync(this IPage page, string name)
    {
        string? shown = Environment.GetEnvironmentVariable("GATEWRIGHT_PICTURES");
        if (string.IsNullOrEmpty(shown) && !LongRun.IsAsked)
        {
            return;
        }

        string scheme = await page.EvaluateAsync<string>("matchMedia('(prefers-color-scheme: dark)').matches ? 'dark' : 'light'");
        string file = $"{name}-{page.ViewportSize!.Width}-{scheme}.png";
        await page.ScreenshotAsync(new() { Path = Path.Combine(AppContext.BaseDirectory, "pictures", file), FullPage = true });
        if (!string.IsNullOrEmpty(shown) && Shown.Any(s => name == OfApp + s))
        {
            await File.WriteAllBytesAsync(Path.Combine(shown, file[OfApp.Length..]), SmallPicture.Of(await page.ScreenshotAsync()));
        }
    }

    /// <summary>What stands out to the right; empty for nothing.</summary>
    public static Task<string> OverhangingAsync(this IPage page) => page.EvaluateAsync<string>(
        """
        (() => {
          const width = document.documentElement.clientWidth;
          const over = document.documentElement.scrollWidth - width;
          return over <= 0 ? '' : `${over} px wider than the screen: ` + [...document.querySelectorAll('body *')]
            .filter(e => e.getBoundingClientRect().right > width + 0.5).slice(0, 3).map(e => e.outerHTML.slice(0, 120)).join(' | ');
        })()
        """);

    private static async Task<IEnumerable<string>> AxeAsync(this IPage page, string type, params string[] values) =>
        (await page.FindAsync(type, values)).SelectMany(v => v.Nodes.Where(n => !IsUnderTheFoot(v, n)).Select(n =>
            $"{v.Id}: {v.Help}: {n.Html} ({(n.Any.Count > 0 ? n.Any[0].Message : null)})"));

    /// <summary>
    /// What is fixed to the foot of the screen covers at each moment something that scrolls out from under it: that is no
    /// small target. Where the focus goes it must not stay covered, which is asked of each stop.
    /// </summary>
    private static bool IsUnderTheFoot(Axe.Violation found, Axe.Node node) =>
        found.Id == "target-size" && node.Any.Any(c => c.Message.Contains("obscured", StringComparison.Ordinal));

    /// <summary>What is covered when the focus comes there (WCAG 2.2, 2.4.11); empty for nothing.</summary>
    private static Task<string> CoveredAsync(this IPage page) => page.EvaluateAsync<string>(
        """
        (() => {
          const before = document.activeElement, at = scrollY;
          const strips = [...document.querySelectorAll('main *')].filter(e => e.scrollWidth > e.clientWidth).map(e => [e, e.scrollLeft]);
          const covered = [...document.querySelectorAll('main a[href], main button:enabled, main input:enabled, main select, main textarea, main summary')]
            .filter(e => e.checkVisibility() && e.tabIndex >= 0 && !e.closest('.hidden-words') && !e.classList.contains('hidden-words'))
            .filter(e => {
              e.focus();
              const r = e.getBoundingClientRect();
              return ![[.5, .5], [.1, .2], [.9, .2], [.1, .8], [.9, .8]].some(([x, y]) => {
                const top = document.elementFromPoint(r.left + x * r.width, r.top + y * r.height);
                return top && (e.contains(top) || top.contains(e));
              });
            }).map(e => `covered when focused: ${e.outerHTML.slice(0, 120)}`).join('\n');
          before?.focus?.({ preventScroll: true });
          strips.forEach(([e, left]) => { e.scrollLeft = left; });
          scrollTo(0, at);
          return covered;
        })()
        """);

    /// <summary>What is lower or narrower than 48 px and can be touched; a box or a dot is touched by its label. Empty for nothing.</summary>
    private static Task<string> SmallAsync(this IPage page) => page.EvaluateAsync<string>(
        """
        [...document.querySelectorAll('main a.button, main button, main input:not([type=hidden]), main select, main textarea, main summary, nav a')]
          .filter(e => e.checkVisibility() && e.tabIndex >= 0 && !e.closest('.hidden-words'))
          .map(e => /checkbox|radio/.test(e.type) ? e.closest('label') ?? e : e)
          .filter(e => { const r = e.getBoundingClientRect(); return r.height < 47.5 || r.width < 47.5; })
          .map(e => `lower or narrower than 48 px: ${e.outerHTML.slice(0, 120)}`).join('\n')
        """);
}
