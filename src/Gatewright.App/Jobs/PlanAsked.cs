using Gatewright.App.Device;
using Gatewright.Journal.Exchange.Mend;
using Gatewright.Replica.Shelves;
using Gatewright.Words;

namespace Gatewright.App.Jobs;

/// <summary>The whole shed's plan, asked of the server, and the last one as this device keeps it.</summary>
/// <remarks>A solver makes it, which no browser runs: without the server there is only the last one.</remarks>
public sealed class PlanAsked(HttpClient http, ThisDevice device, ClubInHand inHand)
{
    private string Kept => "plan:" + inHand.Held.Club;

    /// <summary>Whether there is a server that could make one: a club on this device alone has none.</summary>
    public bool HasServer => inHand.Held.Home != ClubHome.Device;

    /// <summary>The last plan that was asked for on this device; null for none.</summary>
    public ClubPlan? Last => device.Device.Settings.GetValueOrDefault(Kept) is { Length: > 0 } text ? MendJson.Read(text) : null;

    /// <summary>Asks for a plan, and keeps it.</summary>
    /// <returns>The plan; null when the server was not reached or would not.</returns>
    public async Task<ClubPlan?> AskAsync(Language language, CancellationToken cancellation)
    {
        try
        {
            string text = await http.GetStringAsync(
                new Uri($"api/clubs/{Uri.EscapeDataString(inHand.Held.Club)}/plan?language={language.Tag}", UriKind.Relative), cancellation);
            if (MendJson.Read(text) is not { } plan)
            {
                return null;
            }

            await device.Device.SetAsync(Kept, text);
            return plan;
        }
        catch (Exception cannot) when (cannot is HttpRequestException or TaskCanceledException or ShelfException)
        {
            return null;
        }
    }
}
