namespace Gatewright.Core.Rig;

/// <summary>
/// The overlap as it follows from inboard and span or spread, by the definition of the World Championships' rigging survey
/// of 2017 ("Rigging Survey – Measurements"). All in centimetres.
/// </summary>
public static class Overlap
{
    // Half a gate's width a side: the oar bears on the gate 2 cm inboard of the pin's centre, in sculling on both sides.
    private const double Gate = 2;

    /// <summary>Sweep: inboard − spread + 2. 116 and 86 → 32.</summary>
    public static double OfSweep(double inboard, double spread) => inboard - spread + Gate;

    /// <summary>Scull: both inboards − span + 4. 88.5 twice and 160 → 21.</summary>
    public static double OfScull(double inboards, double span) => inboards - span + (2 * Gate);
}
