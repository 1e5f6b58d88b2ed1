namespace Gatewright.Core.Rig;

/// <summary>What a measure is at one place: the mean of all that was taken there, or worked out from other measures.</summary>
/// <param name="Measure">Which.</param>
/// <param name="Place">Where.</param>
/// <param name="Value">Its value and standard uncertainty, in the measure's own unit.</param>
/// <param name="Repeats">How many readings it is the mean of; 0 when it was worked out.</param>
/// <param name="Apart">
/// The largest difference of two of those readings, with its standard uncertainty, where that is more than chance explains;
/// else null.
/// </param>
/// <param name="IsSet">Whether it is what somebody set it to, and nobody took it since.</param>
public sealed record RigFigure(
    RigMeasure Measure, RigPlace Place, RigEstimate Value, int Repeats, RigEstimate? Apart = null, bool IsSet = false)
{
    /// <summary>Whether nobody took it, but it follows from what was taken.</summary>
    public bool IsComputed => Repeats == 0;
}
