using Gatewright.Core.Rig;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;

namespace Gatewright.Journal.Rigging;

/// <summary>A measure of a boat's rig as the journal has it.</summary>
/// <param name="Record">The entry: who recorded it, when.</param>
/// <param name="Reading">What was taken, in the measure's own unit, with its day.</param>
public sealed record TakenMeasure(Recorded Record, RigReading Reading)
{
    /// <summary>As it was entered.</summary>
    public MeasureTaken Taken => (MeasureTaken)Record.Fact;

    /// <summary>As a file writes it: the figure and the unit as they were entered.</summary>
    public WrittenMeasure Written => new(Reading, Taken.Value, RigUnits.OfWord(Taken.Unit)!.Value, Taken.Side ?? Reading.Place.Side);

    /// <summary>The day it was taken.</summary>
    public DateOnly Day => Reading.Day!.Value;
}
