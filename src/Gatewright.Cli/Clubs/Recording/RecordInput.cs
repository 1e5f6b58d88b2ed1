using Gatewright.Cli.CheckShed;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;
using Gatewright.Core.Checking;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Exchange.OarsFiles;
using Gatewright.Journal.Exchange.StoresFiles;

namespace Gatewright.Cli.Clubs.Recording;

/// <summary>The files to record, or everything that is wrong with them.</summary>
/// <param name="Readings">The readings; null where there are none to record.</param>
/// <param name="Stores">The shelf; null where it was not counted.</param>
/// <param name="Oars">The oars; null where none were given.</param>
/// <param name="Errors">What is wrong.</param>
/// <param name="ErrorsBeyond">How many more errors there are.</param>
internal sealed record RecordInput(
    ReadingsInput? Readings, StoresInput? Stores, OarsInput? Oars, IReadOnlyList<InputProblem> Errors, int ErrorsBeyond)
{
    /// <summary>What is odd.</summary>
    public IReadOnlyList<InputProblem> Warnings => [.. Readings?.Warnings ?? [], .. Stores?.Warnings ?? [], .. Oars?.Warnings ?? []];

    /// <summary>Files given together are one, as <c>gatewright check</c> takes them.</summary>
    public static RecordInput Read(RecordRequest request, Terminal terminal)
    {
        var errors = new List<InputProblem>();
        ReadingsInput? readings = request.Files.Count > 0 || (request.Stores is null && request.Oars is null) ? ReadReadings(request.Files, terminal, errors) : null;
        StoresInput? stores = request.Stores is { } file ? StoresFile.Read(file, errors) : null;
        OarsInput? oars = request.Oars is { } table ? OarsFile.Read(table, errors) : null;
        return new(readings, stores, oars, errors, (readings?.ErrorsBeyond ?? 0) + (stores?.ErrorsBeyond ?? 0) + (oars?.ErrorsBeyond ?? 0));
    }

    private static ReadingsInput ReadReadings(IReadOnlyList<string> files, Terminal terminal, List<InputProblem> errors)
    {
        using OpenSources sources = OpenSources.Of(files, "gatewright record", terminal);
        ReadingsInput readings = ReadingsCsv.Read(sources.Readable, CheckSettings.Default.Diagnosing.Measuring);
        errors.AddRange([.. sources.Errors, .. readings.Errors]);
        return readings;
    }
}
