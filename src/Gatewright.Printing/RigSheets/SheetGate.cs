using Gatewright.Core;
using Gatewright.Core.Judging;

namespace Gatewright.Printing.RigSheets;

/// <summary>A gate as it stands on paper.</summary>
/// <param name="Gate">Which.</param>
/// <param name="Verdict">Its verdict; null while nothing was read of it.</param>
/// <param name="Pitches">Its pitch, station by station; empty while nothing was read of it.</param>
/// <param name="Pin">What is said of pin and insert, a line each.</param>
internal sealed record SheetGate(GatePlace Gate, Verdict? Verdict, IReadOnlyList<SheetPitch> Pitches, IReadOnlyList<string> Pin)
{
    /// <summary>At a station; null while nothing was read of the gate.</summary>
    public SheetPitch? At(Station station) => Pitches.FirstOrDefault(p => p.Station == station);
}
