using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;
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
    private const string Reset = "reset";

    /// <summary>Counts a club's journal.</summary>
    public ChancesView(Club club)
    {
        ArgumentNullException.ThrowIfNull(club);
        List<Recorded> since = [.. Since(club)];
        ILookup<Cause, Cause> found = since.Select(r => (r.Fact as JobDone)?.Found).OfType<Cause>().ToLookup(c => c);
        int Count(params ReadOnlySpan<Cause> causes)
        {
            int sum = 0;
            foreach (Cause cause in causes)
            {
                sum += found[cause].Count();
            }

            return sum;
        }

        var visits = new Visits(since);
        Found = new()
        {
            GatePitch = Count(Cause.GatePitch),
            PinAft = Count(Cause.PinAft),
            PinOut = Count(Cause.PinOut),
            Rigger = Count(Cause.Rigger),
            Sleeve = Count(Cause.Sleeve),
            HullLevel = Count(Cause.HullLevel),
            GaugeZero = Count(Cause.GaugeZero),
            GatesChecked = Math.Max(visits.Gates, Count(Cause.GatePitch, Cause.PinAft, Cause.PinOut, Cause.Rigger)),
            OarsChecked = Math.Max(visits.Oars, Count(Cause.Sleeve)),
            BoatsChecked = Math.Max(visits.Boats, Count(Cause.HullLevel)),
            GaugesChecked = Math.Max(visits.Gauges, Count(Cause.GaugeZero)),
        };
    }

    /// <summary>What was found.</summary>
    public FoundCauses Found { get; }

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

    private static IEnumerable<Recorded> Since(Club club)
    {
        IEnumerable<Recorded> holding = club.Unsorted.Where(r => !club.IsRetracted(r));
        return new ThingView(club, Things.Settings, Group).Holding(Reset)?.Entry is { } reset
            ? holding.Where(r => Entries.EntryOrder.Instance.Compare(r.Entry, reset) > 0)
            : holding;
    }

    /// <summary>How often things were looked at.</summary>
    private sealed class Visits
    {
        public Visits(List<Recorded> records)
        {
            // Of a lying told twice the later counts; of all else no order does.
            List<Recorded> laid = [.. records.Where(r => r.Fact is BoatLaid).Order(RecordedOrder.Instance)];
            var days = new BoatDays(laid);
            Dictionary<string, BoatLaid> lyings = [];
            foreach (BoatLaid told in laid.Select(r => (BoatLaid)r.Fact))
            {
                lyings[told.Lying] = told;
            }

            string When(Recorded record, string lying) => lyings.GetValueOrDefault(lying)?.Round ?? FormattableString.Invariant($"{days.Of(record):yyyy-MM-dd}");
            List<(Recorded Record, ReadingTaken Reading)> read = [.. records.Where(r => r.Fact is ReadingTaken).Select(r => (r, (ReadingTaken)r.Fact))];
            Gates = Settled(
                read.Where(r => r.Reading.Item != ReadItem.Sleeve),
                r => (r.Reading.Boat, r.Reading.Seat, r.Reading.Side),
                r => When(r.Record, r.Reading.Lying));
            Oars = Settled(
                read.Where(r => r.Reading.Item == ReadItem.Sleeve),
                r => (r.Reading.Boat, r.Reading.Seat, r.Reading.Side),
                r => days.Of(r.Record));
            Boats = Settled(
                records.Where(r => r.Fact is BoatLaid { Level: not LevelBasis.ByEye }),
                r => ((BoatLaid)r.Fact).Boat,
                days.Of);
            Gauges = records.Count(r => r.Fact is GaugeReversed);
        }

        /// <summary>How many looks there were, without the last at each thing.</summary>
        private static int Settled<TLook, TThing, TWhen>(IEnumerable<TLook> looks, Func<TLook, TThing> thing, Func<TLook, TWhen> when) =>
            looks.GroupBy(thing).Sum(of => of.Select(when).Distinct().Count() - 1);

        public int Gates { get; }

        public int Oars { get; }

        public int Boats { get; }

        public int Gauges { get; }
    }
}
