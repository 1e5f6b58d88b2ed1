using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Gatewright.Browser.Tests;

/// <summary>A stranger walks through the demo shed.</summary>
public sealed class DemoWalkTests(Chromium chromium)
{
    [Theory]
    [InlineData(true, false)]
    [InlineData(true, true)]
    [InlineData(false, false)]
    [InlineData(false, true)]
    public async Task The_wrong_gate_is_found_and_told_why_and_what_to_do(bool isPhone, bool isDark)
    {
        await using ServedSite site = await ServedSite.StartAsync(isDemo: true);
        await using Visit visit = await chromium.VisitAsync(site.Address, isPhone, isDark);
        IPage page = visit.Page;
        var blocked = new List<string>();
        page.Console += (_, message) => blocked.AddRange(message.Type == "error" ? [message.Text] : []);

        await page.GotoAsync("/");
        await page.HoldAsync("welcome");
        await page.GetByRole(AriaRole.Button, new() { Name = "Look around without scripts" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync("The demo shed");
        await page.HoldAsync("shed");
        await page.Locator(".boats a").First.ClickAsync();

        // Invented for the demo: examples/README.md tells the truth about each boat.
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToContainTextAsync("Nuthatch");
        await Assertions.Expect(page.GetByText("wrong or worn insert at seat 2 starboard").First).ToBeVisibleAsync();
        await page.Locator("summary", new() { HasText = "Fit an insert" }).First.ClickAsync();
        await Assertions.Expect(page.GetByText("The gauge should then show").First).ToBeVisibleAsync();
        await page.HoldAsync("boat");
        Assert.Empty(blocked);
    }

    [Fact]
    public async Task The_keyboard_alone_is_enough()
    {
        await using ServedSite site = await ServedSite.StartAsync(isDemo: true);
        await using Visit visit = await chromium.VisitAsync(site.Address, isPhone: true, isDark: false);
        IPage page = visit.Page;
        await page.GotoAsync("/");

        // The first stop skips to the content, the second leads home; then come the app and the pages.
        foreach (int _ in Enumerable.Range(0, 4))
        {
            await page.Keyboard.PressAsync("Tab");
        }

        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync("The demo shed");

        // A page that is still coming in takes no keys.
        await page.WaitForLoadStateAsync();
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page).ToHaveURLAsync(new Regex("#main$"));
    }

    /// <summary>The keeper's page of the club's people, with its long choices, on the narrowest phone.</summary>
    [Fact]
    public async Task The_clubs_people_are_no_wider_than_a_phone()
    {
        await using ServedSite site = await ServedSite.StartAsync(isDemo: true);
        await using Visit visit = await chromium.VisitAsync(site.Address, isPhone: true, isDark: false);
        IPage page = visit.Page;
        await page.GotoAsync("/");
        await page.GetByRole(AriaRole.Button, new() { Name = "Look around without scripts" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync("The demo shed");
        await page.GotoAsync("/club/demo/people");
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync("People");

        // A boat whose name is one long word is the hardest for a list of choices.
        await page.EvaluateAsync("document.querySelector('.tick').append('Donaudampfschifffahrtsgesellschaftskapitän'.repeat(2))");
        Assert.Equal(string.Empty, await page.OverhangingAsync());
    }
}
