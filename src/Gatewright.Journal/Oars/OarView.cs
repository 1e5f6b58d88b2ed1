using System.Globalization;
using Gatewright.Core;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Core.Oars;
using Gatewright.Core.Rig;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Rigging;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Oars;

/// <summary>An oar as the journal tells it.</summary>
public sealed class OarView
{
    private readonly ThingView _fields;
    private readonly List<Recorded> _readings = [];

    internal OarView(Club club, string key, string title, OarSessions sessions, string? bladeOfSet)
    {
        _fields = new(club, Things.Oar, key);
        (Key, Title) = (key, title);
        Blade = Text(_fields["blade"]) ?? bladeOfSet;
        foreach (Recorded record in club.About(new(Things.Oar, key)))
        {
            if (record.As<OarRead>() is not null)
            {
                _readings.Add(record);
            }
        }

        // A stable sort: of one day the journal's own order stays.
        _readings = [.. _readings.OrderBy(Day.Of)];
        Oar = new(
            key, title, Side, Blade, Sleeve(sessions), Length(OarItem.Length), Length(OarItem.Inboard), Weight());
    }

    /// <summary>Its key.</summary>
    public string Key { get; }

    /// <summary>What it is called where a name has to tell it from the others.</summary>
    public string Title { get; }

    /// <summary>Its name as it was set; null for none.</summary>
    public string? Name => _fields["name"];

    /// <summary>The set it belongs to; null for none.</summary>
    public string? Set => Text(_fields["set"]);

    /// <summary>The boat it is rowed in; null for none.</summary>
    public string? Boat => Text(_fields["boat"]);

    /// <summary>The seat it is rowed at; null where that is not said.</summary>
    public int? Seat => Number(_fields["seat"]) is >= 1 and <= 8 and { } seat ? (int)seat : null;

    /// <summary>The entry that put it where it is rowed, with its day and whoever said so: the later of those of its boat and its seat; null where it is rowed in no boat.</summary>
    public Entry? Placed
    {
        get
        {
            Entry? boat = Boat is null ? null : _fields.Holding("boat")?.Entry;
            Entry? seat = Boat is null ? null : _fields.Holding("seat")?.Entry;
            return boat is null || (seat is not null && seat.Time > boat.Time) ? seat : boat;
        }
    }

    /// <summary>The side it is made for, or rowed on.</summary>
    public Side? Side => Sides.OfWord(_fields["side"]);

    /// <summary>The shape of its blade; its own, else its set's.</summary>
    public string? Blade { get; }

    /// <summary>Whether it was taken out of use.</summary>
    public bool IsOutOfUse => _fields.IsOutOfUse;

    /// <summary>The oar with its latest figures, as the core takes it.</summary>
    public Oar Oar { get; }

    /// <summary>All that was read of it and holds, oldest first: facts are <see cref="OarRead"/>.</summary>
    public IReadOnlyList<Recorded> Readings => _readings;

    /// <summary>What the gauge is called that read its sleeve last; null while none did.</summary>
    internal string? SleeveGauge { get; private set; }

    /// <summary>Its fields, with all they ever were.</summary>
    public ThingView Fields => _fields;

    /// <summary>The latest occasion counts, and of it all readings taken with its last reading's gauge and way round.</summary>
    private OarFigure? Sleeve(OarSessions sessions)
    {
        if (Last(OarItem.Sleeve) is not { } last)
        {
            return null;
        }

        var read = (OarRead)last.Fact;
        GunwaleSession session = sessions.Of(last);
        Gauge gauge = sessions.Gauge(read.Gauge);
        SleeveGauge = gauge.Name;
        var same = new List<SleeveReading>();
        foreach (Recorded record in _readings)
        {
            if (record.Fact is OarRead { Item: OarItem.Sleeve } one && one.Session == read.Session && one.Gauge == read.Gauge && one.Laid == read.Laid)
            {
                same.Add(new(Angle.FromDegrees((double)one.Value), session, gauge, one.Laid ?? OarLaid.HandleOut));
            }
        }

        return sessions.Figures.Sleeve(same, Blade);
    }

    /// <summary>What was read last, with what agrees with it of that day; else what the oar's form states.</summary>
    private OarFigure? Length(OarItem item)
    {
        if (Last(item) is { } last)
        {
            return OarFigures.Length(item, [.. AgreeingReadings.Of(OnDay(item, Day.Of(last)), cm => cm, OwnU(item))], Day.Of(last));
        }

        return Number(_fields[item.Word()]) is { } stated ? OarFigures.Length(item, [(double)stated], null) : null;
    }

    private static double OwnU(OarItem item) =>
        RigErrors.Usual(item == OarItem.Length ? RigMeasure.OarLength : RigMeasure.Inboard).Own;

    private OarFigure? Weight()
    {
        if (Last(OarItem.Weight) is { } last)
        {
            return OarFigures.Default.Weight(OnDay(OarItem.Weight, Day.Of(last)), Day.Of(last));
        }

        return Number(_fields["weight"]) is { } stated ? OarFigures.Default.Weight([(double)stated], null) : null;
    }

    /// <summary>The last reading of an item; null for never.</summary>
    public Recorded? Last(OarItem item) => _readings.FindLast(r => ((OarRead)r.Fact).Item == item);

    private List<double> OnDay(OarItem item, DateOnly day)
    {
        var values = new List<double>();
        foreach (Recorded record in _readings)
        {
            if (record.Fact is OarRead read && read.Item == item && Day.Of(record) == day)
            {
                values.Add((RigUnits.OfWord(read.Unit ?? "cm") ?? RigUnit.Centimetres).InOwn((double)read.Value));
            }
        }

        return values;
    }

    private static string? Text(string? value) => string.IsNullOrWhiteSpace(value) ? null : value;

    private static decimal? Number(string? value) =>
        decimal.TryParse(value, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal number)
            ? number
            : null;
}
