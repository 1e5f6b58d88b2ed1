using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Gatewright.Drawings.Tests.Gallery;

/// <summary>Every drawing in a real browser; the pictures, beside the tests' own files, are there to be looked at.</summary>
[Trait(Runs.Name, Runs.Once)]
public sealed class GalleryTests(Chromium chromium)
{
    private const int Phone = 360;
    private const int Desk = 1280;

    public static TheoryData<string, int, ColorScheme> Pages { get; } =
        [.. from name in All.Keys from width in (int[])[Phone, Desk] from scheme in (ColorScheme[])[ColorScheme.Light, ColorScheme.Dark] select (name, width, scheme)];

    internal static Dictionary<string, Func<Task<string>>> All => new()
    {
        ["plans"] = GalleryPage.OfAsync<MarksAndPlans>,
        ["gates"] = GalleryPage.OfAsync<GatesAndLeans>,
        ["curves"] = GalleryPage.OfAsync<Curves>,
        ["scenes"] = GalleryPage.OfAsync<Scenes>,
        ["remedies"] = GalleryPage.OfAsync<RemediesAndIcons>,
    };

    [Theory(Skip = LongRun.Why, SkipUnless = nameof(LongRun.IsAsked), SkipType = typeof(LongRun))]
    [MemberData(nameof(Pages))]
    public async Task Every_drawing_holds(string name, int width, ColorScheme scheme)
    {
        IPage page = await chromium.PageAsync(await All[name](), new()
        {
            ViewportSize = new() { Width = width, Height = 740 }, ColorScheme = scheme, DeviceScaleFactor = width == Phone ? 2 : 1,
        });
        string end = $"{width}-{(scheme == ColorScheme.Dark ? "dark" : "light")}.png";
        await page.ScreenshotAsync(new() { Path = Picture($"{name}-{end}"), FullPage = true, Animations = ScreenshotAnimations.Disabled });
        foreach (ILocator part in width == Phone ? await page.Locator("[data-picture]").AllAsync() : [])
        {
            string? partName = await part.GetAttributeAsync("data-picture");
            await part.ScreenshotAsync(new() { Path = Picture($"{name}-{partName}-{end}"), Animations = ScreenshotAnimations.Disabled });
        }

        AxeResult result = await page.RunAxe(new AxeRunOptions
        {
            RunOnly = new() { Type = "tag", Values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"] },
        });
        Assert.True(result.Violations.Length == 0, string.Join('\n', result.Violations.Select(v =>
            $"{v.Id}: {v.Help}: {string.Join(" | ", v.Nodes.Select(n => n.Html))}")));
        int overhang = await page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth");
        Assert.True(overhang <= 0, $"{name} is {overhang} px wider than the screen");
        await page.Context.CloseAsync();
    }

    private static string Picture(string name) => Path.Combine(AppContext.BaseDirectory, "pictures", name);
}
