using Gatewright.Cli.CheckShed;
using Gatewright.Cli.Clubs.Keeping;
using Gatewright.Cli.Clubs.Looking;
using Gatewright.Cli.Terminals;
using Gatewright.Core;
using Gatewright.Core.Changing;
using Gatewright.Core.Checking;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Core.Mending;
using Gatewright.Core.Rig;
using Gatewright.Journal.Changing;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Rigging;
using Gatewright.Journal.Views;

namespace Gatewright.Cli.Changing;

/// <summary>The rigs of files or of a club, found by the names of their boats; what is wrong is gathered.</summary>
internal sealed class KnownRigs
{
    private readonly Dictionary<string, Func<DateOnly?, string, RigOfBoat?>> _boats = new(StringComparer.OrdinalIgnoreCase);
    private readonly List<InputProblem> _errors = [];
    private readonly Club? _club;

    private KnownRigs(Club? club) => _club = club;

    /// <summary>What is wrong.</summary>
    public IReadOnlyList<InputProblem> Errors => _errors;

    /// <summary>How many more errors there are.</summary>
    public int Beyond { get; private init; }

    /// <summary>The club's shelf; null of files, or where it was never counted.</summary>
    public Stores? Stores => _club is null ? null : ClubShelf.Of(_club);

    /// <summary>Those of files or of a club.</summary>
    public static KnownRigs Of(ChangingRequest request, Terminal terminal)
    {
        if (request.Place is { } place)
        {
            var errors = new List<InputProblem>();
            OpenedClub? opened = ClubChoice.OpenAsync(place, errors, CancellationToken.None).GetAwaiter().GetResult();
            var ofClub = new KnownRigs(opened?.Club);
            ofClub._errors.AddRange(errors);
            ofClub.AddClub();
            return ofClub;
        }

        using OpenSources sources = OpenSources.Of(request.Files, request.Command, terminal);
        ReadingsInput readings = ReadingsCsv.Read(sources.Readable, MeasuringSettings.Default);
        var rigs = new KnownRigs(null) { Beyond = readings.ErrorsBeyond };
        rigs._errors.AddRange([.. sources.Errors, .. readings.Errors]);
        foreach (string name in readings.Records.Select(r => r.Current.Boat).Concat(readings.Measures.Select(m => m.Boat)).Distinct())
        {
            rigs._boats[name] = (day, called) => OfFile(
                readings.Records.FirstOrDefault(r => r.Current.Boat == name), readings.Measures.FirstOrDefault(m => m.Boat == name), day, called);
        }

        return rigs;
    }

    /// <summary>A boat's rig, or null and an error. Without a name it is the only boat there is.</summary>
    /// <param name="option">What named it.</param>
    /// <param name="name">The boat.</param>
    /// <param name="day">The day; null for today.</param>
    public RigOfBoat? Find(string option, string? name, DateOnly? day)
    {
        if (_errors.Count > 0)
        {
            return null;
        }

        string known = string.Join(", ", _boats.Keys.Order(StringComparer.OrdinalIgnoreCase));
        if (name is null && _boats.Count != 1)
        {
            _errors.Add(new(option, null, null, null, $"say which boat is meant: {known}."));
            return null;
        }

        string boat = name?.Trim() ?? _boats.Keys.Single();
        if (!_boats.TryGetValue(boat, out Func<DateOnly?, string, RigOfBoat?>? rig))
        {
            _errors.Add(new(option, null, null, boat, $"is none of the boats whose rig is known: {known}."));
            return null;
        }

        string called = _boats.Keys.Single(k => k.Equals(boat, StringComparison.OrdinalIgnoreCase));
        RigOfBoat? found = rig(day, day is { } on ? $"{called}, {DayArgument.Text(on)}" : called);
        if (found is null)
        {
            _errors.Add(new(option, null, null, boat, "nothing of its rig is known then."));
        }

        return found;
    }

    /// <summary>Says that what was asked for cannot be.</summary>
    public void Refuse(string option, string? value, string why) => _errors.Add(new(option, null, null, value, why));

    /// <summary>A rig that the club keeps under a name, for a boat; or null and an error.</summary>
    public TargetRig? Kept(string name, RigOfBoat rig, string boat)
    {
        List<KeptRig> kept = _club is null ? [] : [.. KeptRigs.All(_club).Where(k => k.Class == rig.Class)];
        if (kept.Find(k => k.Name.Equals(name.Trim(), StringComparison.OrdinalIgnoreCase)) is { } one)
        {
            return KeptRigs.Target(_club!, one, KeyOf(boat) ?? string.Empty, rig.Gates);
        }

        _errors.Add(new("--to", null, null, name, kept.Count == 0
            ? $"no rig for {rig.Class} is kept under a name."
            : $"is none of the rigs kept for {rig.Class}: {string.Join(", ", kept.Select(k => k.Name))}."));
        return null;
    }

    /// <summary>The rig that a crew wants: by the club's targets, else by the starting ones.</summary>
    public TargetRig ForCrew(Crew crew, RigOfBoat rig, string boat)
    {
        string name = Words.Wording.English.Rig.Crew(crew);
        return _club is { } club && KeyOf(boat) is { } key && new BoatView(club, key) is var view && TargetsView.Of(club, view, crew) is { } targets
            ? CrewRig.Of(name, rig, targets, ClubSettings.Of(club, view))
            : CrewRig.Of(name, rig, RigTargets.Starting(rig.Class, crew), Standard.Club);
    }

    private static RigOfBoat? OfFile(BoatRecord? record, BoatMeasures? measures, DateOnly? day, string called)
    {
        IReadOnlyList<Reading> read = record is null ? [] : [.. record.Current.Readings.Where(r => day is null || r.Lie.Date <= day)];
        List<RigReading> taken = Latest(measures?.Readings.Where(r => day is null || r.Day <= day) ?? []);
        if (read.Count + taken.Count == 0)
        {
            return null;
        }

        BoatClass boatClass = record?.Current.Class ?? measures!.Class;
        List<RigValue> values = [.. RigValues.Of(taken)];
        if (record is not null && read.Count > 0)
        {
            values.AddRange(RigValues.Of((record with { Current = record.Current with { Readings = read } }).Check(RigOnRecord.LastDay(CheckSettings.Default))));
        }

        return RigOfBoat.Of(called, boatClass, Gates(boatClass, record, taken), values);
    }

    /// <summary>Of each place what was taken on its last day.</summary>
    private static List<RigReading> Latest(IEnumerable<RigReading> taken) =>
        [.. taken.GroupBy(r => (r.Measure, r.Place)).SelectMany(g => g.Where(r => r.Day == g.Max(o => o.Day)))];

    /// <summary>In sweep on the sides that the file says, else on the usual ones with stroke on port (common practice).</summary>
    private static IReadOnlyList<GatePlace> Gates(BoatClass boatClass, BoatRecord? record, List<RigReading> taken)
    {
        if (boatClass.Rowing == Rowing.Scull)
        {
            return [.. Enumerable.Range(1, boatClass.Seats).SelectMany(seat => new GatePlace[] { new(seat, Side.Port), new(seat, Side.Starboard) })];
        }

        Dictionary<int, Side> sides = [];
        foreach (RigReading reading in taken.Where(r => r.Place.Side is not null))
        {
            sides[reading.Place.Seat] = reading.Place.Side!.Value;
        }

        foreach (Reading reading in record?.Current.Readings ?? [])
        {
            sides[reading.Gate.Seat] = reading.Gate.Side;
        }

        return [.. Enumerable.Range(1, boatClass.Seats).Select(seat => new GatePlace(
            seat, sides.TryGetValue(seat, out Side side) ? side : (boatClass.Seats - seat) % 2 == 0 ? Side.Port : Side.Starboard))];
    }

    private void AddClub()
    {
        if (_club is not { } club)
        {
            return;
        }

        CheckSettings settings = ClubSettings.Of(club);
        var titles = new ThingTitles(club, Things.Boat);
        foreach (Subject boat in club.Subjects.Where(s => s.Thing == Things.Boat && s.Key.Length > 0))
        {
            _boats[titles[boat.Key]] = (day, called) => RigOnRecord.On(club, boat.Key, day, settings, called);
        }
    }

    private string? KeyOf(string boat)
    {
        var titles = new ThingTitles(_club!, Things.Boat);
        return _club!.Subjects.Where(s => s.Thing == Things.Boat && s.Key.Length > 0).Select(s => s.Key)
            .FirstOrDefault(k => titles[k].Equals(boat.Trim(), StringComparison.OrdinalIgnoreCase));
    }
}
