using Gatewright.Core.Checking;
using Gatewright.Core.Measuring;

namespace Gatewright.Journal.Exchange;

/// <summary>What was read from one or several files, or everything that is wrong with them: never a part of both.</summary>
/// <param name="Boats">The boats in order of first appearance; empty when there are errors.</param>
/// <param name="Errors">What has to be mended first, in the order of files and lines; at most 1,000.</param>
/// <param name="Warnings">What was understood but looks unmeant; at most 1,000.</param>
/// <param name="ErrorsBeyond">How many more errors there are than <paramref name="Errors"/> holds.</param>
public sealed record ReadingsInput(
    IReadOnlyList<BoatReadings> Boats,
    IReadOnlyList<InputProblem> Errors,
    IReadOnlyList<InputProblem> Warnings,
    int ErrorsBeyond)
{
    /// <summary>What people wrote beside their readings, in the order of the rows; empty when there are errors.</summary>
    public IReadOnlyList<ReadingNote> Notes { get; init; } = [];

    /// <summary>The boats with what was told of them, in the order of <see cref="Boats"/>.</summary>
    public IReadOnlyList<BoatRecord> Records { get; init; } = [];

    /// <summary>All boats with all that was told of them, in order of first appearance; empty when there are errors.</summary>
    public IReadOnlyList<BoatTold> Told { get; init; } = [];

    /// <summary>Every level of every rack, whether a boat lay on it or not; empty when there are errors.</summary>
    public IReadOnlyList<Rack> Racks { get; init; } = [];

    /// <summary>The boats of whose rig something was measured, in order of first appearance; empty when there are errors.</summary>
    public IReadOnlyList<BoatMeasures> Measures { get; init; } = [];

    /// <summary>Boats of which something was told and nothing read.</summary>
    public IReadOnlyList<string> OnlyToldOf { get; init; } = [];
}
