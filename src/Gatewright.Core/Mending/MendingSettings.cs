using Gatewright.Core.Geometry;

namespace Gatewright.Core.Mending;

/// <summary>What mending works with, and how well it hits. Ours, from judgement; each is a setting.</summary>
public sealed record MendingSettings
{
    /// <summary>The defaults.</summary>
    public static MendingSettings Default { get; } = new();

    /// <summary>The rig's lengths.</summary>
    public RigDimensions Dimensions { get; init; } = RigDimensions.Default;

    /// <summary>Thicknesses of shims and washers that a shed has or can buy: 0.5, 1 and 2 mm.</summary>
    public IReadOnlyList<double> ShimSizesMm { get; init; } = [0.5, 1, 2];

    /// <summary>Steps in which inserts are made: 1°.</summary>
    public double InsertStepDegrees { get; init; } = 1;

    /// <summary>The least pitch an insert is made for: 1°.</summary>
    public double LeastInsertDegrees { get; init; } = 1;

    /// <summary>The most pitch an insert is made for: 7°.</summary>
    public double MostInsertDegrees { get; init; } = 7;

    /// <summary>How well a new insert gives its stamped pitch: 0.3°, as healthy gates scatter.</summary>
    public Angle InsertU { get; init; } = Angle.FromDegrees(0.3);

    /// <summary>How well a shim, washer or stay gives its tilt: 0.2°.</summary>
    public Angle TiltU { get; init; } = Angle.FromDegrees(0.2);

    /// <summary>How upright a new or straightened pin, or a refitted rigger, stands each way: 0.3°.</summary>
    public Angle NewPinU { get; init; } = Angle.FromDegrees(0.3);
}
