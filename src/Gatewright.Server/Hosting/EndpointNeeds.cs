using Gatewright.Server.Members;

namespace Gatewright.Server.Hosting;

/// <summary>Says on a route what it asks for.</summary>
internal static class EndpointNeeds
{
    /// <summary>A right in the club that the route names.</summary>
    public static RouteHandlerBuilder Needs(this RouteHandlerBuilder route, ClubRight right) =>
        route.RequireAuthorization(right.Policy())
            .ProducesProblem(StatusCodes.Status401Unauthorized)
            .ProducesProblem(StatusCodes.Status403Forbidden)
            .ProducesProblem(StatusCodes.Status404NotFound);
}
