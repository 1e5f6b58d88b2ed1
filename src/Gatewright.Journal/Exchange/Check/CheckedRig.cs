using System.Text.Json.Serialization;

namespace Gatewright.Journal.Exchange.Check;

/// <summary>The rig of a boat. Figures are in centimetres, of an angle in degrees.</summary>
/// <param name="Boat">Its name.</param>
/// <param name="BoatClass">Its class; the key is <c>class</c>.</param>
/// <param name="Crew">Who rows it, as a word; null where nobody has said.</param>
/// <param name="Verdict">That of its worst figure: <c>good</c>, <c>unsure</c> or <c>adjust</c>; null where nothing was measured.</param>
/// <param name="Figures">Every figure, measure by measure, then from the bow, port before starboard.</param>
/// <param name="Targets">What it was judged by.</param>
public sealed record CheckedRig(
    string Boat,
    [property: JsonPropertyName("class")] string BoatClass,
    string? Crew,
    string? Verdict,
    IReadOnlyList<CheckedFigure> Figures,
    IReadOnlyList<CheckedTarget> Targets);

/// <summary>One figure of a rig.</summary>
/// <param name="Measure">Which measure.</param>
/// <param name="Seat">The seat, 1 is bow.</param>
/// <param name="Side"><c>port</c> or <c>starboard</c>; null for a measure of the seat.</param>
/// <param name="Value">The figure.</param>
/// <param name="U">Its standard uncertainty.</param>
/// <param name="Readings">How many readings it is the mean of; 0 when it follows from others.</param>
/// <param name="Date">The day it was last taken; null when it is not known.</param>
/// <param name="From">
/// <c>taken</c> on the boat, read of an <c>oar</c> by itself, or <c>set</c> and not taken since; null when it follows from others.
/// </param>
/// <param name="Oar">The oar it was read of; null for none.</param>
/// <param name="Member">Who took it; null in a file, and where it is not said.</param>
/// <param name="Target">Its target; null where there is none.</param>
/// <param name="Verdict">The worst of its reasons, or <c>good</c>; null where there is nothing to judge it by.</param>
/// <param name="Reasons">Why it is not good, worst first.</param>
public sealed record CheckedFigure(
    string Measure,
    int Seat,
    string? Side,
    double Value,
    double U,
    int Readings,
    string? Date,
    string? From,
    string? Oar,
    string? Member,
    CheckedTarget? Target,
    string? Verdict,
    IReadOnlyList<CheckedRigReason> Reasons);

/// <summary>A target of the rig.</summary>
/// <param name="Measure">Of which measure.</param>
/// <param name="Of"><c>value</c>, <c>sides</c> (starboard less port) or <c>seats</c> (the range across the boat).</param>
/// <param name="Seat">The seat it is of; null for every seat.</param>
/// <param name="Side">The side it is of; null for both.</param>
/// <param name="Value">The value to set; of <c>seats</c> 0.</param>
/// <param name="Tolerance">How far off it is still good.</param>
/// <param name="Source"><c>survey</c>, <c>club-guides</c>, <c>ours</c>, <c>computed</c>, <c>club</c> or <c>boat</c>.</param>
public sealed record CheckedTarget(
    string Measure, string Of, int? Seat, string? Side, double Value, double Tolerance, string Source);

/// <summary>One ground for a verdict on a rig that is not good.</summary>
/// <param name="Kind"><c>below-limit</c>, <c>above-limit</c>, <c>sides</c>, <c>seats</c>, <c>repeats</c> or <c>not-taken-since</c>.</param>
/// <param name="Verdict">The verdict this ground gives by itself.</param>
/// <param name="Value">What is judged: a figure, or a difference of two.</param>
/// <param name="U">Its standard uncertainty.</param>
/// <param name="Limit">The limit that it misses.</param>
/// <param name="Probability">That the true value lies outside the limits.</param>
/// <param name="Other">The place at the other end of a difference; otherwise null.</param>
/// <param name="Sentence">The same in plain English.</param>
public sealed record CheckedRigReason(
    string Kind, string Verdict, double Value, double U, double Limit, double Probability, CheckedGate? Other, string Sentence);

/// <summary>The rigs of boats by themselves.</summary>
/// <param name="Format">Always <see cref="Name"/>.</param>
/// <param name="Rigs">The rigs, in the order in which the boats were given.</param>
/// <param name="Warnings">What was odd about the input.</param>
public sealed record RigDocument(string Format, IReadOnlyList<CheckedRig> Rigs, IReadOnlyList<CheckedProblem> Warnings)
{
    /// <summary>The format's name and version.</summary>
    public const string Name = "gatewright.rig/1";
}
