using Gatewright.Journal.Exchange.Mend;
using Gatewright.Server.Boats;
using Gatewright.Server.Hosting;
using Gatewright.Server.Members;
using Gatewright.Words;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Gatewright.Server.Planning;

/// <summary>The plan for a whole shed: who gets which part.</summary>
internal static class PlanEndpoints
{
    /// <summary>Adds it to the routes of a club.</summary>
    public static void MapPlan(this RouteGroupBuilder club) => club.MapGet("/plan", PlanAsync)
        .Produces<ClubPlan>()
        .Needs(ClubRight.ReadJournal)
        .WithSummary("What to mend in the whole shed with what lies on the club's shelf, and what to buy: keys of boats beside a gatewright.mend/1. The query's language is en or de.");

    private static async Task<ContentHttpResult> PlanAsync(HttpContext context, OpenClubs clubs, ClubPlans plans, string? language = null)
    {
        OpenClub open = await clubs.OpenAsync(ClubAccess.Of(context).Club, context.RequestAborted).ConfigureAwait(false);
        ClubPlan plan = await plans.OfAsync(open, Wording.In(Language.Of(language)), context.RequestAborted).ConfigureAwait(false);
        return TypedResults.Content(MendJson.Text(plan), "application/json");
    }
}
