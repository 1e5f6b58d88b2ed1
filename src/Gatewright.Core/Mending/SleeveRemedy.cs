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
        return new(
            RemedyKind.TurnSleeve,
            part,
            default,
            [new Work.TurnSleeve(oar, degrees, mm, diameter)],
            [],
            45,
            []);
    }

    /// <summary>The arc of an angle round a shaft: π d · angle/360°. 1° round 46 mm → 0.40 mm.</summary>
    public static double RoundTheShaftMm(Angle turn, double diameterMm) => 0.5 * diameterMm * turn.Radians;
}
