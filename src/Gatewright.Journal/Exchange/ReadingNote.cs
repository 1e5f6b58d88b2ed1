using Gatewright.Core;

namespace Gatewright.Journal.Exchange;

/// <summary>What was written beside a reading, or in a column that is none of ours.</summary>
/// <param name="Boat">The boat; null beside the level of a rack.</param>
/// <param name="Gate">The gate that was read; null beside the level of a rack.</param>
/// <param name="Text">The note; of a foreign column with its name in front, "weather: windy".</param>
/// <param name="Rack">The rack whose level the row states; null beside a reading.</param>
public sealed record ReadingNote(string? Boat, GatePlace? Gate, string Text, string? Rack = null);
