using System.Text.Json.Serialization;
using Gatewright.Core;
using Gatewright.Core.Measuring;

namespace Gatewright.Journal.Facts;

/// <summary>A boat was laid to be read: how it lies and how its level is known.</summary>
/// <param name="Lying">The key that its readings name.</param>
/// <param name="Boat">The boat.</param>
/// <param name="Lie">Upright or inverted.</param>
/// <param name="Level">How its level is known.</param>
/// <param name="BowHigh">Degrees, where it was read.</param>
/// <param name="PortLow">Degrees, where it was read.</param>
/// <param name="Rack">The rack, where its level is the rack's.</param>
/// <param name="Round">The round, if it is part of one.</param>
/// <param name="Date">The day, where it is not the day on which this was recorded.</param>
/// <param name="Moved">Whether it was moved after what was read before: its level is another then, though it lies alike. Null where nobody said so, and in older entries.</param>
public sealed record BoatLaid(
    string Lying,
    string Boat,
    Lie Lie,
    LevelBasis Level,
    decimal? BowHigh = null,
    decimal? PortLow = null,
    string? Rack = null,
    string? Round = null,
    DateOnly? Date = null,
    bool? Moved = null) : Fact;

/// <summary>A reading was taken.</summary>
/// <param name="Lying">How the boat lay.</param>
/// <param name="Boat">The boat.</param>
/// <param name="Item">What the gauge was held against.</param>
/// <param name="Seat">The seat.</param>
/// <param name="Side">The side.</param>
/// <param name="Value">What the gauge showed, degrees.</param>
/// <param name="Station">The station, for a gate's face read at one.</param>
/// <param name="Angle">The oar angle in degrees, for a gate's face read elsewhere.</param>
/// <param name="Gauge">The gauge.</param>
/// <param name="Job">The job it re-checks, if it does.</param>
public sealed record ReadingTaken(
    string Lying,
    string Boat,
    ReadItem Item,
    int Seat,
    Side Side,
    decimal Value,
    Station? Station = null,
    decimal? Angle = null,
    string? Gauge = null,
    string? Job = null) : Fact;

/// <summary>A reading that looked like a slip was said to be none: it holds beside what is read there next.</summary>
/// <param name="Boat">The boat.</param>
/// <param name="Reading">The entry of the reading.</param>
public sealed record ReadingKept(string Boat, Guid Reading) : Fact;

/// <summary>How a boat's level was known while it was read.</summary>
[JsonConverter(typeof(KebabEnumConverter<LevelBasis>))]
public enum LevelBasis
{
    /// <summary>It looked level.</summary>
    ByEye,

    /// <summary>The bubble was centred.</summary>
    BubbleCentred,

    /// <summary>It was read on the boat.</summary>
    Read,

    /// <summary>It is that of the rack.</summary>
    Rack,
}

/// <summary>A measure of the rig other than pitch was taken: a spread, a height, an inboard.</summary>
/// <param name="Boat">The boat.</param>
/// <param name="Measure">Which measure.</param>
/// <param name="Seat">The seat.</param>
/// <param name="Value">The value as entered.</param>
/// <param name="Unit">The unit as entered.</param>
/// <param name="Side">The side, where it has one; of a sweep seat's own measure the side on which it was rigged then, where that was said.</param>
/// <param name="Date">The day, where it is not the day on which this was recorded.</param>
public sealed record MeasureTaken(
    string Boat, string Measure, int Seat, decimal Value, string Unit, Side? Side = null, DateOnly? Date = null) : Fact;
