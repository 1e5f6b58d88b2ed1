using Gatewright.Core;
using Gatewright.Core.Rig;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Rigging;

/// <summary>
/// A boat's rig as the journal tells it: what was measured, by whom and when, what of it the rig is judged by, and the
/// targets. As of a day it is the view of the club as it was then: <see cref="ClubOnDay"/>.
/// </summary>
public sealed class RigView
{
    private readonly List<TakenMeasure> _taken = [];

    /// <summary>The rig of a boat, for the crew that the club says rows it.</summary>
    public RigView(Club club, BoatView boat)
        : this(club, boat, Crews.OfWord(boat?.Properties["crew"]))
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
        foreach (Recorded record in boat.Records)
        {
            if (record.As<MeasureTaken>() is { } taken && Read(taken, Day.Of(record)) is { } reading)
            {
                _taken.Add(new(record, reading));
            }
        }

        // A stable sort: of one day the journal's own order stays.
        _taken = [.. _taken.OrderBy(t => t.Day)];
        Current = [.. _taken.GroupBy(t => (t.Reading.Measure, t.Reading.Place)).SelectMany(Latest)
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

    /// <summary>The same as the core takes it.</summary>
    public IReadOnlyList<RigReading> Readings => [.. Current.Select(t => t.Reading)];

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
        TakenMeasure last = all[^1];
        double allowed = RigFigures.ApartBy * Math.Sqrt(2) * RigErrors.Usual(last.Reading.Measure).Own;
        return all.AsEnumerable().Reverse()
            .TakeWhile(t => t.Day == last.Day && Math.Abs(t.Reading.Value - last.Reading.Value) <= allowed);
    }
}
