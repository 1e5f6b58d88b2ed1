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

    // The last word on each lying, and with which the boat was last moved before it or by it.
    private readonly Dictionary<string, (Recorded Word, string? Moved)> _laid = [];
    private readonly Worked _worked = new();
    private readonly Lazy<ThingTitles> _rackTitles;
    private readonly Lazy<ThingTitles> _gaugeTitles;
    private string? _moved;

    /// <summary>The view of a boat's records.</summary>
    /// <param name="club">The club.</param>
    /// <param name="records">All that holds of the boat.</param>
    /// <param name="boatClass">Its class.</param>
    /// <param name="settings">What is known of how readings are taken.</param>
    /// <param name="isNamed">Whether racks and gauges are called by their titles: to find those takes looking at all there are.</param>
    public ReadingsView(
        Club club, IReadOnlyList<Recorded> records, BoatClass boatClass, MeasuringSettings settings, bool isNamed = true)
    {
        (_club, _settings, _angles) = (club, settings, settings.Angles(boatClass.Rowing));
        _rackTitles = new(() => isNamed ? new(club, Things.Rack) : ThingTitles.Keys);
        _gaugeTitles = new(() => isNamed ? new(club, Things.Gauge) : ThingTitles.Keys);
        foreach (Recorded record in records)
        {
            if (record.As<BoatLaid>() is { } laid)
            {
                Take(record, laid);
            }
        }
    }

    private ReadingsView(ReadingsView before, Recorded laid)
    {
        (_club, _settings, _angles, _rackTitles, _gaugeTitles) = (before._club, before._settings, before._angles, before._rackTitles, before._gaugeTitles);
        (_laid, _moved, _worked) = (new(before._laid), before._moved, before._worked);
        Take(laid, (BoatLaid)laid.Fact);
    }

    /// <summary>Whether a lying is known.</summary>
    public bool Knows(string lying) => _laid.ContainsKey(lying);

    /// <summary>With a lying that was not known, in a club to which only the boat's own records came since.</summary>
    public ReadingsView With(Recorded laid) => new(this, laid);

    /// <summary>Readings whose lying is known; one that came before its lying waits for it.</summary>
    public IReadOnlyList<Reading> Readings(IEnumerable<Recorded> records) =>
        [.. records.Select(r => r.Fact).OfType<ReadingTaken>().Where(r => _laid.ContainsKey(r.Lying)).Select(Reading)];

    private void Take(Recorded record, BoatLaid laid)
    {
        string? moved = _laid.TryGetValue(laid.Lying, out (Recorded Word, string? Moved) known) ? known.Moved
            : laid.Moved == true ? _moved = laid.Lying
            : _moved;
        _laid[laid.Lying] = (record, moved);
    }

    private Reading Reading(ReadingTaken taken)
    {
        StrokePoint at = taken.Station is { } station ? _angles.Point(station)
            : taken.Angle is { } angle ? _angles.Point(OarAngle.FromDegrees((double)angle))
            : _angles.Point(Station.Abeam);
        return new(
            taken.Item, new(taken.Seat, taken.Side), at, Angle.FromDegrees((double)taken.Value), Lie(taken.Lying), Gauge(taken.Gauge));
    }

    /// <summary>A lying, worked out when a reading of it is first asked for: of a long record most are never asked.</summary>
    private BoatLie Lie(string lying)
    {
        (Recorded record, string? moved) = _laid[lying];
        if (!_worked.Lies.TryGetValue(record, out BoatLie? lie))
        {
            var laid = (BoatLaid)record.Fact;
            _worked.Lies.Add(record, lie = new(laid.Lie, Level(laid, Day.Of(record)), Day.Of(record), moved));
        }

        return lie;
    }

    private HullLevel Level(BoatLaid laid, DateOnly day) => laid.Level switch
    {
        LevelBasis.Read => new HullLevel.Read(Attitude(laid.BowHigh, laid.PortLow)),
        LevelBasis.BubbleCentred => new HullLevel.BubbleCentred(),
        LevelBasis.Rack when laid.Rack is { } rack && Rack(rack, day) is { } known => new HullLevel.OfRack(known),
        _ => new HullLevel.ByEye(),
    };

    private Rack? Rack(string key, DateOnly day)
    {
        if (!_worked.Racks.TryGetValue((key, day), out Rack? rack))
        {
            _worked.Racks.Add((key, day), rack = RackLevels.Of(_club, key, day, _rackTitles));
        }

        return rack;
    }

    private Gauge Gauge(string? key)
    {
        string name = key ?? Core.Measuring.Gauge.Unnamed;
        if (!_worked.Gauges.TryGetValue(name, out Gauge? gauge))
        {
            _worked.Gauges.Add(name, gauge = GaugeView.Of(_club, name, _settings, _gaugeTitles.Value).Gauge);
        }

        return gauge;
    }

    private static HullAttitude Attitude(decimal? bowHigh, decimal? portLow) =>
        HullAttitude.FromDegrees((double)(bowHigh ?? 0), (double)(portLow ?? 0));

    /// <summary>What was worked out: it holds for all views that came of one, since no gauge and no rack changed between them.</summary>
    private sealed class Worked
    {
        public Dictionary<Recorded, BoatLie> Lies { get; } = new(ReferenceEqualityComparer.Instance);

        public Dictionary<(string Key, DateOnly Day), Rack?> Racks { get; } = [];

        public Dictionary<string, Gauge> Gauges { get; } = [];
    }
}
