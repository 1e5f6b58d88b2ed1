using Gatewright.Server.Problems;
using Microsoft.AspNetCore.Antiforgery;

namespace Gatewright.Server.Hosting;

/// <summary>
/// Asks every request to the API that changes something for the token of the page it comes from: a page of another site
/// can make a browser send its cookies, and cannot read the token.
/// </summary>
internal sealed class TokenCheck(IAntiforgery antiforgery) : IEndpointFilter
{
    /// <summary>The header the token is sent in.</summary>
    public const string Header = "X-Gatewright-Token";

    /// <inheritdoc/>
    public async ValueTask<object?> InvokeAsync(EndpointFilterInvocationContext context, EndpointFilterDelegate next)
    {
        string method = context.HttpContext.Request.Method;
        bool changes = !HttpMethods.IsGet(method) && !HttpMethods.IsHead(method) && !HttpMethods.IsOptions(method);
        return changes && !await antiforgery.IsRequestValidAsync(context.HttpContext).ConfigureAwait(false)
            ? Problem.Of(
                StatusCodes.Status400BadRequest,
                "The token is missing or stale",
                $"Ask GET /api/session for a token and send it in the header {Header}, with the cookies that came with it.")
            : await next(context).ConfigureAwait(false);
    }
}
