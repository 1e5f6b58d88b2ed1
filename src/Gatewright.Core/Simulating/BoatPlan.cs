using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Simulating;

/// <summary>What is to be simulated: the boat, and how it is read.</summary>
public sealed record BoatPlan
{
    private readonly Gauge? _gauge;

    /// <summary>A plan with everything else as usual: on its rack, level read and found level, every station.</summary>
    public BoatPlan(BoatClass boatClass)
    {
        ArgumentNullException.ThrowIfNull(boatClass);
        Class = boatClass;
    }

    /// <summary>The class.</summary>
    public BoatClass Class { get; }

    /// <summary>How it is said to lie; how it really does is drawn about that, by how the level was come by.</summary>
    public BoatLie Lie { get; init; } = new(Core.Lie.Inverted, new HullLevel.Read(HullAttitude.Level));

    /// <summary>
    /// What it is read with, by default a gauge as in <see cref="Settings"/>; its true zero is drawn about the stated one.
    /// </summary>
    public Gauge Gauge
    {
        get => _gauge ?? Settings.Measuring.GaugeNamed(Gauge.Unnamed);
        init => _gauge = value;
    }

    /// <summary>The stations at which every gate is read.</summary>
    public IReadOnlyList<Station> Stations { get; init; } = Core.Stations.All;

    /// <summary>How gates scatter, what goes wrong how often, and how well readings are taken.</summary>
    public DiagnosingSettings Settings { get; init; } = DiagnosingSettings.Default;

    /// <summary>
    /// Its gates, from the bow. In sweep with the oars alternating from stroke on port, as is common practice: odd seats
    /// starboard.
    /// </summary>
    public IReadOnlyList<GatePlace> Gates => Class.Rowing == Rowing.Sweep
        ? [.. Seats.Select(seat => new GatePlace(seat, seat % 2 == 0 ? Side.Port : Side.Starboard))]
        : [.. Seats.SelectMany(seat => new GatePlace[] { new(seat, Side.Port), new(seat, Side.Starboard) })];

    private IEnumerable<int> Seats => Enumerable.Range(1, Class.Seats);
}
