using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Core.Oars;

namespace Gatewright.Journal.Oars;

/// <summary>An oar in the gate it is rowed in.</summary>
public static class OarInGate
{
    /// <summary>
    /// The pitch of its blade at each station where the gate was read: the reading on a level boat, and what the sleeve adds. Nothing
    /// where the oar has no seat and side, or its sleeve was never read.
    /// </summary>
    /// <remarks>
    /// The pin is taken to be upright, where the sleeve adds whole: with leans of 3° it adds within 0.01° of that for sleeves of up to 3°.
    /// </remarks>
    public static IReadOnlyList<(Station Station, Estimate Gate, Estimate Blade)> Pitches(OarView oar, BoatCheck check)
    {
        ArgumentNullException.ThrowIfNull(oar);
        ArgumentNullException.ThrowIfNull(check);
        var pitches = new List<(Station, Estimate, Estimate)>();
        if (oar is not { Seat: { } seat, Side: { } side, Oar.Sleeve: { } sleeve })
        {
            return pitches;
        }

        var gate = new GatePlace(seat, side);
        foreach (CorrectedPitch read in check.Corrected.Pitches)
        {
            if (read.Gate == gate && read.At.Station is { } station)
            {
                var state = new GateState(new(read.Pitch.Angle), PinLean.Upright);
                pitches.Add((station, read.Estimate, BladePitch.Of(
                    read.Estimate, read.At.Angle, state, side, SleeveError.FromDegrees(sleeve.Value), sleeve.U, SharedZero(oar, check, gate))));
            }
        }

        return pitches;
    }

    /// <summary>The zero's uncertainty where one gauge read both gate and sleeve.</summary>
    private static double SharedZero(OarView oar, BoatCheck check, GatePlace gate)
    {
        string? last = oar.SleeveGauge;
        foreach (Reading reading in check.Readings.Readings)
        {
            if (reading.Gate == gate && reading.Item == ReadItem.Gate && reading.Gauge.Name == last)
            {
                return reading.Gauge.Zero.Estimate.U.Degrees;
            }
        }

        return 0;
    }
}
