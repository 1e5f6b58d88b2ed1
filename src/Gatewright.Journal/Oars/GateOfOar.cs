using Gatewright.Core;

namespace Gatewright.Journal.Oars;

/// <summary>The gate that an oar is rowed at. Of a sweep seat the side need not be said.</summary>
internal static class GateOfOar
{
    /// <summary>The one gate of a boat at a seat, and on a side where one is said; null where there is none, or two.</summary>
    public static GatePlace? Of(int seat, Side? side, IReadOnlyList<GatePlace> gates)
    {
        GatePlace[] at = [.. gates.Where(g => g.Seat == seat && (side is null || g.Side == side))];
        return at.Length == 1 ? at[0] : null;
    }
}
