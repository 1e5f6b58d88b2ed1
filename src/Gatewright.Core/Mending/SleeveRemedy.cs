using System.Globalization;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;

namespace Gatewright.Core.Mending;

/// <summary>A slipped sleeve, turned back on its shaft.</summary>
public static class SleeveRemedy
{
    /// <summary>The remedy for a sleeve that has slipped.</summary>
    internal static Remedy Of(BoatCheck check, CausePart part, MendingSettings settings)
    {
        GatePlace oar = part.Gate!.Value;
        double degrees = SleeveBeliefs.MeanDegrees(check.Diagnosis, oar, part);
        double diameter = settings.Dimensions.ShaftDiameterMm;
        double mm = RoundTheShaftMm(Angle.FromDegrees(Math.Abs(degrees)), diameter);
        string way = degrees > 0 ? "towards the bow" : "towards the stern";
        return new(
            RemedyKind.TurnSleeve,
            part,
            default,
            string.Create(CultureInfo.InvariantCulture, $"Compare the oar of {oar} with the others of its set first, since blade shapes differ. Then turn its sleeve on the shaft: with the sleeve's flat in the gate, the top of the blade has to come {Math.Abs(degrees):0.0}° {way}, {mm:0.0} mm round a shaft of {diameter:0.#} mm. Read the sleeve again."),
            [],
            45,
            Cautions.For(RemedyKind.TurnSleeve),
            []);
    }

    /// <summary>The arc of an angle round a shaft: π d · angle/360°. 1° round 46 mm → 0.40 mm.</summary>
    public static double RoundTheShaftMm(Angle turn, double diameterMm) => 0.5 * diameterMm * turn.Radians;
}
