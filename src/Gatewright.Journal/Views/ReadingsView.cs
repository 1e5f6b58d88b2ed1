using Gatewright.Core;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;

namespace Gatewright.Journal.Views;

/// <summary>A boat's readings as the core takes them: each with its lying and its gauge as they are known today.</summary>
internal sealed class ReadingsView
{
    private readonly Club _club;
    private readonly MeasuringSettings _settings;
    private readonly StationAngles _angles;
    private readonly Dictionary<string, BoatLie> _lies = [];
    private readonly Dictionary<string, Gauge> _gauges = [];
    private ThingTitles? _rackTitles;
    private ThingTitles? _gaugeTitles;

    public ReadingsView(Club club, IReadOnlyList<Recorded> records, BoatClass boatClass, MeasuringSettings settings)
    {
        (_club, _settings, _angles) = (club, settings, settings.Angles(boatClass.Rowing));
        foreach (Recorded record in records)
        {
            if (record.Fact is BoatLaid laid)
            {
                _lies[laid.Lying] = new(laid.Lie, Level(laid, Day.Of(record)), Day.Of(record));
            }
        }
    }

    /// <summary>Readings whose lying is known; one that came before its lying waits for it.</summary>
    public IReadOnlyList<Reading> Readings(IEnumerable<Recorded> records) =>
        [.. records.Select(r => r.Fact).OfType<ReadingTaken>().Where(r => _lies.ContainsKey(r.Lying)).Select(Reading)];

    private Reading Reading(ReadingTaken taken)
    {
        StrokePoint at = taken.Station is { } station ? _angles.Point(station)
            : taken.Angle is { } angle ? _angles.Point(OarAngle.FromDegrees((double)angle))
            : _angles.Point(Station.Abeam);
        return new(
            taken.Item, new(taken.Seat, taken.Side), at, Angle.FromDegrees((double)taken.Value), _lies[taken.Lying], Gauge(taken.Gauge));
    }

    private HullLevel Level(BoatLaid laid, DateOnly day) => laid.Level switch
    {
        LevelBasis.Read => new HullLevel.Read(Attitude(laid.BowHigh, laid.PortLow)),
        LevelBasis.BubbleCentred => new HullLevel.BubbleCentred(),
        LevelBasis.Rack when laid.Rack is { } rack && RackOf(rack, day) is { } known => new HullLevel.OfRack(known),
        _ => new HullLevel.ByEye(),
    };

    /// <summary>A rack as it was last read by a day, or failing that, first read after it; null while nobody has read it.</summary>
    private Rack? RackOf(string key, DateOnly day)
    {
        List<Recorded> levels = [.. _club.About(new(Things.Rack, key)).Where(r => r.Fact is RackLevelRead).OrderBy(Day.Of)];
        if ((levels.FindLast(r => Day.Of(r) <= day) ?? levels.FirstOrDefault()) is not { Fact: RackLevelRead level } read)
        {
            return null;
        }

        var thing = new ThingView(_club, Things.Rack, key);
        Bedding bed = thing["bed"] == "soft" ? Bedding.Soft : Bedding.Firm;
        return new(Titles(ref _rackTitles, Things.Rack)[key], Attitude(level.BowHigh, level.PortLow), bed, Day.Of(read));
    }

    private Gauge Gauge(string? key)
    {
        string name = key ?? "gauge";
        if (!_gauges.TryGetValue(name, out Gauge? gauge))
        {
            _gauges.Add(name, gauge = GaugeView.Of(_club, name, _settings, Titles(ref _gaugeTitles, Things.Gauge)).Gauge);
        }

        return gauge;
    }

    private ThingTitles Titles(ref ThingTitles? titles, string thing) => titles ??= new(_club, thing);

    private static HullAttitude Attitude(decimal? bowHigh, decimal? portLow) =>
        HullAttitude.FromDegrees((double)(bowHigh ?? 0), (double)(portLow ?? 0));
}
