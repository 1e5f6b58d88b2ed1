using Gatewright.Core.Geometry;

namespace Gatewright.Core.Measuring;

/// <summary>A hull's level as it is known, each direction with the same standard uncertainty.</summary>
/// <param name="Attitude">The best value.</param>
/// <param name="U">The standard uncertainty of either direction; the two are independent.</param>
public readonly record struct LevelEstimate(HullAttitude Attitude, Angle U)
{
    /// <summary>What a way of levelling tells of the hull.</summary>
    public static LevelEstimate Of(HullLevel level, MeasuringSettings settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        return level switch
        {
            HullLevel.Read read => new(read.Attitude, settings.LevelReadU),
            HullLevel.BubbleCentred => new(HullAttitude.Level, settings.BubbleCentredU),
            HullLevel.OfRack { Rack: var rack } => new(rack.Attitude, OnRack(rack.Bedding, settings)),
            _ => new(HullAttitude.Level, settings.ByEyeU),
        };
    }

    private static Angle OnRack(Bedding bedding, MeasuringSettings settings)
    {
        Angle bed = bedding == Bedding.Firm ? settings.FirmRackU : settings.SoftRackU;
        return Angle.FromDegrees(Math.Sqrt(Math.Pow(settings.LevelReadU.Degrees, 2) + Math.Pow(bed.Degrees, 2)));
    }
}
