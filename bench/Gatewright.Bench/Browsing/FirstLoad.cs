using Microsoft.Playwright;

namespace Gatewright.Bench.Browsing;

/// <summary>A program called for the first time on a new phone.</summary>
/// <param name="Times">How it started.</param>
/// <param name="Wire">Megabytes that the server sent until nothing more was wanted, headers and all.</param>
/// <param name="Page">Megabytes of it that the browser counts for the page itself.</param>
internal sealed record FirstLoad(StartTimes Times, double Wire, double Page)
{
    private static readonly TimeSpan Quiet = TimeSpan.FromSeconds(2);

    public static async Task<FirstLoad> OfAsync(IPlaywright playwright, string folder, Relay relay, Uri address, bool hasWorker)
    {
        await using Phone phone = await Phone.OpenAsync(playwright, folder);
        long before = relay.Sent;
        double page = 0;
        phone.Session.Event("Network.loadingFinished").OnEvent += (_, told) =>
            page += told?.GetProperty("encodedDataLength").GetDouble() ?? 0;
        await phone.Session.SendAsync("Network.enable");
        StartTimes times = await StartTimes.OfAsync(phone, address);
        if (hasWorker)
        {
            await phone.Page.EvaluateAsync("async () => { await navigator.serviceWorker.ready; }");
        }

        long sent;
        do
        {
            sent = relay.Sent;
            await Task.Delay(Quiet);
        }
        while (relay.Sent != sent);
        return new(times, (sent - before) / 1e6, page / 1e6);
    }
}
