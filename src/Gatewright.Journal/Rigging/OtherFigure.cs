using Gatewright.Core.Rig;
using Gatewright.Journal.Replay;
using Gatewright.Words;

namespace Gatewright.Journal.Rigging;

/// <summary>
/// A figure of a boat's rig that holds though nobody took it on the boat: it is newer than what was taken there, or nothing was.
/// </summary>
/// <param name="Record">The entry: who recorded it, when.</param>
/// <param name="Reading">The figure, in the measure's own unit, with its day.</param>
/// <param name="Oar">The oar it was read of; null for what was set.</param>
public sealed record OtherFigure(Recorded Record, RigReading Reading, SourceOar? Oar)
{
    /// <summary>The day it is of.</summary>
    public DateOnly Day => Reading.Day!.Value;

    /// <summary>Where it comes from, in words: "from oar 3 of the set Blue, read on 2026-05-04".</summary>
    public string Words(Wording say)
    {
        ArgumentNullException.ThrowIfNull(say);
        return Oar is { } oar ? say.Rig.FromOar(oar.Name, oar.Set, Day) : say.Rig.FromSetting(Day);
    }
}

/// <summary>An oar that a figure of a rig comes from.</summary>
/// <param name="Key">Its key.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Set">What its set is called; null for none.</param>
public sealed record SourceOar(string Key, string Name, string? Set);
