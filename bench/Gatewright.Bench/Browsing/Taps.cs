using System.Text.Json;
using Microsoft.Playwright;

namespace Gatewright.Bench.Browsing;

/// <summary>Readings tapped in as on a round, one boat after the other.</summary>
internal static class Taps
{
    // A person looks at the gauge between two taps, sometimes longer than the program waits before it works out the rest.
    private const int ShortestPause = 400;
    private const int LongestPause = 2600;

    // Whoever asks the page something takes its time: while it answers a tap, and where the next is about to come, nobody does.
    private static readonly TimeSpan Undisturbed = TimeSpan.FromMilliseconds(250);

    // So long a finger rests on the glass at a quick tap, from memory. Let go of at once, as no finger does, the browser would still be busy
    // with its coming when the answer to its leaving is waited for.
    private static readonly TimeSpan Rests = TimeSpan.FromMilliseconds(80);

    // What takes longer is no slow answer but none.
    private const float LongestAnswer = 30_000;

    // So long somebody looks for the boats that they are going to read, at the least.
    private static readonly TimeSpan Choosing = TimeSpan.FromSeconds(2);

    /// <summary>Looks at the boats that may be read, begins with one, and taps.</summary>
    /// <returns>Milliseconds from when the finger left to the painted verdict, of each tap, in order of size.</returns>
    public static async Task<IReadOnlyList<double>> OfAsync(Phone phone, int atLeast)
    {
        var chance = new Random(5);
        IPage page = phone.Page;
        await page.EvaluateAsync("() => { measured.taps = []; Blazor.navigateTo('round'); }");
        await page.Locator("#begin").WaitForAsync();
        await Task.Delay(Choosing);
        for (int boat = 7, taps = 0; taps < atLeast; boat++)
        {
            await page.EvaluateAsync($"() => Blazor.navigateTo('round?boat=boat-{boat}')");
            ILocator value = page.Locator("#pad .value");

            // Asked of the page itself: whoever drives the browser now and then hears nothing of an address put in another's place.
            await page.WaitForFunctionAsync(
                "boat => location.pathname.endsWith('/' + boat) && document.querySelector('.head')?.textContent.includes(boat) && document.querySelector('#pad .value')", $"boat-{boat}");
            while (await value.CountAsync() > 0)
            {
                string degrees = chance.Next(7, 10) is var halves && halves % 2 == 0 ? $"{halves / 2}.0" : $"{halves / 2}.5";
                LocatorBoundingBoxResult box = (await page.Locator($"#pad .value[data-value='{degrees}']").BoundingBoxAsync())!;
                await Task.Delay(TimeSpan.FromMilliseconds(chance.Next(ShortestPause, LongestPause)) - Undisturbed);
                await TapAsync(phone.Session, box.X + (box.Width / 2), box.Y + (box.Height / 2));
                await Task.Delay(Undisturbed);
                taps++;
                await AnsweredAsync(page, taps, $"boat {boat}, {degrees}");
            }
        }

        JsonElement all = JsonElement.Parse(await page.EvaluateAsync<string>("() => JSON.stringify(measured.taps)"));
        if (all.EnumerateArray().FirstOrDefault(t => !t.GetProperty("isTold").GetBoolean()) is { ValueKind: not JsonValueKind.Undefined })
        {
            throw new InvalidOperationException("A tap was answered without a verdict.");
        }

        return [.. all.EnumerateArray().Select(t => t.GetProperty("ms").GetDouble()).Order()];
    }

    private static async Task TapAsync(ICDPSession browser, float x, float y)
    {
        await TouchAsync("touchStart", new Dictionary<string, object> { ["x"] = x, ["y"] = y });
        await Task.Delay(Rests);
        await TouchAsync("touchEnd");

        Task TouchAsync(string type, params object[] points) =>
            browser.SendAsync("Input.dispatchTouchEvent", new() { ["type"] = type, ["touchPoints"] = points });
    }

    private static async Task AnsweredAsync(IPage page, int taps, string what)
    {
        try
        {
            await page.WaitForFunctionAsync("n => measured.taps.length >= n", taps, new() { Timeout = LongestAnswer });
        }
        catch (TimeoutException)
        {
            string shown = await page.Locator("#app").InnerTextAsync();
            throw new InvalidOperationException($"Tap {taps} ({what}) was never answered. The page said: {shown}");
        }
    }
}
