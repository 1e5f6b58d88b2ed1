using System.Text.Json.Serialization;
using Gatewright.Core;
using Gatewright.Core.Diagnosing;

namespace Gatewright.Journal.Facts;

/// <summary>A piece of mending was planned.</summary>
/// <param name="Job">Its key.</param>
/// <param name="Boat">The boat.</param>
/// <param name="Cause">The cause it is to mend.</param>
/// <param name="Remedy">The remedy's code.</param>
/// <param name="Steps">What to do, step by step.</param>
/// <param name="Parts">What it takes from stores.</param>
/// <param name="Expected">What the gauge should show after it.</param>
/// <param name="Seat">The seat; null where the whole boat is meant.</param>
/// <param name="Side">The side; null where the whole boat is meant.</param>
/// <param name="OtherSeat">The seat of the second of two gates whose riggers are exchanged; null of other work, and in older entries.</param>
/// <param name="OtherSide">Its side.</param>
public sealed record JobPlanned(
    string Job,
    string Boat,
    Cause Cause,
    string Remedy,
    IReadOnlyList<string> Steps,
    IReadOnlyList<PartUsed> Parts,
    IReadOnlyList<ExpectedAt> Expected,
    int? Seat = null,
    Side? Side = null,
    int? OtherSeat = null,
    Side? OtherSide = null) : Fact;

/// <summary>A part that a job takes.</summary>
/// <param name="Part">The part's kind: insert, shim, washer, pin.</param>
/// <param name="Size">Degrees or millimetres.</param>
/// <param name="Count">How many.</param>
public sealed record PartUsed(string Part, decimal Size, int Count);

/// <summary>What the gauge should show at a station after a job.</summary>
/// <param name="Station">The station.</param>
/// <param name="Value">Degrees.</param>
/// <param name="From">The low end of the band.</param>
/// <param name="To">Its high end.</param>
public sealed record ExpectedAt(Station Station, decimal Value, decimal From, decimal To);

/// <summary>A step of a job was done.</summary>
/// <param name="Job">The job.</param>
/// <param name="Step">Which step, from 0.</param>
public sealed record StepDone(string Job, int Step) : Fact;

/// <summary>A job was finished.</summary>
/// <param name="Job">The job.</param>
/// <param name="Found">The cause that was found; null when none was.</param>
/// <param name="Also">What else was found wrong with the same thing; null for nothing.</param>
public sealed record JobDone(string Job, Cause? Found = null, IReadOnlyList<Cause>? Also = null) : Fact
{
    /// <summary>A job that was finished with these found, the weightiest first.</summary>
    public static JobDone Of(string job, IReadOnlyList<Cause> found)
    {
        ArgumentNullException.ThrowIfNull(found);
        return new(job, found.Count == 0 ? null : found[0], found.Count > 1 ? [.. found.Skip(1)] : null);
    }

    /// <summary>All that was found, each once.</summary>
    [JsonIgnore]
    public IReadOnlyList<Cause> All => Found is { } first ? [.. new[] { first }.Concat(Also ?? []).Distinct()] : [];
}

/// <summary>A gate was mended without a job planned here: told of, or read from a file. What was wrong is not known.</summary>
/// <param name="Boat">The boat.</param>
/// <param name="Seat">The seat.</param>
/// <param name="Side">The side.</param>
/// <param name="Date">The day, where it is not the day on which this was recorded.</param>
public sealed record GateMended(string Boat, int Seat, Side Side, DateOnly? Date = null) : Fact;

/// <summary>A job was given up.</summary>
/// <param name="Job">The job.</param>
/// <param name="Reason">Why.</param>
public sealed record JobDropped(string Job, string? Reason = null) : Fact;
