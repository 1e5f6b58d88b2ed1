using System.Globalization;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;

namespace Gatewright.Core.Mending;

/// <summary>A slipped sleeve, turned back on its shaft.</summary>
internal static class SleeveRemedy
{
    public static Remedy Of(BoatCheck check, CausePart part, MendingSettings settings)
    {
        GatePlace oar = part.Gate!.Value;
        double degrees = SleeveBeliefs.MeanDegrees(check.Diagnosis, oar, part);
        double mm = RoundTheShaftMm(Angle.FromDegrees(Math.Abs(degrees)), settings.Dimensions.ShaftDiameterMm);
        string way = degrees > 0 ? "forward, towards the bow" : "back, towards the stern";
        string instruction = string.Create(CultureInfo.InvariantCulture,
            $"Turn the sleeve of the oar of {oar} so that the top of its blade comes {Math.Abs(degrees):0.0}° {way}: {mm:0.0} mm round a shaft of {settings.Dimensions.ShaftDiameterMm:0.#} mm. Compare with the other oars of the set first, since blade shapes differ.");
        return new(RemedyKind.TurnSleeve, part, default, instruction, [], 45, Cautions.For(RemedyKind.TurnSleeve), []);
    }

    /// <summary>The arc of an angle round a shaft: π d · angle/360°.</summary>
    public static double RoundTheShaftMm(Angle turn, double diameterMm) => 0.5 * diameterMm * turn.Radians;
}
