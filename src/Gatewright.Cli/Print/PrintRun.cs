using Gatewright.Cli.Clubs.Exporting;
using Gatewright.Cli.Clubs.Telling;
using Gatewright.Cli.Terminals;
using Gatewright.Journal.Exchange;
using Gatewright.Printing.Faces;

namespace Gatewright.Cli.Print;

/// <summary>Runs <c>gatewright print</c>: open the shed, make the document, write the file; or say all that is wrong and write nothing.</summary>
internal sealed class PrintRun(Terminal terminal)
{
    private const string So = "Nothing was printed.";

    public async Task<Answer> RunAsync(PrintRequest request, PrintWork work, CancellationToken cancellation)
    {
        var errors = new List<InputProblem>();
        NewFile? file = NewFile.TryAt(request.Output, request.Replace, errors);
        PrintedShed? shed = await PrintSource.OpenAsync(request, terminal, DateTimeOffset.UtcNow, errors, cancellation).ConfigureAwait(false);
        if (file is null || shed is null || Make(shed, work, errors) is not { } made)
        {
            return new Answer.Refused(errors, 0, So);
        }

        bool isWritten = await file.TryWriteAsync(to => to.WriteAsync(made.Content, cancellation).AsTask(), errors).ConfigureAwait(false);
        return isWritten
            ? new Answer.Done(ExitStatus.Good, [$"{made.What} in {request.Output}."], new PrintedDocument(work.Document, request.Output, made.Count))
            : new Answer.Refused(errors, 0, So);
    }

    private static PrintedWork? Make(PrintedShed shed, PrintWork work, List<InputProblem> errors)
    {
        try
        {
            return work.Make(shed, errors);
        }
        catch (MissingFaceException missing)
        {
            errors.Add(new("print", null, null, null, missing.Message));
            return null;
        }
    }
}
