using Gatewright.Core;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;

namespace Gatewright.Journal.Views;

/// <summary>The readings of a boat's faces at one station that speak of its gates as they are.</summary>
/// <remarks>What a tap waits for: nothing else of the record is turned into readings, and none of it twice.</remarks>
internal sealed class FacesRead
{
    private readonly Station _station;
    private readonly GateChanges _changes;
    private readonly ReadingsView _view;
    private readonly bool _someWait;

    private FacesRead(Station station, GateChanges changes, ReadingsView view, BoatReadings readings, bool someWait = false) =>
        (_station, _changes, _view, Readings, _someWait) = (station, changes, view, readings, someWait);

    /// <summary>The readings, as the core takes them.</summary>
    public BoatReadings Readings { get; }

    /// <summary>Of a boat; null until its class is known.</summary>
    public static FacesRead? Of(Club club, BoatView boat, Station station, MeasuringSettings settings)
    {
        if (boat.Class is not { } boatClass)
        {
            return null;
        }

        var none = new FacesRead(
            station, new(boat), new(club, boat.Others, boatClass, settings, isNamed: false), new(boat.Name, boatClass, []));
        return none.And(boat.Readings);
    }

    /// <summary>
    /// With what came to the boat, where that were readings, and how it lies for them, and nothing else came to the club; null for
    /// anything else.
    /// </summary>
    public FacesRead? With(IReadOnlyList<Recorded>? added, Station station)
    {
        if (added is null || station != _station)
        {
            return null;
        }

        ReadingsView view = _view;
        foreach (Recorded record in added)
        {
            if (IsFirstWordOf(record, view))
            {
                view = view.With(record);
            }
            else if (record.Fact is not ReadingTaken { Job: null })
            {
                return null;
            }
        }

        return new FacesRead(_station, _changes, view, Readings, _someWait).And(added);
    }

    /// <summary>Whether a record is the first word of a lying of which no reading was taken, so that it says nothing of what was read before.</summary>
    private bool IsFirstWordOf(Recorded record, ReadingsView view) =>
        !_someWait && record.Fact is BoatLaid { Date: null } laid && !view.Knows(laid.Lying);

    private FacesRead And(IReadOnlyList<Recorded> more)
    {
        List<Recorded> faces = [.. more.Where(r =>
            r.Fact is ReadingTaken { Item: ReadItem.Gate, Angle: null } taken
            && (taken.Station ?? Station.Abeam) == _station
            && !_changes.AreAfter(r))];
        IReadOnlyList<Reading> read = _view.Readings(faces);
        return new(_station, _changes, _view, Readings with { Readings = [.. Readings.Readings, .. read] }, _someWait || read.Count < faces.Count);
    }
}
