using System.Text.Json;
using Microsoft.Playwright;

namespace Gatewright.Bench.Browsing;

/// <summary>A slider of the page "what a change does" pushed to and fro by a pointer, as a finger does.</summary>
internal static class Slides
{
    // Wide enough that each move sets the inboard to another millimetre, on a phone's screen and on a desk's.
    private const int Pixels = 5;

    /// <summary>From the event of the slider to the end of the frame in which other figures stand beside it.</summary>
    private const string Watch = """
        () => {
          const slides = globalThis.slides = [];
          const channel = new MessageChannel();
          const waiting = [];
          let began = null;
          channel.port1.onmessage = () => slides.push(performance.now() - waiting.shift());
          addEventListener('input', event => began ??= event.timeStamp, { capture: true });
          new MutationObserver(() => {
            if (began !== null) {
              const from = began;
              began = null;
              requestAnimationFrame(() => { waiting.push(from); channel.port2.postMessage(null); });
            }
          }).observe(document.querySelector('.lab .figures'), { childList: true, subtree: true, characterData: true });
        }
        """;

    /// <summary>Opens the page and pushes.</summary>
    /// <returns>Milliseconds from each move to its painted figures, in order of size.</returns>
    public static async Task<IReadOnlyList<double>> OfAsync(Phone phone, Uri app, int moves)
    {
        IPage page = phone.Page;
        await page.GotoAsync(app.ToString());
        await page.WaitForFunctionAsync("() => measured.listed !== null");
        await page.EvaluateAsync("() => Blazor.navigateTo('stroke')");
        ILocator slider = page.Locator("#inboard");
        await slider.WaitForAsync();
        await slider.ScrollIntoViewIfNeededAsync();
        LocatorBoundingBoxResult box = (await slider.BoundingBoxAsync())!;
        (float x, float y) = (box.X + (box.Width / 2), box.Y + (box.Height / 2));
        await page.Mouse.MoveAsync(x, y);
        await page.Mouse.DownAsync();

        // The first moves teach the program its way, as they do for a person.
        await PushAsync(page, x, y, 20);
        await page.EvaluateAsync(Watch);
        await PushAsync(page, x, y, moves);
        await page.Mouse.UpAsync();
        JsonElement all = JsonElement.Parse(await page.EvaluateAsync<string>("() => JSON.stringify(slides)"));
        return [.. all.EnumerateArray().Select(t => t.GetDouble()).Order()];
    }

    private static async Task PushAsync(IPage page, float x, float y, int moves)
    {
        for (int i = 1; i <= moves; i++)
        {
            // Ten moves up, ten down.
            await page.Mouse.MoveAsync(x + (Pixels * (i / 10 % 2 == 0 ? i % 10 : 10 - (i % 10))), y);
        }
    }
}
