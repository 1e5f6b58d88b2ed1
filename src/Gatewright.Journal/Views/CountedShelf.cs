using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;

namespace Gatewright.Journal.Views;

/// <summary>What one shelf of the journal adds to what a club's chances are counted from; without the last look at each thing.</summary>
/// <param name="Shelf">The shelf.</param>
/// <param name="Gates">How often its gates were looked at.</param>
/// <param name="Oars">Its oars.</param>
/// <param name="Boats">The level of its boat.</param>
/// <param name="Gauges">Its gauge.</param>
/// <param name="Found">What its finished jobs found.</param>
/// <param name="GatesFound">At how many gates they found it: one may have several causes.</param>
internal sealed record CountedShelf(
    IReadOnlyCollection<Recorded> Shelf, int Gates, int Oars, int Boats, int Gauges, IReadOnlyList<Cause> Found, int GatesFound)
{
    /// <summary>Counts a shelf from a reset on.</summary>
    public static CountedShelf Of(Club club, IReadOnlyCollection<Recorded> shelf, Entry? reset)
    {
        var counting = new Counting();
        List<(Recorded Record, ReadingTaken Reading)> read = [];
        foreach (Recorded record in shelf)
        {
            // A lying is told before or after what was read on it: readings wait until all are known.
            if (club.IsRetracted(record) || (reset is not null && EntryOrder.Instance.Compare(record.Entry, reset) <= 0))
            {
                continue;
            }

            if (record.Fact is ReadingTaken reading)
            {
                read.Add((record, reading));
            }
            else
            {
                counting.Take(record);
            }
        }

        foreach ((Recorded record, ReadingTaken reading) in read)
        {
            counting.Take(record, reading);
        }

        return counting.Of(shelf);
    }

    /// <summary>Loops and sets, no queries: in a browser this is done for fifty thousand entries on a phone's one thread.</summary>
    private sealed class Counting
    {
        private readonly Dictionary<string, BoatLaid> _lyings = [];
        private readonly HashSet<(int Seat, Side Side, string? Round, DateOnly Day)> _gates = [];
        private readonly HashSet<(int Seat, Side Side, DateOnly Day)> _oars = [];
        private readonly HashSet<GatePlace> _lookedAt = [];
        private readonly HashSet<GatePlace> _oarsAt = [];
        private readonly HashSet<DateOnly> _levels = [];
        private readonly List<Cause> _found = [];
        private int _gauges;
        private int _gatesFound;

        public void Take(Recorded record)
        {
            switch (record.Fact)
            {
                case BoatLaid laid:
                    _lyings[laid.Lying] = laid;
                    if (laid.Level != LevelBasis.ByEye)
                    {
                        _levels.Add(Day.Of(record));
                    }

                    break;
                case GaugeReversed:
                    _gauges++;
                    break;
                case JobDone done:
                    _found.AddRange(done.All);
                    _gatesFound += done.All.Any(c => c is Cause.GatePitch or Cause.PinAft or Cause.PinOut or Cause.Rigger) ? 1 : 0;
                    break;
                default:
                    break;
            }
        }

        public void Take(Recorded record, ReadingTaken reading)
        {
            BoatLaid? laid = _lyings.GetValueOrDefault(reading.Lying);
            if (reading.Item == ReadItem.Sleeve)
            {
                _oarsAt.Add(new(reading.Seat, reading.Side));
                _oars.Add((reading.Seat, reading.Side, laid?.Date ?? Day.Of(record.Entry)));
            }
            else
            {
                _lookedAt.Add(new(reading.Seat, reading.Side));
                _gates.Add((reading.Seat, reading.Side, laid?.Round, laid?.Round is null ? laid?.Date ?? Day.Of(record.Entry) : default));
            }
        }

        public CountedShelf Of(IReadOnlyCollection<Recorded> shelf) => new(
            shelf, _gates.Count - _lookedAt.Count, _oars.Count - _oarsAt.Count, Math.Max(0, _levels.Count - 1), _gauges, _found, _gatesFound);
    }
}
