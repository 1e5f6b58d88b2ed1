using Gatewright.Core;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Core.Oars;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Oars;

/// <summary>The occasions on which sleeves were read, and the gauges, as they are known today; each worked out once.</summary>
internal sealed class OarSessions(Club club, MeasuringSettings settings)
{
    private readonly Dictionary<string, Gauge> _gauges = [];
    private readonly Lazy<ThingTitles> _racks = new(() => new(club, Things.Rack));
    private readonly Lazy<ThingTitles> _gaugeTitles = new(() => new(club, Things.Gauge));

    public OarFigures Figures { get; } = new(settings, OarErrors.Default);

    /// <summary>The occasion of a reading, as that reading tells it.</summary>
    public GunwaleSession Of(Recorded record)
    {
        var read = (OarRead)record.Fact;
        DateOnly day = Day.Of(record);
        HullLevel level = read.Level switch
        {
            LevelBasis.Read => new HullLevel.Read(HullAttitude.FromDegrees((double)(read.BowHigh ?? 0), (double)(read.PortLow ?? 0))),
            LevelBasis.BubbleCentred => new HullLevel.BubbleCentred(),
            LevelBasis.Rack when read.Rack is { } rack && RackLevels.Of(club, rack, day, _racks) is { } known => new HullLevel.OfRack(known),
            _ => new HullLevel.ByEye(),
        };
        return new(read.Session ?? record.Entry.Id.ToString("N"), new(read.Lie ?? Lie.Upright, level, day));
    }

    public Gauge Gauge(string? key)
    {
        string name = key ?? Core.Measuring.Gauge.Unnamed;
        if (!_gauges.TryGetValue(name, out Gauge? gauge))
        {
            _gauges.Add(name, gauge = GaugeView.Of(club, name, settings, _gaugeTitles.Value).Gauge);
        }

        return gauge;
    }
}
