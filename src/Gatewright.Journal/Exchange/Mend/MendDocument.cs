using System.Text.Json.Serialization;
using Gatewright.Journal.Exchange.Check;

namespace Gatewright.Journal.Exchange.Mend;

/// <summary>A plan for programs; docs/mend-format.md describes it.</summary>
/// <remarks>The records of this file are the format: a property here is a key there, and a key is never left out.</remarks>
/// <param name="Format">Always <see cref="Name"/>.</param>
/// <param name="Standard">The limits the boats were judged by.</param>
/// <param name="Stores">What lies on the shelf; null when nobody said.</param>
/// <param name="Boats">Every boat, the most urgent first.</param>
/// <param name="TakeAlong">The parts for today.</param>
/// <param name="Shopping">What to buy.</param>
/// <param name="Totals">The plan in figures.</param>
/// <param name="Aims">How well each aim of today's plan was met.</param>
/// <param name="ShoppingAims">The same of the plan after buying.</param>
/// <param name="Warnings">What was odd about the input.</param>
public sealed record MendDocument(
    string Format,
    CheckedStandard Standard,
    IReadOnlyList<PlannedSupply>? Stores,
    IReadOnlyList<PlannedBoatDocument> Boats,
    IReadOnlyList<PlannedSupply> TakeAlong,
    IReadOnlyList<PlannedSupply> Shopping,
    PlannedTotals Totals,
    IReadOnlyList<PlannedAim> Aims,
    IReadOnlyList<PlannedAim> ShoppingAims,
    IReadOnlyList<CheckedProblem> Warnings)
{
    /// <summary>The format's name and version.</summary>
    public const string Name = "gatewright.mend/1";
}

/// <summary>So many of a part.</summary>
/// <param name="Part"><c>insert</c>, <c>shim</c>, <c>washer</c> or <c>pin</c>.</param>
/// <param name="Size">Degrees for an insert, millimetres for a shim or washer, 0 for a pin.</param>
/// <param name="Count">How many.</param>
public sealed record PlannedSupply(string Part, double Size, int Count);

/// <summary>One boat.</summary>
/// <param name="Boat">Its name.</param>
/// <param name="BoatClass">Its class; the key is <c>class</c>.</param>
/// <param name="Verdict">As it is now.</param>
/// <param name="StaysAshore">Whether it is to stay ashore until mended or read again.</param>
/// <param name="Outcome">What today's jobs make of it.</param>
/// <param name="ReadAgain">Why it is to be read again instead of being mended; null when it is not.</param>
/// <param name="Minutes">How long today's jobs take, roughly.</param>
/// <param name="Jobs">Today's jobs, from the bow.</param>
/// <param name="GatesToReadAgain">Gates of a boat that is mended which are to be read again instead.</param>
/// <param name="AfterBuying">The jobs left for when the parts are there.</param>
/// <param name="OutcomeAfterBuying">What it is then.</param>
/// <param name="Next">What to read next, in words, where parts are not known to help; null for any other boat.</param>
public sealed record PlannedBoatDocument(
    string Boat,
    [property: JsonPropertyName("class")] string BoatClass,
    string Verdict,
    bool StaysAshore,
    string Outcome,
    string? ReadAgain,
    int Minutes,
    IReadOnlyList<PlannedJob> Jobs,
    IReadOnlyList<CheckedGate> GatesToReadAgain,
    IReadOnlyList<PlannedJob> AfterBuying,
    string OutcomeAfterBuying,
    string? Next);

/// <summary>A job at one gate.</summary>
/// <param name="Seat">The seat, 1 is bow.</param>
/// <param name="Side"><c>port</c> or <c>starboard</c>.</param>
/// <param name="Verdict">The gate's, as it is now.</param>
/// <param name="Steps">What is done, in order, as codes of remedies.</param>
/// <param name="Instruction">The same in words.</param>
/// <param name="Parts">What it takes from stores.</param>
/// <param name="Minutes">How long it takes, roughly.</param>
/// <param name="Cautions">What to mind while doing it.</param>
/// <param name="MakesUpFor">The likely cause that it makes up for instead of setting it right; null when it does set it right.</param>
/// <param name="ForRange">Whether the gate is good by itself and moved for the boat's range.</param>
/// <param name="ProbablySound">Whether probably nothing is wrong with the gate.</param>
/// <param name="Expected">What the gauge should show afterwards.</param>
public sealed record PlannedJob(
    int Seat,
    string Side,
    string Verdict,
    IReadOnlyList<string> Steps,
    string Instruction,
    IReadOnlyList<CheckedSupply> Parts,
    int Minutes,
    IReadOnlyList<string> Cautions,
    string? MakesUpFor,
    bool ForRange,
    bool ProbablySound,
    IReadOnlyList<CheckedExpectation> Expected);

/// <summary>The plan in figures.</summary>
/// <param name="Boats">How many boats there are.</param>
/// <param name="Good">Of these, good as they were read.</param>
/// <param name="Mended">Inside their standard after today's jobs.</param>
/// <param name="AboveFloors">Clear of their floors after today's jobs, not inside.</param>
/// <param name="Left">Not brought inside today.</param>
/// <param name="ReadAgain">To be read again first.</param>
/// <param name="MendedAfterBuying">Inside their standard when the parts have been bought and fitted, today's included.</param>
/// <param name="Parts">Parts taken from the shelf today.</param>
/// <param name="Minutes">Minutes of work today.</param>
/// <param name="Proven">Whether it is proven that no plan is better.</param>
public sealed record PlannedTotals(
    int Boats, int Good, int Mended, int AboveFloors, int Left, int ReadAgain, int MendedAfterBuying, int Parts, int Minutes, bool Proven);

/// <summary>How well an aim was met.</summary>
/// <param name="Aim">Its code.</param>
/// <param name="Value">What was reached.</param>
/// <param name="Bound">What is proven that no plan can better, the aims before it being met as they are.</param>
public sealed record PlannedAim(string Aim, long Value, long Bound);
