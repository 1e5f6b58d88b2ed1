using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.AspNetCore.Components;
using Microsoft.Playwright;

namespace Gatewright.Drawings.Tests.Gallery;

/// <summary>Every drawing in a real browser; the pictures, beside the tests' own files, are there to be looked at.</summary>
[Trait(Runs.Name, Runs.Once)]
public sealed class GalleryTests(Chromium chromium)
{
    [Theory]
    [InlineData(360, ColorScheme.Light)]
    [InlineData(360, ColorScheme.Dark)]
    [InlineData(1280, ColorScheme.Light)]
    [InlineData(1280, ColorScheme.Dark)]
    public Task Marks_and_plans_hold(int width, ColorScheme scheme) => HoldsAsync<MarksAndPlans>("plans", width, scheme);

    private async Task HoldsAsync<TComponent>(string name, int width, ColorScheme scheme)
        where TComponent : IComponent
    {
        IPage page = await chromium.PageAsync(await GalleryPage.OfAsync<TComponent>(), new()
        {
            ViewportSize = new() { Width = width, Height = 740 }, ColorScheme = scheme,
        });
        await page.ScreenshotAsync(new()
        {
            Path = Path.Combine(AppContext.BaseDirectory, "pictures", $"{name}-{width}-{(scheme == ColorScheme.Dark ? "dark" : "light")}.png"),
            FullPage = true, Animations = ScreenshotAnimations.Disabled,
        });
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
}
