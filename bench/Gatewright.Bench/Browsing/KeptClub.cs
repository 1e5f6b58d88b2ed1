using Microsoft.Playwright;

namespace Gatewright.Bench.Browsing;

/// <summary>A club pulled to a phone, as a member's phone has it.</summary>
internal static class KeptClub
{
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

    /// <summary>Signs in, and waits until all is there. The processor is not slowed meanwhile.</summary>
    public static async Task PullAsync(IPlaywright playwright, string folder, Uri app, string cookies)
    {
        await using Phone phone = await Phone.OpenAsync(playwright, folder, isSlowed: false);
        await phone.SignInAsync(app, cookies);
        await phone.Page.GotoAsync(app.ToString());
        await phone.Page.EvaluateAsync("async () => { await navigator.serviceWorker.ready; }");
        await phone.Page.Locator(".boat-link").First.WaitForAsync();
        while (!await phone.Page.EvaluateAsync<bool>(IsKept))
        {
            await Task.Delay(500);
        }
    }
}
