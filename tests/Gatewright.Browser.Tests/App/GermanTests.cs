using System.Text.RegularExpressions;
using System.Xml.Linq;
using Microsoft.Playwright;

namespace Gatewright.Browser.Tests.App;

/// <summary>The app where the browser speaks German: nothing is left in English, and numbers have commas.</summary>
public sealed partial class GermanTests(Chromium chromium, DemoSite demo) : IClassFixture<DemoSite>
{
    private static readonly DeviceShape Phone = DeviceShape.Phone with { Locale = "de-DE" };

    [Fact]
    public async Task The_main_screens_speak_German_and_a_comma_is_taken()
    {
        await using Device phone = await Device.InShedAsync(demo.Site.Address, chromium, Phone);
        IPage page = phone.Page;
        Assert.Equal("de", await page.EvaluateAsync<string>("document.documentElement.lang"));
        HashSet<string> english = English();
        var left = new List<string>();

        await LookAsync("shed");
        await page.GetByRole(AriaRole.Link, new() { Name = "Nuthatch" }).First.ClickAsync();
        await page.HeadedAsync("Nuthatch");
        await LookAsync("boat");
        await page.Locator(".gw-place").First.ClickAsync();
        await page.HeadedAsync("1 ");
        await LookAsync("gate");
        await page.ShowAsync("job/new?boat=nuthatch&seat=2&side=starboard");
        await page.Locator("#plan").WaitForAsync();
        await LookAsync("job-new");
        await page.Locator("#plan").ClickAsync();
        await page.HeadedAsync("Nuthatch: ");
        await LookAsync("job");
        foreach (string place in (string[])["jobs", "report", "more", "round", "boats", "racks", "stores", "gauges", "standards", "people", "sharing", "settings", "explain"])
        {
            await page.ShowAsync(place);
            await LookAsync(place);
        }

        await page.ShowAsync("round?boat=snipe");
        await page.Locator("#pad").WaitForAsync();
        Assert.Equal("3,5", await page.Locator("#pad [data-value='3.5']").InnerTextAsync());
        string before = await page.NowAsync();
        await page.Locator("#typed").FillAsync("4,3");
        await page.Locator("#record-typed").ClickAsync();
        await Assertions.Expect(page.Locator(".now b")).Not.ToHaveTextAsync(before);
        await Assertions.Expect(page.Locator(".gw-plan svg text", new() { HasText = "4,3°" })).ToHaveCountAsync(1);
        await LookAsync("reading");
        await page.ReadAllAsync(_ => 4);
        await LookAsync("story");
        Assert.Empty(left);
        Assert.Empty(phone.Complaints);

        async Task LookAsync(string name)
        {
            await page.SettledAsync();
            await page.PictureAsync("german-" + name);
            Assert.Equal(string.Empty, await page.OverhangingAsync());
            string text = await page.EvaluateAsync<string>("document.body.innerText + '\\n' + [...document.querySelectorAll('[aria-label], [placeholder]')].map(e => (e.ariaLabel ?? '') + '\\n' + (e.placeholder ?? '')).join('\\n')");
            left.AddRange(text.Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
                .Where(line => english.Contains(line) || (EnglishWord().IsMatch(line) && !IsOfTheDemo(line)))
                .Select(line => $"{name}: {line}").Distinct());
        }
    }

    /// <summary>What people wrote stays in their language: the club's name, a note.</summary>
    private static bool IsOfTheDemo(string line) => line.Contains("The demo shed", StringComparison.Ordinal);

    /// <summary>All texts of the app that differ in the two languages and have no places to fill.</summary>
    private static HashSet<string> English()
    {
        HashSet<string> english = [], german = [];
        foreach (string file in Directory.EnumerateFiles(Path.Combine(AppSite.Root(), "src", "Gatewright.App"), "*.de.resx", SearchOption.AllDirectories))
        {
            german.UnionWith(Texts(file));
            english.UnionWith(Texts(file.Replace(".de.resx", ".resx", StringComparison.Ordinal)));
        }

        english.ExceptWith(german);
        english.RemoveWhere(t => t.Contains('{', StringComparison.Ordinal));
        Assert.NotEmpty(english);
        return english;
    }

    private static IEnumerable<string> Texts(string file) => XDocument.Load(file).Descendants("data").Select(d => d.Element("value")!.Value.Trim());

    // Words that no German sentence has and hardly an English one does without.
    [GeneratedRegex(@"\b(the|and|of|not|read|boat|with|is|are|this|yet|no|to)\b", RegexOptions.IgnoreCase)]
    private static partial Regex EnglishWord();
}
