using Gatewright.Bench.Serving;
using Gatewright.Store;
using Microsoft.Playwright;

namespace Gatewright.Bench.Browsing;

/// <summary>A club of 60 boats and many years on a server, and phones that hold it.</summary>
internal sealed class LargeClub : IAsyncDisposable
{
    public const int Entries = 50_000;

    /// <summary>Whether the shed was drawn to its end and what was pulled is kept in a form that opens quickly.</summary>
    private const string IsKept = """
        () => new Promise(answer => {
          if (!localStorage.getItem('gatewright.last-shed')) {
            answer(false);
            return;
          }

          const opening = indexedDB.open('gatewright');
          opening.onsuccess = () => {
            const counting = opening.result.transaction('snapshots').objectStore('snapshots').count();
            counting.onsuccess = () => { opening.result.close(); answer(counting.result > 0); };
          };
        })
        """;

    private readonly RunningServer _server;
    private readonly string _cookies;

    private LargeClub(RunningServer server, string cookies)
    {
        (_server, _cookies) = (server, cookies);
        Relay = new(server.Address);
        App = new(Relay.Address, "/app/");
    }

    /// <summary>What stands before the server.</summary>
    public Relay Relay { get; }

    /// <summary>Where the app is.</summary>
    public Uri App { get; }

    public static async Task<LargeClub> MakeAsync(Folders folders)
    {
        var location = StoreLocation.File(Path.Combine(folders.New(), "gatewright.db"));
        ServedJournal journal = await ServedJournal.MakeAsync(location, Entries);
        return new(RunningServer.Over(location), journal.Cookies);
    }

    /// <summary>Signs in on a new phone, and waits until it holds the whole club. Its processor is not slowed meanwhile.</summary>
    /// <returns>What the phone keeps.</returns>
    public async Task<string> PullAsync(IPlaywright playwright, Folders folders)
    {
        string folder = folders.New();
        await using Phone phone = await Phone.OpenAsync(playwright, folder, isSlowed: false);
        await phone.SignInAsync(App, _cookies);
        await phone.Page.GotoAsync(App.ToString());
        await phone.Page.EvaluateAsync("async () => { await navigator.serviceWorker.ready; }");
        await phone.Page.Locator(".boat-link").First.WaitForAsync();
        while (!await phone.Page.EvaluateAsync<bool>(IsKept))
        {
            await Task.Delay(500);
        }

        return folder;
    }

    public async ValueTask DisposeAsync()
    {
        await Relay.DisposeAsync();
        _server.Dispose();
    }
}
