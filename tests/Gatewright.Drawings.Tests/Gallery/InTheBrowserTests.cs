using Gatewright.Core;
using Microsoft.Playwright;

namespace Gatewright.Drawings.Tests.Gallery;

/// <summary>What only a browser can tell: where things come to lie, and how they move.</summary>
[Trait(Runs.Name, Runs.Once)]
public sealed class InTheBrowserTests(Chromium chromium)
{
    private static readonly BrowserNewContextOptions Phone = new() { ViewportSize = new() { Width = 360, Height = 740 } };

    [Fact]
    public async Task Each_button_lies_over_its_own_pin_and_is_48_px_at_least()
    {
        IPage page = await chromium.PageAsync(await GalleryPage.OfAsync<MarksAndPlans>(), Phone);

        string[] faults = await page.EvaluateAsync<string[]>(
            """
            () => [...document.querySelectorAll('.gw-plan')].flatMap(plan => {
              const buttons = [...plan.querySelectorAll('button')].map(b => ({ name: b.ariaLabel, r: b.getBoundingClientRect(), port: b.classList.contains('gw-port') }));
              const pins = [...plan.querySelectorAll('.gw-pin')].map(p => p.getBoundingClientRect()).map(r => ({ x: r.x + r.width / 2, y: r.y + r.height / 2 }));
              const middle = plan.getBoundingClientRect().x + plan.getBoundingClientRect().width / 2;
              return buttons.flatMap(({ name, r, port }) => {
                const inside = pins.filter(p => p.x > r.left && p.x < r.right && p.y > r.top && p.y < r.bottom);
                return [
                  r.width < 48 || r.height < 48 ? `${name}: ${r.width} x ${r.height}` : null,
                  inside.length !== 1 ? `${name} lies over ${inside.length} pins` : null,
                  inside.some(p => Math.abs(p.y - r.top - r.height / 2) > 1) ? `${name} lies beside its pin` : null,
                  port !== r.right < middle ? `${name} lies on the wrong side` : null,
                ].filter(f => f);
              });
            })
            """);
        int buttons = await page.Locator(".gw-plan button").CountAsync();

        Assert.Equal(BoatClass.All.Sum(c => c.Gates), buttons);
        Assert.Equal([], faults);
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task The_buttons_are_reached_by_the_keyboard_and_show_it()
    {
        IPage page = await chromium.PageAsync(await GalleryPage.OfAsync<MarksAndPlans>(), Phone);

        await page.Keyboard.PressAsync("Tab");

        ILocator focused = page.Locator(":focus");
        Assert.StartsWith("seat 1 port", await focused.GetAttributeAsync("aria-label"), StringComparison.Ordinal);
        Assert.Equal("3px", await focused.EvaluateAsync<string>("e => getComputedStyle(e).outlineWidth"));
        await page.Context.CloseAsync();
    }

    [Theory]
    [InlineData(ReducedMotion.NoPreference, true)]
    [InlineData(ReducedMotion.Reduce, false)]
    public async Task What_was_read_settles_and_the_light_glides_unless_motion_is_unwanted(ReducedMotion motion, bool moves)
    {
        var options = new BrowserNewContextOptions { ViewportSize = Phone.ViewportSize, ReducedMotion = motion };
        IPage gates = await chromium.PageAsync(await GalleryPage.OfAsync<GatesAndLeans>(), options);
        IPage plans = await chromium.PageAsync(await GalleryPage.OfAsync<MarksAndPlans>(), options);

        Assert.Equal(moves, await MovesAsync(gates, ".gw-settle", "transform", "rotate(8)"));
        Assert.Equal(moves, await MovesAsync(plans, ".gw-lit", "y", "20"));
        await gates.Context.CloseAsync();
        await plans.Context.CloseAsync();
    }

    [Fact]
    public async Task In_forced_colours_the_drawing_has_the_colours_of_the_person()
    {
        IPage page = await chromium.PageAsync(await GalleryPage.OfAsync<MarksAndPlans>(), new() { ViewportSize = Phone.ViewportSize, ForcedColors = ForcedColors.Active });

        string[] colours = await page.EvaluateAsync<string[]>(
            """
            () => {
              document.body.insertAdjacentHTML('beforeend', '<i id="probe" style="color: CanvasText; background: Canvas"></i>');
              const probe = getComputedStyle(document.getElementById('probe'));
              const of = (selector, property) => getComputedStyle(document.querySelector(selector))[property];
              return [probe.color, of('.gw-hull', 'stroke'), of('.gw-good', 'color'), of('.gw-value', 'fill'), probe.backgroundColor, of('.gw-hull', 'fill')];
            }
            """);

        Assert.All(colours[1..4], colour => Assert.Equal(colours[0], colour));
        Assert.Equal(colours[4], colours[5]);
        await page.ScreenshotAsync(new() { Path = Path.Combine(AppContext.BaseDirectory, "pictures", "plans-360-forced.png"), FullPage = true });
        await page.Context.CloseAsync();
    }

    /// <summary>Whether a change of that attribute is a movement, once all that moved at the start has come to rest.</summary>
    private static Task<bool> MovesAsync(IPage page, string selector, string attribute, string value) => page.EvaluateAsync<bool>(
        """
        async ([selector, attribute, value]) => {
          await Promise.all(document.getAnimations().map(a => a.finished));
          const element = document.querySelector(selector);

          // Nothing moves from where it never stood: on a busy machine the page may not have been laid out yet.
          getComputedStyle(element)[attribute];
          element.setAttribute(attribute, value);
          getComputedStyle(element)[attribute];
          return element.getAnimations().length > 0;
        }
        """,
        new[] { selector, attribute, value });
}
