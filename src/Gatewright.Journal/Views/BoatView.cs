using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;
using Gatewright.Core.Rig;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;

namespace Gatewright.Journal.Views;

/// <summary>A boat as the journal tells it.</summary>
public sealed class BoatView
{
    private readonly Club _club;
    private readonly List<Recorded> _records = [];
    private readonly List<Recorded> _readings = [];
    private readonly List<Recorded> _others = [];
    private readonly Recorded? _until;

    /// <summary>The boat of a key.</summary>
    public BoatView(Club club, string key)
    {
        ArgumentNullException.ThrowIfNull(club);
        (_club, Key) = (club, key);
        Take(club.About(Subject.Boat(key)));
        Properties = new(club, Things.Boat, key);
    }

    private BoatView(BoatView whole, Recorded until)
    {
        (_club, Key, Properties) = (whole._club, whole.Key, whole.Properties);
        Take(whole._records.Where(r => RecordedOrder.Instance.Compare(r, until) < 0));
        _until = until;
    }

    private BoatView(BoatView before, Club club, IReadOnlyList<Recorded> added)
    {
        (_club, Key) = (club, before.Key);
        _records.AddRange(before._records);
        _readings.AddRange(before._readings);
        _others.AddRange(before._others);
        Take(added);
        Properties = added.Any(r => r.As<ThingSet>() is not null) ? new(club, Things.Boat, Key) : before.Properties;
    }

    /// <summary>The keys of a club's boats, in their own order; of those out of use too.</summary>
    /// <remarks>Shelves stand in another order each time the program runs: boats of one name would change places in every list.</remarks>
    public static IEnumerable<string> Keys(Club club)
    {
        ArgumentNullException.ThrowIfNull(club);
        return club.Subjects.Where(s => s.Thing == Things.Boat && s.Key.Length > 0).Select(s => s.Key).Order(StringComparer.Ordinal);
    }

    /// <summary>A club's boats, by key; those out of use too.</summary>
    public static IEnumerable<BoatView> All(Club club) => Keys(club).Select(key => new BoatView(club, key));

    /// <summary>Its key.</summary>
    public string Key { get; }

    /// <summary>Its properties.</summary>
    public ThingView Properties { get; }

    /// <summary>Its name, or its key while it has none.</summary>
    public string Name => Properties["name"] ?? Key;

    /// <summary>Its class; null until it is set.</summary>
    public BoatClass? Class => BoatClass.TryParse(Properties["class"]);

    /// <summary>Who rows it, as the club says; null until it does.</summary>
    public Crew? Crew => Crews.OfWord(Properties["crew"]);

    /// <summary>Whether it is no longer used.</summary>
    public bool IsOutOfUse => Properties.IsOutOfUse;

    /// <summary>All that holds of the boat, oldest first.</summary>
    public IReadOnlyList<Recorded> Records => _records;

    /// <summary>Of these the readings alone.</summary>
    internal IReadOnlyList<Recorded> Readings => _readings;

    /// <summary>All that is no reading, and of many years much less: what is asked of it at each tap does not go through the readings.</summary>
    internal IReadOnlyList<Recorded> Others => _others;

    /// <summary>The notes on it and on its gates; none on gates while its class is not known.</summary>
    internal IEnumerable<Recorded> Notes => _others
        .Where(r => r.As<Noted>() is not null)
        .Concat(Enumerable.Range(1, Class?.Seats ?? 0)
            .SelectMany(seat => Enum.GetValues<Side>().Select(side => new GatePlace(seat, side)))
            .SelectMany(gate => _club.About(new(Things.Gate, Things.GateKey(Key, gate)))
                .Where(r => r.As<Noted>() is not null)));

    /// <summary>The retractions that hold, of whatever in the club, oldest first.</summary>
    internal IEnumerable<(Recorded Retraction, Recorded Back)> TakenBack => _club.About(Subject.Journal)
        .Where(r => r.As<Retracted>() is not null)
        .Select(r => (r, Back: _club.Find(r.Retracts!.Value)))
        .Where(b => b.Back is not null)
        .Select(b => (b.r, b.Back!));

    /// <summary>The holds on it that no release has lifted; any of them keeps it off the water.</summary>
    /// <remarks>A release lifts those it names, wherever they stand in the journal; an older one names none, and lifts all before it.</remarks>
    public IReadOnlyList<Recorded> Holds
    {
        get
        {
            int released = _others.FindLastIndex(r => r.As<Released>() is { Lifts: null });
            HashSet<Guid> lifted = [.. _others.Select(r => r.As<Released>()).SelectMany(r => r?.Lifts ?? [])];
            return [.. _others.Skip(released + 1).Where(r => r.As<Held>() is not null && !lifted.Contains(r.Entry.Id))];
        }
    }

    /// <summary>Its jobs, oldest first; of a boat as it was, as far as they had come.</summary>
    public IReadOnlyList<JobView> Jobs => [.. _others.Where(r => r.As<JobPlanned>() is not null).Select(r => new JobView(_club, r, _until))];

    /// <summary>The boat by what had been recorded of it before an entry, under the name and class it has today.</summary>
    internal BoatView Before(Recorded entry) => new(this, entry);

    /// <summary>The boat in a club that came of the one this view is of, without going through its years once more where it only grew.</summary>
    /// <param name="club">The club.</param>
    /// <param name="added">All that came to the club, where it came to this boat alone; null where something else changed too.</param>
    internal BoatView In(Club club, out IReadOnlyList<Recorded>? added)
    {
        added = _until is null ? club.OnlyAdded(_club, Subject.Boat(Key)) : null;
        return added is null ? new(club, Key) : new(this, club, added);
    }

    /// <summary>What the core needs to check the boat; null until its class is known.</summary>
    public BoatRecord? Record(MeasuringSettings settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        if (Class is not { } boatClass)
        {
            return null;
        }

        var changes = new GateChanges(this);
        ILookup<bool, Recorded> readings = _readings.Where(r => r.Fact is ReadingTaken).ToLookup(changes.AreAfter);
        var view = new ReadingsView(_club, _others, boatClass, settings);
        return new(
            new(Name, boatClass, view.Readings(readings[false])),
            view.Readings(readings[true]),
            [.. _others.Where(r => !changes.IsMended(r)).Select(Report).OfType<Report>()])
        {
            Changes = changes.Last,
        };
    }

    /// <summary>What was read to prove a job, as the core takes it; nothing while the boat's class is not known.</summary>
    internal IReadOnlyList<Reading> ReadingsOf(string job, MeasuringSettings settings) =>
        AsRead(_readings.Where(r => r.Fact is ReadingTaken taken && taken.Job == job), settings, isNamed: true);

    /// <summary>Readings as the core takes them; none while the boat's class is not known, and none whose lying is not here.</summary>
    internal IReadOnlyList<Reading> AsRead(IEnumerable<Recorded> readings, MeasuringSettings settings, bool isNamed = false) => Class is { } boatClass
        ? new ReadingsView(_club, _others, boatClass, settings, isNamed).Readings(readings)
        : [];

    /// <summary>By its kind alone, so that nothing is read for it.</summary>
    private void Take(IEnumerable<Recorded> records)
    {
        string reading = FactKinds.NameOf<ReadingTaken>();
        foreach (Recorded record in records)
        {
            _records.Add(record);
            (record.Entry.Kind == reading ? _readings : _others).Add(record);
        }
    }

    private static Report? Report(Recorded record) => record.As<Reported>() is { } report
        ? new(
            report.Kind,
            report is { Seat: { } seat, Side: { } side } ? new GatePlace(seat, side) : null,
            report.Kind == ReportKind.DownToOneSide ? report.Side : null,
            Day.Of(record))
        : null;
}
