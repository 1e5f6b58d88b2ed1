using Gatewright.Core;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Rounds;

namespace Gatewright.App.Round;

/// <summary>The reading that an address asks for: "?item=pin-out&amp;seat=3&amp;side=port", or "&amp;at=finish" for a face.</summary>
internal static class AskedStep
{
    /// <summary>The step; null where the address asks for none that there is.</summary>
    public static ReadingStep? Of(string? item, int? seat, string? side, string? at)
    {
        if (seat is not (>= 1 and <= 8) || Sides.OfWord(side) is not { } where)
        {
            return null;
        }

        var gate = new GatePlace(seat.Value, where);
        return item switch
        {
            null or "gate" when at is null => ReadingStep.Of(ReadItem.Gate, gate),
            null or "gate" when Stations.All.Any(s => s.Word() == at) => ReadingStep.Face(gate, Stations.All.First(s => s.Word() == at)),
            "pin-aft" => ReadingStep.Of(ReadItem.PinAft, gate),
            "pin-out" => ReadingStep.Of(ReadItem.PinOut, gate),
            "gate-pitch" => ReadingStep.Of(ReadItem.GatePitch, gate),
            "sleeve" => ReadingStep.Of(ReadItem.Sleeve, gate),
            _ => null,
        };
    }
}
