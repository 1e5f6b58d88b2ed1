using Gatewright.Printing.Faces;
using Gatewright.Server.Problems;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Gatewright.Server.Printing;

/// <summary>Prints one document at a time, whoever asks: what waits holds no thread. Nothing of it is loaded before somebody asks.</summary>
internal sealed class PrintRoom : IDisposable
{
    private readonly SemaphoreSlim _one = new(1);

    /// <summary>Prints, and answers with the document.</summary>
    /// <param name="context">The request.</param>
    /// <param name="name">What a browser calls the file.</param>
    /// <param name="print">Makes it.</param>
    public async Task<Results<FileContentHttpResult, ProblemHttpResult>> AnswerAsync(HttpContext context, string name, Func<byte[]> print)
    {
        await _one.WaitAsync(context.RequestAborted).ConfigureAwait(false);
        try
        {
            byte[] document = await Task.Run(print, context.RequestAborted).ConfigureAwait(false);
            context.Response.Headers.ContentDisposition = $"inline; filename=\"{name}.pdf\"";
            return TypedResults.File(document, "application/pdf");
        }
        catch (MissingFaceException)
        {
            return Problem.Of(
                StatusCodes.Status503ServiceUnavailable,
                "No typeface",
                "The server has no typeface to print with. Whoever looks after it installs one: on Debian, apt-get install fonts-dejavu-core.");
        }
        finally
        {
            _one.Release();
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _one.Dispose();
}
