using System.Globalization;
using System.Security.Cryptography;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Core.Rig;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Exchange.Recording;

/// <summary>Writes down a file of readings: racks, then boat by boat what was told before what was read.</summary>
/// <remarks>Of one day the order decides: what a file has of the day of a mending was read after it.</remarks>
internal sealed class ReadingsPen(RecordingPen pen, Club club)
{
    private readonly ThingNames _boats = new(club, Things.Boat);
    private readonly ThingNames _racks = new(club, Things.Rack);
    private readonly ThingNames _gauges = new(club, Things.Gauge);
    private readonly HashSet<string> _named = [];

    public void Write(ReadingsInput input)
    {
        foreach (IGrouping<string, Rack> rack in input.Racks.GroupBy(r => r.Name))
        {
            Racks([.. rack]);
        }

        ILookup<string, Reading> readings = input.Boats.SelectMany(b => b.Readings.Select(r => (b.Boat, r))).ToLookup(r => r.Boat, r => r.r);
        foreach (BoatTold told in input.Told)
        {
            Boat(told, [.. readings[told.Boat]]);
        }

        foreach (BoatMeasures boat in input.Measures)
        {
            Rig(boat);
        }

        foreach (ReadingNote note in input.Notes)
        {
            Note(note);
        }
    }

    /// <summary>The number as people wrote it: a double's shortest text, which for what was typed is what was typed.</summary>
    internal static decimal Number(double value) =>
        decimal.Parse(value.ToString("R", CultureInfo.InvariantCulture), NumberStyles.Float, CultureInfo.InvariantCulture);

    private static decimal Number(Angle angle) => Number(angle.Degrees);

    private void Racks(List<Rack> levels)
    {
        string key = _racks.Key(levels[0].Name);
        Set(Things.Rack, key, ("name", levels[^1].Name), ("bed", Vocabulary.Beds.Word(levels[^1].Bedding)));
        DateOnly? first = levels.Min(l => l.ReadOn);
        foreach (Rack level in levels)
        {
            // One without a date counts as the oldest.
            DateOnly? day = level.ReadOn ?? first?.AddDays(-1);
            pen.Once(day, new RackLevelRead(key, Number(level.Attitude.BowHigh.Angle), Number(level.Attitude.PortLow.Angle), day));
        }
    }

    private void Boat(BoatTold told, List<Reading> readings)
    {
        string boat = _boats.Key(told.Boat);
        Set(Things.Boat, boat, ("name", told.Boat), ("class", told.Class.Name));
        DateOnly? first = readings.Select(r => r.Lie.Date).Concat(told.Reports.Select(r => r.Date)).Concat(told.Mendings.Select(m => m.Date)).Min();
        foreach (Report report in told.Reports)
        {
            DateOnly? day = report.Date ?? first;
            pen.Once(day, new Reported(boat, report.Kind, report.Gate?.Seat, report.Gate?.Side ?? report.Side, null, day));
        }

        foreach (Mended mended in told.Mendings)
        {
            pen.Once(mended.Date, mended.Date is { } day
                ? new GateMended(boat, mended.Gate.Seat, mended.Gate.Side, day)
                : new Noted(Things.Boat, boat, $"{mended.Gate}: mended, the day was not told"));
        }

        // What is laid after a move lies as it was moved to, where nothing else is said: those without a mark come before all moves.
        Dictionary<BoatLie, string> lyings = readings.Select(r => r.Lie).Distinct().OrderBy(l => l.Moved is not null)
            .ToDictionary(l => l, l => Laid(boat, l));
        foreach (Reading reading in readings)
        {
            pen.Once(reading.Lie.Date, Taken(boat, lyings[reading.Lie], reading));
        }
    }

    private void Rig(BoatMeasures boat)
    {
        foreach (WrittenMeasure measure in boat.Measures)
        {
            RigReading reading = measure.Reading;
            pen.Once(reading.Day, new MeasureTaken(
                _boats.Key(boat.Boat),
                reading.Measure.Word(),
                reading.Place.Seat,
                measure.Value,
                measure.Unit.Word(),
                measure.Side,
                reading.Day));
        }
    }

    /// <summary>Writes down how a boat lay, under a key made of just that: two files of one lying mean the same one.</summary>
    private string Laid(string boat, BoatLie lie)
    {
        HullAttitude? read = (lie.Level as HullLevel.Read)?.Attitude;
        var laid = new BoatLaid(
            lie.Moved ?? "",
            boat,
            lie.Lie,
            lie.Level switch
            {
                HullLevel.Read => LevelBasis.Read,
                HullLevel.BubbleCentred => LevelBasis.BubbleCentred,
                HullLevel.OfRack => LevelBasis.Rack,
                _ => LevelBasis.ByEye,
            },
            read is { } bow ? Number(bow.BowHigh.Angle) : null,
            read is { } port ? Number(port.PortLow.Angle) : null,
            lie.Level is HullLevel.OfRack { Rack: var rack } ? _racks.Key(rack.Name) : null,
            Date: lie.Date,
            Moved: lie.Moved is null ? null : true);
        string key = "lying-" + Convert.ToHexStringLower(SHA256.HashData(FactKinds.Write(laid).Body))[..16];
        pen.Once(lie.Date, laid with { Lying = key });
        return key;
    }

    private ReadingTaken Taken(string boat, string lying, Reading reading) => new(
        lying,
        boat,
        reading.Item,
        reading.Gate.Seat,
        reading.Gate.Side,
        Number(reading.Value),
        reading.Item == ReadItem.Gate ? reading.At.Station : null,
        reading.Item == ReadItem.Gate && reading.At.Station is null ? Number(reading.At.Angle.Angle) : null,
        Gauge(reading.Gauge.Name));

    private string? Gauge(string name)
    {
        if (name == ReadingsFormat.UnnamedGauge)
        {
            return null;
        }

        string key = _gauges.Key(name);
        if (_named.Add(key))
        {
            Set(Things.Gauge, key, ("name", name));
        }

        return key;
    }

    private void Note(ReadingNote note)
    {
        (string thing, string key) = note.Boat is { } boat ? (Things.Boat, _boats.Key(boat)) : (Things.Rack, _racks.Key(note.Rack!));
        string text = note.Gate is { } gate ? $"{gate}: {note.Text}" : note.Text;
        for (int i = 0; i < text.Length;)
        {
            int length = Math.Min(EntryRules.LongestText, text.Length - i);
            length -= i + length < text.Length && char.IsHighSurrogate(text[i + length - 1]) ? 1 : 0;
            pen.Once(null, new Noted(thing, key, text.Substring(i, length)));
            i += length;
        }
    }

    /// <summary>Sets those fields that are new or different.</summary>
    private void Set(string thing, string key, params ReadOnlySpan<(string Field, string Value)> fields)
    {
        var known = new ThingView(club, thing, key);
        var changed = new Dictionary<string, string?>();
        foreach ((string field, string value) in fields)
        {
            if (known[field] != value)
            {
                changed.Add(field, value);
            }
        }

        if (changed.Count > 0)
        {
            pen.New(new ThingSet(thing, key, changed));
        }
    }
}
