namespace Gatewright.Core.Mending;

/// <summary>
/// The lengths that turn a tilt into a thickness or a distance, in millimetres. The defaults are this project's, for a
/// rigger of common size: measure your own, for every amount scales with them.
/// </summary>
public sealed record RigDimensions
{
    /// <summary>The defaults.</summary>
    public static RigDimensions Default { get; } = new();

    /// <summary>From a shim under one edge of the pin's foot to the opposite edge it tips about: 60 mm.</summary>
    public double PinFootMm { get; init; } = 60;

    /// <summary>Between the upper and the lower bolt of the rigger's plate on the hull: 70 mm.</summary>
    public double PlateBoltsMm { get; init; } = 70;

    /// <summary>From the pin's foot up to where the backstay holds it: 150 mm.</summary>
    public double BackstayHeightMm { get; init; } = 150;

    /// <summary>From the pin's foot to its tip: 160 mm.</summary>
    public double PinLengthMm { get; init; } = 160;

    /// <summary>Round the shaft where the sleeve sits, its diameter: 46 mm.</summary>
    public double ShaftDiameterMm { get; init; } = 46;
}
