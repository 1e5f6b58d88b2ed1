using Gatewright.Cli.Chances.ForPeople;
using Gatewright.Cli.Chances.ForPrograms;
using Gatewright.Cli.Chances.InWords;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Speaking;
using Gatewright.Cli.Terminals;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Exchange.JobsFiles;
using Gatewright.Journal.Learning;

namespace Gatewright.Cli.Chances;

/// <summary>Runs <c>gatewright chances</c>: read everything, then change the file, then tell; or say all that is wrong and change nothing.</summary>
internal sealed class ChancesRun(Terminal terminal)
{
    private const string NothingChanged = "Nothing was changed.";

    public int Show(ChancesRequest request)
    {
        var errors = new List<InputProblem>();
        ClubChances table = ChancesChoice.Read(request.File, errors);
        return errors.Count > 0
            ? InputErrors.Tell(errors, 0, request.Form, terminal, "Nothing was shown.")
            : Tell(new Told.Shown(request.File, table), request);
    }

    public int Learn(ChancesRequest request)
    {
        string file = request.File!;
        var errors = new List<InputProblem>();
        ClubChances before = ChancesChoice.Read(Path.Exists(file) ? file : null, errors);
        JobsInput jobs = ReadJobs(request.Jobs, before.Jobs, errors);
        errors.AddRange(jobs.Errors);
        ClubChances table = before with { Jobs = jobs.Jobs };
        if (errors.Count == 0)
        {
            TableFile.TryWrite(file, table, errors);
        }

        return errors.Count > 0
            ? InputErrors.Tell(errors, jobs.ErrorsBeyond, request.Form, terminal, NothingChanged)
            : Tell(new Told.Learnt(file, table, before, jobs.Added, jobs.Again, jobs.Warnings), request);
    }

    public int Reset(ChancesRequest request)
    {
        string file = request.File!;
        var errors = new List<InputProblem>();
        ClubChances before = ChancesChoice.Read(file, errors);
        string? copy = errors.Count == 0 ? TableFile.TryKeep(file, errors) : null;
        if (copy is not null)
        {
            TableFile.TryWrite(file, ClubChances.Default, errors);
        }

        return errors.Count > 0
            ? InputErrors.Tell(errors, 0, request.Form, terminal, NothingChanged)
            : Tell(new Told.Reset(file, before, copy!), request);
    }

    private static JobsInput ReadJobs(IReadOnlyList<string> files, JobRecord known, List<InputProblem> errors)
    {
        var sources = new List<ReadingsSource>();
        try
        {
            foreach (string file in files.Distinct())
            {
                if (InputFile.TryOpen(file, errors) is { } content)
                {
                    sources.Add(new(file, content));
                }
            }

            return JobsCsv.Read(sources, known);
        }
        finally
        {
            sources.ForEach(source => source.Content.Dispose());
        }
    }

    private int Tell(Told told, ChancesRequest request)
    {
        new FormTeller(terminal, request.Form, request.Width).Tell(
            () => ToldJson.Of(told),
            () => ChancesStatements.Of(told),
            width => ChancesPage.Of(told, width),
            ChancesPage.LeastWidth);

        return ExitStatus.Good;
    }
}
