using Gatewright.Cli.CheckShed;
using Gatewright.Cli.Clubs.Keeping;
using Gatewright.Cli.Terminals;
using Gatewright.Core.Changing;
using Gatewright.Core.Checking;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Core.Mending;
using Gatewright.Core.Rig;
using Gatewright.Journal.Changing;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Exchange.Recording;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Rigging;
using Gatewright.Journal.Views;
using Gatewright.Words;

namespace Gatewright.Cli.Changing;

/// <summary>The rigs of files or of a club, found by the names of their boats; what is wrong is gathered.</summary>
internal sealed class KnownRigs
{
    private const string FromFiles = "files";
    private readonly Dictionary<string, Func<DateOnly?, string, RigOfBoat?>> _boats = new(StringComparer.OrdinalIgnoreCase);
    private readonly List<InputProblem> _errors = [];
    private readonly Club _club;

    private KnownRigs(Club club) => _club = club;

    /// <summary>What is wrong.</summary>
    public IReadOnlyList<InputProblem> Errors => _errors;

    /// <summary>How many more errors there are.</summary>
    public int Beyond { get; private init; }

    /// <summary>The club's shelf; null where it was never counted, as of files.</summary>
    public Stores? Stores => ClubShelf.Of(_club);

    /// <summary>Those of files or of a club. Files are one club's, as if they had been recorded today.</summary>
    public static KnownRigs Of(ChangingRequest request, Terminal terminal)
    {
        if (request.Place is { } place)
        {
            var errors = new List<InputProblem>();
            OpenedClub? opened = ClubChoice.Open(place, errors);
            var ofClub = new KnownRigs(opened?.Club ?? Club.Empty(FromFiles));
            ofClub._errors.AddRange(errors);
            ofClub.Add(ClubSettings.Of(ofClub._club), _ => true);
            return ofClub;
        }

        using OpenSources sources = OpenSources.Of(request.Files, request.Command, terminal);
        ReadingsInput readings = ReadingsCsv.Read(sources.Readable, MeasuringSettings.Default);
        Club club = Club.Empty(FromFiles);
        if (readings.Errors.Count == 0)
        {
            DateTimeOffset now = DateTimeOffset.UtcNow;
            var stamp = new RecordingStamp(FromFiles, FromFiles, default, now, () => Guid.CreateVersion7(now));
            club = club.With(ReadingsRecording.Entries(readings, club, stamp).Entries.Select(Recorded.Of));
        }

        var rigs = new KnownRigs(club) { Beyond = readings.ErrorsBeyond };
        rigs._errors.AddRange([.. sources.Errors, .. readings.Errors]);

        // Of what a file tells nothing is learnt, and a boat of which nothing was taken by then is not known.
        rigs.Add(CheckSettings.Default, rig => rig.Values.Count > 0);
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
        RigOfBoat? found = rig(day, day is { } on ? $"{called}, {Language.English.Day(on)}" : called);
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
        List<KeptRig> kept = [.. KeptRigs.All(_club).Where(k => k.Class == rig.Class)];
        if (kept.Find(k => k.Name.Equals(name.Trim(), StringComparison.OrdinalIgnoreCase)) is { } one)
        {
            return KeptRigs.Target(_club, one, KeyOf(boat) ?? string.Empty, rig.Gates);
        }

        _errors.Add(new("--to", null, null, name, kept.Count == 0
            ? $"no rig for {rig.Class} is kept under a name."
            : $"is none of the rigs kept for {rig.Class}: {string.Join(", ", kept.Select(k => k.Name))}."));
        return null;
    }

    /// <summary>The rig that a crew wants: by the club's targets, else by the starting ones.</summary>
    public TargetRig ForCrew(Crew crew, RigOfBoat rig, string boat)
    {
        string name = Words.Wording.English.Rig.TargetsFor(crew);
        return KeyOf(boat) is { } key && new BoatView(_club, key) is var view && TargetsView.Of(_club, view, crew) is { } targets
            ? CrewRig.Of(name, rig, targets, ClubSettings.Of(_club, view))
            : CrewRig.Of(name, rig, RigTargets.Starting(rig.Class, crew), Standard.Club);
    }

    /// <summary>What a boat is judged by.</summary>
    public Standard StandardOf(string boat) =>
        KeyOf(boat) is { } key ? ClubSettings.Of(_club, new BoatView(_club, key)) : Standard.Club;

    /// <summary>A boat's key by its name; null where there is none of that name.</summary>
    public string? KeyOf(string boat)
    {
        var titles = new ThingTitles(_club, Things.Boat);
        return BoatView.Keys(_club)
            .FirstOrDefault(k => titles[k].Equals(boat.Trim(), StringComparison.OrdinalIgnoreCase));
    }

    private void Add(CheckSettings settings, Func<RigOfBoat, bool> isKnown)
    {
        var titles = new ThingTitles(_club, Things.Boat);
        foreach (string boat in BoatView.Keys(_club))
        {
            _boats[titles[boat]] = (day, called) => RigOnRecord.On(_club, boat, day, settings, called) is { } rig && isKnown(rig) ? rig : null;
        }
    }
}
