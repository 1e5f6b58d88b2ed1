using Gatewright.Core;
using Gatewright.Core.Oars;

namespace Gatewright.Journal.Facts;

/// <summary>Something was read of an oar by itself.</summary>
/// <param name="Oar">The oar.</param>
/// <param name="Item">What was read.</param>
/// <param name="Value">The value as entered: of a sleeve degrees, of a weight kilograms.</param>
/// <param name="Unit">The unit as entered, of a length or an inboard; null for centimetres.</param>
/// <param name="Session">Of a sleeve, the occasion: its readings share the boat's level.</param>
/// <param name="Boat">Of a sleeve, the boat on whose gunwale the blade lay.</param>
/// <param name="Lie">Of a sleeve, how that boat lay; null for upright.</param>
/// <param name="Level">Of a sleeve, how the boat's level was known; null for by eye.</param>
/// <param name="BowHigh">Degrees, where it was read.</param>
/// <param name="PortLow">Degrees, where it was read.</param>
/// <param name="Rack">The rack, where the level is the rack's.</param>
/// <param name="Laid">Of a sleeve, which way round the oar lay; null for the handle out.</param>
/// <param name="Gauge">Of a sleeve, the gauge.</param>
/// <param name="Date">The day, where it is not the day on which this was recorded.</param>
public sealed record OarRead(
    string Oar,
    OarItem Item,
    decimal Value,
    string? Unit = null,
    string? Session = null,
    string? Boat = null,
    Lie? Lie = null,
    LevelBasis? Level = null,
    decimal? BowHigh = null,
    decimal? PortLow = null,
    string? Rack = null,
    OarLaid? Laid = null,
    string? Gauge = null,
    DateOnly? Date = null) : Fact;
