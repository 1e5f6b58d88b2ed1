using Gatewright.Core.Rig;
using Gatewright.Journal.Rounds;

namespace Gatewright.Journal.Rigging;

/// <summary>A figure of the rig as somebody types it: with a comma or a point, and any minus a keyboard has.</summary>
public static class TypedMeasure
{
    /// <summary>
    /// The figure; null for what is no number, has more than two decimals, or can be no such measure in that unit: "865"
    /// is no spread in centimetres.
    /// </summary>
    public static decimal? Parse(string? text, RigMeasure measure, RigUnit unit)
    {
        (double least, double most) = measure.Plausible();
        return Number(text) is { } value && unit.InOwn((double)value) >= least && unit.InOwn((double)value) <= most ? value : null;
    }

    /// <summary>A number of at most two decimals, whatever it is of; null for anything else.</summary>
    public static decimal? Number(string? text) => TypedNumber.Parse(text);
}
