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
    /// <param name="files">Files of readings; "-" is standard input.</param>
    /// <param name="standard">A built-in standard's name, or a file.</param>
    /// <param name="boats">Names of the boats asked for; none means all.</param>
    /// <param name="terminal">Where standard input is.</param>
    public static ShedInput Read(
        IReadOnlyList<string> files, string standard, IReadOnlyList<string> boats, Terminal terminal)
    {
        (Standard? chosen, IReadOnlyList<InputProblem> wrongStandard, IReadOnlyList<InputProblem> oddStandard) =
            StandardChoice.Read(standard);
        using OpenSources sources = OpenSources.Of(files, terminal);
        ReadingsInput readings = ReadingsCsv.Read(sources.Readable, CheckSettings.Default.Diagnosing.Measuring);
        List<InputProblem> errors = [.. wrongStandard, .. sources.Errors, .. readings.Errors];
        IReadOnlyList<BoatRecord> read = errors.Count == 0 ? BoatChoice.Of(readings.Records, "--boat", boats, errors) : [];
        IEnumerable<InputProblem> unread = readings.OnlyToldOf
            .Select(boat => NotJudged.Of(boat, "was told of and not read"));
        return new(
            chosen ?? Standard.Club, read, errors, readings.ErrorsBeyond, [.. oddStandard, .. readings.Warnings, .. unread]);
    }
}
