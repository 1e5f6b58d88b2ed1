using Gatewright.Core.Rig;
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

    /// <summary>The day it was taken.</summary>
    public DateOnly Day => Reading.Day!.Value;
}
