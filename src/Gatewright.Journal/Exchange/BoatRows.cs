using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;

namespace Gatewright.Journal.Exchange;

/// <summary>A reading whose lying is not settled yet.</summary>
internal readonly record struct PendingReading(
    ReadItem Item, GatePlace Gate, StrokePoint At, Angle Value, Lying Lying, Gauge Gauge);

/// <summary>The rows of one boat, from whichever sources.</summary>
internal sealed class BoatRows(string name)
{
    private readonly List<PendingReading> _readings = [];
    private readonly List<Report> _reports = [];
    private readonly List<Mended> _mendings = [];
    private readonly List<WrittenMeasure> _measures = [];
    private readonly Dictionary<LyingKey, Lying> _lyings = [];
    private (Side Side, RowPlace Place)?[] _sides = [];
    private Lying? _last;

    public string Name => name;

    /// <summary>Its class, once a row has given one.</summary>
    public BoatClass? Class { get; private set; }

    /// <summary>The row that gave it.</summary>
    public RowPlace ClassPlace { get; private set; }

    public IReadOnlyCollection<Lying> Lyings => _lyings.Values;

    /// <summary>Takes the class from the first row that gives one.</summary>
    /// <returns>Whether the row agrees with it.</returns>
    public bool Agrees(BoatClass boatClass, RowPlace place)
    {
        if (Class is null)
        {
            (Class, ClassPlace) = (boatClass, place);
            _sides = new (Side, RowPlace)?[boatClass.Seats];
        }

        return Class == boatClass;
    }

    /// <summary>Takes the side of a sweep seat from the first row that reads it; sculling has both.</summary>
    /// <returns>The row that gave the seat its other side, or null when the row agrees.</returns>
    public RowPlace? Contradicts(GatePlace gate, RowPlace place)
    {
        if (Class?.Rowing != Rowing.Sweep)
        {
            return null;
        }

        (Side Side, RowPlace Place) first = _sides[gate.Seat - 1] ??= (gate.Side, place);
        return first.Side == gate.Side ? null : first.Place;
    }

    public Lying LyingOf(LyingKey key, RowPlace place)
    {
        if (_last is null || _last.Key != key)
        {
            if (!_lyings.TryGetValue(key, out _last))
            {
                _last = new(key, place);
                _lyings.Add(key, _last);
            }
        }

        return _last;
    }

    /// <summary>Whether anything was read on it, or it was only told of.</summary>
    public bool IsRead => _readings.Count > 0;

    public void Add(PendingReading reading) => _readings.Add(reading);

    /// <summary>What was measured of its rig.</summary>
    public IReadOnlyList<WrittenMeasure> Measures => _measures;

    /// <summary>Whether something was told of it, and its gates were not read: nor was it there for its rig alone.</summary>
    public bool IsOnlyToldOf => !IsRead && (_measures.Count == 0 || _reports.Count + _mendings.Count > 0);

    public void Measured(WrittenMeasure measure) => _measures.Add(measure);

    public void Told(Report report) => _reports.Add(report);

    public void Told(Mended mended) => _mendings.Add(mended);

    /// <summary>What was told of it, when its class is known: every row that is without error gives it.</summary>
    public BoatTold Tell() => new(name, Class!, [.. _reports], [.. _mendings]);

    /// <summary>The boat with what was told of it, its readings sorted by what was done to it since.</summary>
    public BoatRecord Record(BoatReadings readings) => BoatRecord.ByDate(readings, _reports, _mendings);

    /// <summary>The boat, when every lying is settled.</summary>
    public BoatReadings Close()
    {
        var readings = new Reading[_readings.Count];
        for (int i = 0; i < readings.Length; i++)
        {
            PendingReading r = _readings[i];
            readings[i] = new(r.Item, r.Gate, r.At, r.Value, r.Lying.Settled!, r.Gauge);
        }

        return new(name, Class!, readings);
    }
}
