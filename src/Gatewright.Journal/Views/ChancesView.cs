using Gatewright.Core.Diagnosing;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;

namespace Gatewright.Journal.Views;

/// <summary>What a club's own finished jobs found, among how many things checked, since its chances were last reset.</summary>
/// <remarks>
/// A reset is a setting of the field <c>reset</c> of the settings <c>chances</c>; what was recorded after it counts. A gate
/// is looked at once in each round it was read in, or once a day outside rounds; an oar once a day its sleeve was read, a
/// boat once a day its level was known by more than the eye. What a look found is known only afterwards, when somebody has
/// mended what it showed or has looked again: so the last look at each counts for nothing yet. A gauge counts at each
/// reversal. A job that found something adds what it found to the things checked where fewer were looked at.
/// </remarks>
public sealed class ChancesView
{
    private const string Group = "chances";
    private const string ResetField = "reset";

    private readonly Guid? _reset;
    private readonly IReadOnlyCollection<Recorded> _takenBack;
    private readonly Dictionary<Subject, CountedShelf> _shelves = [];

    /// <summary>Counts a club's journal.</summary>
    public ChancesView(Club club)
        : this(club, (ChancesView?)null)
    {
    }

    /// <summary>Counts a club's journal; what has not changed since it was counted before is not counted again.</summary>
    public ChancesView(Club club, ChancesView? before)
        : this(club, Reset(club))
    {
        ArgumentNullException.ThrowIfNull(club);
        foreach (Subject subject in club.Subjects)
        {
            Count(club, subject, before);
        }

        Found = Sum();
    }

    private ChancesView(Club club, Entry? reset)
    {
        ArgumentNullException.ThrowIfNull(club);
        (_reset, _takenBack, Found) = (reset?.Id, club.Everything(Subject.Journal), FoundCauses.None);
    }

    /// <summary>The same, a little at a time: where there is one thread, whoever taps meanwhile is heard.</summary>
    /// <param name="club">The club.</param>
    /// <param name="before">What was counted before; null for nothing.</param>
    /// <param name="breathe">Called after each little, and awaited.</param>
    public static async Task<ChancesView> OfAsync(Club club, ChancesView? before, Func<ValueTask> breathe)
    {
        ArgumentNullException.ThrowIfNull(breathe);
        var counting = new ChancesView(club, Reset(club));
        foreach (Subject subject in club.Subjects)
        {
            if (!counting.IsCountedIn(club, subject, before))
            {
                await RecordReading.ReadAsync(club.Everything(subject), breathe).ConfigureAwait(true);
            }

            counting.Count(club, subject, before);
            await breathe().ConfigureAwait(true);
        }

        counting.Found = counting.Sum();
        return counting;
    }

    /// <summary>What was found.</summary>
    public FoundCauses Found { get; private set; }

    /// <summary>The chances that the club's own experience leaves of some.</summary>
    public PriorChances After(PriorChances basis)
    {
        ArgumentNullException.ThrowIfNull(basis);
        return basis.After(Found);
    }

    /// <summary>Whether an entry may change what is counted: where none that came is such, the counts are as before.</summary>
    public static bool Heeds(Recorded recorded)
    {
        ArgumentNullException.ThrowIfNull(recorded);
        return recorded.Fact is ReadingTaken or BoatLaid or GaugeReversed or Retracted or JobDone { Found: not null }
            or ThingSet { Thing: Things.Settings, Key: Group };
    }

    private static Entry? Reset(Club club) => new ThingView(club, Things.Settings, Group).Holding(ResetField)?.Entry;

    private bool IsCountedIn(Club club, Subject subject, ChancesView? before) =>
        before is not null
        && before._reset == _reset
        && ReferenceEquals(before._takenBack, _takenBack)
        && before._shelves.TryGetValue(subject, out CountedShelf? counted)
        && ReferenceEquals(counted.Shelf, club.Everything(subject));

    private void Count(Club club, Subject subject, ChancesView? before) => _shelves[subject] = IsCountedIn(club, subject, before)
        ? before!._shelves[subject]
        : CountedShelf.Of(club, club.Everything(subject), _reset is { } reset ? club.Find(reset)?.Entry : null);

    private FoundCauses Sum()
    {
        ILookup<Cause, Cause> found = _shelves.Values.SelectMany(s => s.Found).ToLookup(c => c);
        int Count(Cause cause) => found[cause].Count();

        return new()
        {
            GatePitch = Count(Cause.GatePitch),
            PinAft = Count(Cause.PinAft),
            PinOut = Count(Cause.PinOut),
            Rigger = Count(Cause.Rigger),
            Sleeve = Count(Cause.Sleeve),
            HullLevel = Count(Cause.HullLevel),
            GaugeZero = Count(Cause.GaugeZero),
            GatesChecked = Math.Max(_shelves.Values.Sum(s => s.Gates), _shelves.Values.Sum(s => s.GatesFound)),
            OarsChecked = Math.Max(_shelves.Values.Sum(s => s.Oars), Count(Cause.Sleeve)),
            BoatsChecked = Math.Max(_shelves.Values.Sum(s => s.Boats), Count(Cause.HullLevel)),
            GaugesChecked = Math.Max(_shelves.Values.Sum(s => s.Gauges), Count(Cause.GaugeZero)),
        };
    }
}
