using System.Text.Json.Serialization;

namespace Gatewright.Journal.Exchange.Check;

/// <summary>One boat.</summary>
/// <param name="Boat">Its name.</param>
/// <param name="BoatClass">Its class, such as <c>8+</c>; the key is <c>class</c>.</param>
/// <param name="Verdict">That of its worst gate among those read.</param>
/// <param name="StaysAshore">Whether it is to stay ashore until mended or read again: a verdict of `adjust` can hide such a doubt.</param>
/// <param name="Hull">How it probably lay in the lying with most readings.</param>
/// <param name="Lies">Every lying in which it was read.</param>
/// <param name="Seats">Every gate of which something was read, from the bow, port before starboard.</param>
/// <param name="Causes">Accounts of everything that may be wrong, most probable first: those of 0.01 and more, ten at most.</param>
/// <param name="Next">What to read next; null when the boat is good, or enough has been read.</param>
/// <param name="Remedies">What to do about what the whole boat shares: its level, a gauge.</param>
/// <param name="NotRead">The gates of which nothing was read: the verdict says nothing of them.</param>
/// <param name="Changed">The gates that were read, then changed, and not read since: the verdict says nothing of them either.</param>
public sealed record CheckedBoat(
    string Boat,
    [property: JsonPropertyName("class")] string BoatClass,
    string Verdict,
    bool StaysAshore,
    CheckedHull Hull,
    IReadOnlyList<CheckedLie> Lies,
    IReadOnlyList<CheckedSeat> Seats,
    IReadOnlyList<CheckedStory> Causes,
    CheckedNext? Next,
    IReadOnlyList<CheckedRemedy> Remedies,
    IReadOnlyList<CheckedGate> NotRead,
    IReadOnlyList<CheckedChange> Changed);

/// <summary>How a hull lies against plumb.</summary>
/// <param name="BowHigh">Rise to the bow.</param>
/// <param name="PortLow">Roll to port.</param>
public sealed record CheckedHull(Quantity BowHigh, Quantity PortLow);

/// <summary>One lying of a boat: what the readings taken in it say of its level.</summary>
/// <param name="Lie"><c>upright</c> or <c>inverted</c>.</param>
/// <param name="Date">The day, as <c>2026-03-14</c>; null when it is not known.</param>
/// <param name="Level">How the level was come by: <c>read</c>, <c>bubble-centred</c>, <c>by-eye</c> or <c>rack</c>.</param>
/// <param name="Readings">How many readings were taken in it.</param>
/// <param name="BowHigh">Rise to the bow, as it lay.</param>
/// <param name="PortLow">Roll to port, as it lay.</param>
public sealed record CheckedLie(
    string Lie, string? Date, string Level, int Readings, Quantity BowHigh, Quantity PortLow);

/// <summary>A gate that was changed since it was read.</summary>
/// <param name="Seat">The seat, 1 is bow.</param>
/// <param name="Side"><c>port</c> or <c>starboard</c>.</param>
/// <param name="By">What was last done to it: <c>knock</c>, <c>refitting</c>, <c>mending</c>, <c>finished-job</c>, <c>job-given-up</c> or <c>job-under-way</c>.</param>
/// <param name="On">The day, as <c>2026-03-14</c>.</param>
/// <param name="Sentence">The same in plain English, and that it is to be read again.</param>
public sealed record CheckedChange(int Seat, string Side, string By, string On, string Sentence);

/// <summary>Which gate.</summary>
/// <param name="Seat">The seat, 1 is bow.</param>
/// <param name="Side"><c>port</c> or <c>starboard</c>; null where only the rigging of a sweep boat could tell.</param>
public sealed record CheckedGate(int Seat, string? Side);
