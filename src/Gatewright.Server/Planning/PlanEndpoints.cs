using Gatewright.Journal.Exchange.Mend;
using Gatewright.Server.Boats;
using Gatewright.Server.Hosting;
using Gatewright.Server.Members;
using Gatewright.Server.Problems;
using Gatewright.Words;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Gatewright.Server.Planning;

/// <summary>The plan for a whole shed: who gets which part.</summary>
internal static class PlanEndpoints
{
    /// <summary>Adds it to the routes of a club.</summary>
    public static void MapPlan(this RouteGroupBuilder club) => club.MapGet("/plan", PlanAsync)
        .Produces<ClubPlan>()
        .ProducesProblem(StatusCodes.Status429TooManyRequests)
        .ProducesProblem(StatusCodes.Status503ServiceUnavailable)
        .Needs(ClubRight.ReadJournal)
        .WithSummary("What to mend in the whole shed with what lies on the club's shelf, and what to buy: keys of boats beside a gatewright.mend/1. The query's language is en or de.");

    private static async Task<Results<ContentHttpResult, ProblemHttpResult>> PlanAsync(HttpContext context, OpenClubs clubs, ClubPlans plans, string? language = null)
    {
        string club = ClubAccess.Of(context).Club;
        OpenClub open = await clubs.OpenAsync(club, context.RequestAborted).ConfigureAwait(false);
        try
        {
            ClubPlan plan = await plans.OfAsync(club, open, Wording.In(Language.Of(language)), context.RequestAborted).ConfigureAwait(false);
            return TypedResults.Content(MendJson.Text(plan), "application/json");
        }
        catch (PlanLaterException later)
        {
            RateLimits.TellWait(context.Response, later.Wait);
            return Problem.Of(later.Status, "Not now", later.Status == StatusCodes.Status429TooManyRequests
                ? "This club has asked for many plans: ask again in a moment. One that stands already is told at any time."
                : "The plans of other clubs are being worked out: ask again in a moment.");
        }
    }
}
