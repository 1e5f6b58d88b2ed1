using Gatewright.Core.Geometry;
using Gatewright.Core.Mending;

namespace Gatewright.Core.Oars;

/// <summary>How a sleeve is turned on its shaft.</summary>
/// <param name="ToBowDegrees">How far the top of the blade comes to the bow by it, the sleeve held; negative to the stern.</param>
/// <param name="RoundMm">How far that is round the shaft, 0 or more.</param>
/// <param name="DiameterMm">The shaft's diameter where the sleeve sits.</param>
public readonly record struct SleeveTurn(double ToBowDegrees, double RoundMm, double DiameterMm)
{
    /// <summary>The turn that takes a sleeve error away: it is that error, to the bow.</summary>
    public static SleeveTurn Of(double degrees, double diameterMm) =>
        new(degrees, SleeveRemedy.RoundTheShaftMm(Angle.FromDegrees(Math.Abs(degrees)), diameterMm), diameterMm);

    /// <summary>The turn that brings an oar in line with the others of its set.</summary>
    public static SleeveTurn InLine(JudgedOar oar, RigDimensions dimensions)
    {
        ArgumentNullException.ThrowIfNull(oar);
        ArgumentNullException.ThrowIfNull(dimensions);
        return Of(oar.Off, dimensions.ShaftDiameterMm);
    }
}
