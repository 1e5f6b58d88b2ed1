using Gatewright.Core;
using Gatewright.Core.Rig;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Rigging;

/// <summary>
/// A boat's rig as the journal tells it: what was measured, by whom and when, what of it the rig is judged by, and the
/// targets. An oar read by itself tells of the gate it is rowed at; what was set and not taken since holds as what was aimed at.
/// As of a day it is the view of the club as it was then: <see cref="ClubOnDay"/>.
/// </summary>
public sealed class RigView
{
    private readonly List<TakenMeasure> _taken = [];

    /// <summary>The rig of a boat, for the crew that the club says rows it.</summary>
    public RigView(Club club, BoatView boat)
        : this(club, boat, boat?.Crew)
    {
    }

    /// <summary>The rig of a boat for a crew; null for women and men alike.</summary>
    public RigView(Club club, BoatView boat, Crew? crew)
    {
        ArgumentNullException.ThrowIfNull(club);
        ArgumentNullException.ThrowIfNull(boat);
        (Boat, Crew) = (boat, crew);
        Gates = BoatGates.Of(club, boat);
        Targets = TargetsView.Of(club, boat, crew);
        List<OtherFigure> others = [.. OarsOfBoat.Read(club, boat.Key, Gates)];
        OfOars = [.. others];
        foreach (Recorded record in boat.Records)
        {
            if (record.As<MeasureTaken>() is { } taken && Read(taken, Day.Of(record)) is { } reading)
            {
                _taken.Add(new(record, reading));
            }
            else if (record.As<MeasureSet>() is { } set && Read(set, Day.Of(record)) is { } aim)
            {
                others.Add(new(record, aim, null));
            }
        }

        // A stable sort: of one day the journal's own order stays.
        _taken = [.. _taken.OrderBy(t => t.Day)];
        Others = [.. others.Where(o => HasGate(o.Reading.Place)).GroupBy(o => (o.Reading.Measure, o.Reading.Place)).SelectMany(Newest)
            .OrderBy(o => o.Reading.Measure).ThenBy(o => o.Reading.Place)];
        Current = [.. _taken.Where(t => HasGate(t.Reading.Place) && Other(t.Reading.Measure, t.Reading.Place) is null)
            .GroupBy(t => (t.Reading.Measure, t.Reading.Place)).SelectMany(Latest)
            .OrderBy(t => t.Reading.Measure).ThenBy(t => t.Reading.Place)];
    }

    /// <summary>The boat.</summary>
    public BoatView Boat { get; }

    /// <summary>Its gates; none while its class is not known.</summary>
    public IReadOnlyList<GatePlace> Gates { get; }

    /// <summary>Who rows it; null while nobody has said.</summary>
    public Crew? Crew { get; }

    /// <summary>Its targets; null while its class is not known.</summary>
    public RigTargets? Targets { get; }

    /// <summary>All that holds and is understood, oldest first. Words and units that this program does not know are passed over.</summary>
    public IReadOnlyList<TakenMeasure> Taken => _taken;

    /// <summary>
    /// What the rig is judged by, measure by measure from the bow: of each place what was taken on its last day. Of that
    /// day it is the last, with those before it that agree: a rig is set and measured again within minutes.
    /// </summary>
    public IReadOnlyList<TakenMeasure> Current { get; }

    /// <summary>What holds at the places where nothing that was taken on the boat does: read of an oar, or set and not taken since.</summary>
    public IReadOnlyList<OtherFigure> Others { get; }

    /// <summary>All that was read by themselves of the oars that are rowed here.</summary>
    public IReadOnlyList<OtherFigure> OfOars { get; }

    /// <summary>All that holds, as the core takes it.</summary>
    public IReadOnlyList<RigReading> Readings => [.. Current.Select(t => t.Reading), .. Others.Select(o => o.Reading)];

    /// <summary>What holds at a place though it was not taken on the boat; null where what was taken holds, or nothing is known.</summary>
    public OtherFigure? Other(RigMeasure measure, RigPlace place)
    {
        foreach (OtherFigure other in Others)
        {
            if (other.Reading.Measure == measure && other.Reading.Place == place)
            {
                return other;
            }
        }

        return null;
    }

    /// <summary>All that was taken at a place, newest first.</summary>
    public IReadOnlyList<TakenMeasure> History(RigMeasure measure, RigPlace place) =>
        [.. _taken.Where(t => t.Reading.Measure == measure && t.Reading.Place == place).Reverse()];

    /// <summary>Where a measure is taken on this boat, from the bow; nowhere while its class is not known, or where it has no such measure.</summary>
    public IReadOnlyList<RigPlace> Places(RigMeasure measure)
    {
        if (Boat.Class is not { } boatClass || !measure.IsOf(boatClass.Rowing))
        {
            return [];
        }

        return measure.HasSide()
            ? [.. Gates.Select(g => new RigPlace(g.Seat, g.Side))]
            : [.. Enumerable.Range(1, boatClass.Seats).Select(seat => new RigPlace(seat, null))];
    }

    /// <summary>A measure in its own unit and at a place the boat has; null where it is not understood.</summary>
    private RigReading? Read(MeasureTaken taken, DateOnly day)
    {
        if (RigMeasures.OfWord(taken.Measure) is not { } measure
            || RigUnits.OfWord(taken.Unit) is not { } unit
            || !measure.Takes(unit)
            || Boat.Class is not { } boatClass
            || !measure.IsOf(boatClass.Rowing)
            || taken.Seat < 1 || taken.Seat > boatClass.Seats)
        {
            return null;
        }

        Side? side = measure.HasSide() ? taken.Side ?? OnlySide(taken.Seat, boatClass) : null;
        return measure.HasSide() && side is null ? null : new(measure, new(taken.Seat, side), unit.InOwn((double)taken.Value), day);
    }

    /// <summary>What was set, in the same way; no unit of these has a zero of its own, so that u goes over as the value does.</summary>
    private RigReading? Read(MeasureSet set, DateOnly day) =>
        Read(new MeasureTaken(set.Boat, set.Measure, set.Seat, set.Value, set.Unit, set.Side), day) is { } reading
            ? reading with { SetU = RigUnits.OfWord(set.Unit)!.Value.InOwn((double)set.U) }
            : null;

    /// <summary>Of one place what is newest, unless what was taken on the boat is newer: of an oar its last day, as of the boat, of what was set the last.</summary>
    private IEnumerable<OtherFigure> Newest(IEnumerable<OtherFigure> ofPlace)
    {
        List<OtherFigure> all = [.. ofPlace.OrderBy(o => o.Day).ThenBy(o => o.Record, RecordedOrder.Instance)];
        OtherFigure last = all[^1];
        TakenMeasure? taken = _taken.FindLast(t => t.Reading.Measure == last.Reading.Measure && t.Reading.Place == last.Reading.Place);
        bool isOlder = taken is not null
            && (taken.Day != last.Day ? taken.Day > last.Day : RecordedOrder.Instance.Compare(taken.Record, last.Record) > 0);
        return isOlder ? []
            : last.Oar is null ? [last]
            : Agreeing(all.Skip(all.FindLastIndex(o => o.Oar is null) + 1).Where(o => o.Oar == last.Oar && o.Day == last.Day), o => o.Reading);
    }

    /// <summary>Whether the boat has the gate a measure was taken at; a sweep seat that was turned has it no more.</summary>
    private bool HasGate(RigPlace place) => place.Side is not { } side || Gates.Contains(new(place.Seat, side));

    private Side? OnlySide(int seat, BoatClass boatClass)
    {
        if (boatClass.Rowing == Rowing.Sweep)
        {
            foreach (GatePlace gate in Gates)
            {
                if (gate.Seat == seat)
                {
                    return gate.Side;
                }
            }
        }

        return null;
    }

    private static IEnumerable<TakenMeasure> Latest(IEnumerable<TakenMeasure> ofPlace)
    {
        List<TakenMeasure> all = [.. ofPlace];
        return Agreeing(all.Where(t => t.Day == all[^1].Day), t => t.Reading);
    }

    private static IEnumerable<T> Agreeing<T>(IEnumerable<T> ofDay, Func<T, RigReading> reading)
    {
        List<T> all = [.. ofDay];
        return AgreeingReadings.Of(all, one => reading(one).Value, RigErrors.Usual(reading(all[^1]).Measure).Own);
    }
}
