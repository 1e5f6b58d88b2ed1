using Gatewright.Core.Geometry;

namespace Gatewright.Core.Measuring;

/// <summary>
/// The numbers a reading's uncertainty rests on. The defaults are this project's judgement, none is published, and
/// a club may set each of them.
/// </summary>
public sealed record MeasuringSettings
{
    /// <summary>The defaults.</summary>
    public static MeasuringSettings Default { get; } = new();

    /// <summary>Oar angles of the stations in sweep: 55°, 0°, −35°.</summary>
    public StationAngles Sweep { get; init; } = Angles(55, -35);

    /// <summary>Oar angles of the stations in sculling: 62°, 0°, −43°.</summary>
    public StationAngles Scull { get; init; } = Angles(62, -43);

    /// <summary>How well an oar is held at catch and finish by eye: 5°.</summary>
    public Angle HeldAngleU { get; init; } = Angle.FromDegrees(5);

    /// <summary>How well an oar is held abeam by eye: 1°.</summary>
    public Angle HeldAbeamU { get; init; } = Angle.FromDegrees(1);

    /// <summary>
    /// ∂pitch/∂θ for the noise: 0.5° of pitch a radian of oar angle. Constant, since a slope that depended on the
    /// gate's state would break the exact posterior.
    /// </summary>
    public double PitchDegreesPerRadianOfOar { get; init; } = 0.5;

    /// <summary>A gauge's resolution: 0.5°.</summary>
    public Angle GaugeResolution { get; init; } = Angle.FromDegrees(0.5);

    /// <summary>A gauge's repeatability: 0.2°.</summary>
    public Angle GaugeRepeatability { get; init; } = Angle.FromDegrees(0.2);

    /// <summary>The zero of a gauge nobody has checked: 0 with u 0.2°.</summary>
    public Angle GaugeZeroU { get; init; } = Angle.FromDegrees(0.2);

    /// <summary>The zero after a reversal check: u 0.05°.</summary>
    public Angle CheckedGaugeZeroU { get; init; } = Angle.FromDegrees(0.05);

    /// <summary>A level that was read: u 0.1° each way.</summary>
    public Angle LevelReadU { get; init; } = Angle.FromDegrees(0.1);

    /// <summary>A bubble that was centred: u 0.2° each way.</summary>
    public Angle BubbleCentredU { get; init; } = Angle.FromDegrees(0.2);

    /// <summary>A boat levelled by eye: u 0.7° each way.</summary>
    public Angle ByEyeU { get; init; } = Angle.FromDegrees(0.7);

    /// <summary>What a firm rack leaves open about the boat on it, beside the reading of the rack: 0.15°.</summary>
    public Angle FirmRackU { get; init; } = Angle.FromDegrees(0.15);

    /// <summary>What a padded or loose rack leaves open about the boat on it: 0.7°, no better than the eye.</summary>
    public Angle SoftRackU { get; init; } = Angle.FromDegrees(0.7);

    /// <summary>The station angles of a kind of boat.</summary>
    public StationAngles Angles(Rowing rowing) => rowing == Rowing.Sweep ? Sweep : Scull;

    /// <summary>A gauge of which only the name is known.</summary>
    public Gauge GaugeNamed(string name) =>
        new(name, GaugeResolution, GaugeRepeatability, GaugeZero.Assumed(GaugeZeroU));

    private static StationAngles Angles(double atCatch, double atFinish) =>
        new(OarAngle.FromDegrees(atCatch), OarAngle.FromDegrees(0), OarAngle.FromDegrees(atFinish));
}
