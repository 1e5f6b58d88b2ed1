using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;

namespace Gatewright.Server.Problems;

/// <summary>What went wrong, as RFC 9457 has it: a status, a title, and what to do.</summary>
internal static class Problem
{
    /// <summary>Something about the request as a whole.</summary>
    public static ProblemHttpResult Of(int status, string title, string detail) =>
        TypedResults.Problem(new ProblemDetails { Status = status, Title = title, Detail = detail });

    /// <summary>Fields that were not as asked, all of them at once.</summary>
    public static ProblemHttpResult Fields(IReadOnlyDictionary<string, string[]> errors) =>
        TypedResults.Problem(new HttpValidationProblemDetails(new Dictionary<string, string[]>(errors))
        {
            Status = StatusCodes.Status400BadRequest,
            Title = "Not as asked",
            Detail = "Each field that needs another value is listed with what it takes.",
        });

    /// <summary>There is no such thing, or it is not for whoever asks: the two are not told apart.</summary>
    public static ProblemHttpResult NotFound(string what) => Of(
        StatusCodes.Status404NotFound, "Not found", $"There is no such {what} here, or it is not yours to see.");
}
