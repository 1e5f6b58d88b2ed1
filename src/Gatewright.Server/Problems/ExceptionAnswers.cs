using Microsoft.AspNetCore.Diagnostics;
using Microsoft.AspNetCore.Mvc;

namespace Gatewright.Server.Problems;

/// <summary>Turns what went wrong inside into an answer that helps: try again, or mend the request.</summary>
internal sealed class ExceptionAnswers(IProblemDetailsService problems) : IExceptionHandler
{
    private const int RetrySeconds = 2;

    /// <inheritdoc/>
    public async ValueTask<bool> TryHandleAsync(HttpContext httpContext, Exception exception, CancellationToken cancellationToken)
    {
        ProblemDetails answer = exception switch
        {
            _ when StoreTrouble.IsUnavailable(exception) => new()
            {
                Status = StatusCodes.Status503ServiceUnavailable,
                Title = "The store does not answer",
                Detail = "Nothing is lost: what was not acknowledged is to be sent again in a moment.",
            },
            BadHttpRequestException bad => new()
            {
                Status = bad.StatusCode,
                Title = bad.StatusCode == StatusCodes.Status413PayloadTooLarge ? "Too large" : "The request cannot be read",
                Detail = bad.StatusCode == StatusCodes.Status413PayloadTooLarge
                    ? "Send less at once."
                    : "The body is not what this address takes: see /openapi/v1.json.",
            },
            _ => new()
            {
                Status = StatusCodes.Status500InternalServerError,
                Title = "Something went wrong here",
                Detail = "It is on record in the server's log. Nothing that was acknowledged is lost; try again.",
            },
        };
        httpContext.Response.StatusCode = answer.Status!.Value;
        if (answer.Status == StatusCodes.Status503ServiceUnavailable)
        {
            httpContext.Response.Headers.RetryAfter = RetrySeconds.ToString(System.Globalization.CultureInfo.InvariantCulture);
        }

        return await problems.TryWriteAsync(new() { HttpContext = httpContext, ProblemDetails = answer }).ConfigureAwait(false);
    }
}
