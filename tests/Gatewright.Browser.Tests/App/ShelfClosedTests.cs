using Microsoft.Playwright;

namespace Gatewright.Browser.Tests.App;

/// <summary>A device's shelf that was closed under the program is opened again, unless a newer program has it.</summary>
public sealed class ShelfClosedTests(Chromium chromium, DemoSite demo) : IClassFixture<DemoSite>
{
    // Where what is recorded is written in the page, the test can get at every connection there is.
    private const string InThePage = """
        globalThis.Worker = function () { throw new DOMException('not allowed', 'SecurityError'); };
        globalThis.shelves = [];
        const open = IDBFactory.prototype.open;
        IDBFactory.prototype.open = function (...of) {
          const request = open.apply(this, of);
          request.addEventListener('success', () => shelves.push(request.result));
          return request;
        };
        """;

    [Theory]
    [InlineData("the browser tells", "shelves.forEach(shelf => { shelf.close(); shelf.dispatchEvent(new Event('close')); })")]
    [InlineData("nobody was told yet", "shelves.forEach(shelf => shelf.close())")]
    public async Task What_the_browser_closed_is_opened_again_by_the_next_touch(string how, string close)
    {
        Assert.NotEmpty(how);
        await using Device phone = await Device.InShedAsync(demo.Site.Address, chromium);
        await phone.Page.AddInitScriptAsync(InThePage);
        await phone.Page.ReloadAsync();
        await phone.Page.BeginAsync("Bise");
        await phone.Page.TapAsync(4);

        await phone.Page.EvaluateAsync(close);
        await GoesOnAsync(phone);
    }

    /// <summary>The page and the thread that writes both let a newer program through; it then changes nothing, and both go on.</summary>
    [Fact]
    public async Task What_was_let_go_of_for_a_newer_program_that_did_not_come_is_opened_again()
    {
        await using Device phone = await Device.InShedAsync(demo.Site.Address, chromium);
        Task<IWorker> writer = phone.Page.WaitForWorkerAsync();
        await phone.Page.BeginAsync("Bise");
        await writer;
        await phone.Page.TapAsync(4);

        await phone.Page.EvaluateAsync("""
            new Promise(told => {
              const opening = indexedDB.open('gatewright', 2);
              opening.onupgradeneeded = () => opening.transaction.abort();
              opening.onerror = () => told();
            })
            """);
        await GoesOnAsync(phone);
    }

    [Fact]
    public async Task A_newer_program_that_has_it_is_told_and_nothing_is_taken_for_recorded()
    {
        await using Device phone = await Device.InShedAsync(demo.Site.Address, chromium);
        Task<IWorker> writer = phone.Page.WaitForWorkerAsync();
        await phone.Page.BeginAsync("Bise");
        await writer;
        await phone.Page.TapAsync(4);

        await phone.Page.EvaluateAsync("""
            new Promise(told => {
              const opening = indexedDB.open('gatewright', 2);
              opening.onsuccess = () => { opening.result.close(); told(); };
            })
            """);
        await phone.Page.Locator("#pad [data-value='3.5']").ClickAsync();

        await Assertions.Expect(phone.Page.GetByRole(AriaRole.Alert)).ToContainTextAsync("A newer program is open");
        await Assertions.Expect(phone.Page.Locator(".head")).ToContainTextAsync("1 of 8");
    }

    /// <summary>The next tap is recorded as the one before was.</summary>
    private static async Task GoesOnAsync(Device phone)
    {
        await phone.Page.TapAsync(3.5m);

        await phone.Page.ReloadAsync();
        await phone.Page.HeadedAsync("Bise");
        await Assertions.Expect(phone.Page.Locator(".head")).ToContainTextAsync("2 of 8");
        Assert.Empty(phone.Complaints);
    }
}
