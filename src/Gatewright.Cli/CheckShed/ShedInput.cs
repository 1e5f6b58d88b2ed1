using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;
using Gatewright.Core.Checking;
using Gatewright.Core.Judging;
using Gatewright.Journal.Exchange;

namespace Gatewright.Cli.CheckShed;

/// <summary>Everything a check needs, or everything that is wrong with it.</summary>
/// <param name="Standard">What to judge by.</param>
/// <param name="Boats">The boats asked for.</param>
/// <param name="Errors">What is wrong.</param>
/// <param name="ErrorsBeyond">How many more errors there are.</param>
/// <param name="Warnings">What is odd.</param>
internal sealed record ShedInput(
    Standard Standard,
    IReadOnlyList<BoatRecord> Boats,
    IReadOnlyList<InputProblem> Errors,
    int ErrorsBeyond,
    IReadOnlyList<InputProblem> Warnings)
{
    /// <summary>Reads all there is before it gives up, so that a person mends everything in one go.</summary>
    public static ShedInput Read(CheckRequest request, Terminal terminal)
    {
        (Standard? standard, IReadOnlyList<InputProblem> wrongStandard, IReadOnlyList<InputProblem> oddStandard) =
            StandardChoice.Read(request.Standard);
        using OpenSources sources = OpenSources.Of(request.Files, terminal);
        ReadingsInput readings = ReadingsCsv.Read(sources.Readable, CheckSettings.Default.Diagnosing.Measuring);
        List<InputProblem> errors = [.. wrongStandard, .. sources.Errors, .. readings.Errors];
        IReadOnlyList<BoatRecord> boats = errors.Count == 0 ? BoatChoice.Of(readings.Records, request.Boats, errors) : [];
        IEnumerable<InputProblem> unread = readings.OnlyToldOf
            .Select(boat => NotJudged.Of(boat, "was told of and not read"));
        return new(
            standard ?? Standard.Club, boats, errors, readings.ErrorsBeyond, [.. oddStandard, .. readings.Warnings, .. unread]);
    }
}
