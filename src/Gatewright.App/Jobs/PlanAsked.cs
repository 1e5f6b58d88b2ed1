using System.Net;
using Gatewright.App.Device;
using Gatewright.Journal.Exchange.Mend;
using Gatewright.Replica.Shelves;
using Gatewright.Words;

namespace Gatewright.App.Jobs;

/// <summary>The whole shed's plan, asked of the server, and the last one as this device keeps it.</summary>
/// <remarks>A solver makes it, which no browser runs: without the server there is only the last one.</remarks>
public sealed class PlanAsked(HttpClient http, ThisDevice device, ClubInHand inHand)
{
    private const string Kept = "plan";

    /// <summary>Whether there is a server that could make one: a club on this device alone has none.</summary>
    public bool HasServer => inHand.Held.Home != ClubHome.Device;

    /// <summary>The last plan that was asked for on this device; null for none.</summary>
    public ClubPlan? Last => device.Device.Of(inHand.Held.Club, Kept) is { Length: > 0 } text ? MendJson.Read(text) : null;

    /// <summary>Asks for a plan, and keeps it.</summary>
    /// <returns>The plan, or why there is none.</returns>
    public async Task<(ClubPlan? Plan, PlanDenied? Denied)> AskAsync(Language language, CancellationToken cancellation)
    {
        string club = inHand.Held.Club;
        try
        {
            using HttpResponseMessage answer = await http.GetAsync(
                new Uri($"api/clubs/{Uri.EscapeDataString(club)}/plan?language={language.Tag}", UriKind.Relative), cancellation);
            if (!answer.IsSuccessStatusCode)
            {
                return (null, Why(answer.StatusCode));
            }

            string text = await answer.Content.ReadAsStringAsync(cancellation);
            if (MendJson.Read(text) is not { } plan)
            {
                return (null, PlanDenied.Failed);
            }

            await KeepAsync(club, text);
            return (plan, null);
        }
        catch (Exception cannot) when (cannot is HttpRequestException or TaskCanceledException)
        {
            return (null, PlanDenied.NotReached);
        }
    }

    private static PlanDenied Why(HttpStatusCode status) => status switch
    {
        HttpStatusCode.Unauthorized => PlanDenied.SignedOut,
        HttpStatusCode.Forbidden or HttpStatusCode.NotFound => PlanDenied.NotForYou,
        HttpStatusCode.TooManyRequests or HttpStatusCode.ServiceUnavailable => PlanDenied.Later,
        _ => PlanDenied.Failed,
    };

    private async Task KeepAsync(string club, string text)
    {
        try
        {
            await device.Device.SetAsync(club, Kept, text);
        }
        catch (ShelfException)
        {
            // The plan is on the screen all the same; the next start does without it.
        }
    }
}

/// <summary>Why the server gave no plan.</summary>
public enum PlanDenied
{
    /// <summary>It was not reached.</summary>
    NotReached,

    /// <summary>Nobody is signed in.</summary>
    SignedOut,

    /// <summary>Whoever is signed in does not see this club's journal.</summary>
    NotForYou,

    /// <summary>It was asked for too often, or has too much to do now.</summary>
    Later,

    /// <summary>Something went wrong there.</summary>
    Failed,
}
