using Gatewright.Core;
using Gatewright.Core.Changing;
using Gatewright.Core.Measuring;
using Gatewright.Core.Rig;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Rigging;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Changing;

/// <summary>How it stands with something that is to be read again.</summary>
public enum ReadAgainState
{
    /// <summary>A step that it follows is not done.</summary>
    Waiting,

    /// <summary>It is to be read now.</summary>
    Due,

    /// <summary>It was read, and is not as it is to be.</summary>
    Outside,

    /// <summary>It was read, and is as it is to be.</summary>
    Done,
}

/// <summary>Something that is to be read again after a change.</summary>
/// <param name="At">What, where, and what it is to be.</param>
/// <param name="State">How it stands.</param>
/// <param name="Read">What was read; null where nothing was.</param>
/// <param name="Day">The day of that.</param>
public sealed record ReadAgain(ReadAgainAt At, ReadAgainState State, RigEstimate? Read = null, DateOnly? Day = null);

/// <summary>
/// Ticks off what is to be read again after a change. What counts was read after the last of the steps it follows; it is done with the
/// first day on which it lay where it is to be, and stays so: what comes later is for the boat's own page to say.
/// </summary>
internal sealed class ReadingAgain(Club club, RigChange change, MeasuringSettings settings)
{
    /// <summary>A figure typed as the limit itself counts as on it, though a mean may have cost the last digit.</summary>
    private const double OnTheLimit = 1e-9;

    private readonly BoatView _boat = new(club, change.Plan.Boat);

    public IReadOnlyList<ReadAgain> Of()
    {
        var days = new BoatDays(_boat.Records);
        var rig = new RigView(club, _boat);
        return [.. change.Plan.Again.Select(at => Of(at, days, rig))];
    }

    private ReadAgain Of(ReadAgainAt at, BoatDays days, RigView rig)
    {
        if (RigItems.OfWord(at.Item) is not { } item || !at.After.All(change.StepsDone.Contains))
        {
            return new(at, ReadAgainState.Waiting);
        }

        Recorded since = at.After.SelectMany(change.StepRecords).Append(change.Planned).Order(RecordedOrder.Instance).Last();
        (DateOnly Day, RigEstimate Figure)? last = null;
        foreach ((DateOnly day, RigEstimate figure) in item.Measure() is { } measure
            ? Measured(rig, measure, at, r => days.Compare(r, since) > 0)
            : Pitches(item, at, days, r => days.Compare(r, since) > 0))
        {
            if (IsInside(at, figure.Value))
            {
                return new(at, ReadAgainState.Done, figure, day);
            }

            last = (day, figure);
        }

        return last is { } outside ? new(at, ReadAgainState.Outside, outside.Figure, outside.Day) : new(at, ReadAgainState.Due);
    }

    private static bool IsInside(ReadAgainAt at, double value) =>
        value >= (double)(at.From ?? decimal.MinValue) - OnTheLimit && value <= (double)(at.To ?? decimal.MaxValue) + OnTheLimit;

    /// <summary>What was taken of a measure since, one by one: it is set and taken again within minutes.</summary>
    private static IEnumerable<(DateOnly Day, RigEstimate Figure)> Measured(RigView rig, RigMeasure measure, ReadAgainAt at, Func<Recorded, bool> isSince)
    {
        double u = RigErrors.Usual(measure).Once;
        var place = new RigPlace(at.Seat, measure.HasSide() ? at.Side : null);
        return rig.Taken.Select(t => (t.Record, t.Reading)).Concat(rig.OfOars.Select(o => (o.Record, o.Reading)))
            .Where(t => t.Reading.Measure == measure && t.Reading.Place == place && isSince(t.Record))
            .OrderBy(t => t.Reading.Day).ThenBy(t => t.Record, RecordedOrder.Instance)
            .Select(t => (t.Reading.Day!.Value, new RigEstimate(t.Reading.Value, u)));
    }

    /// <summary>The pitch at a station since, day by day, corrected for level and gauge.</summary>
    private IEnumerable<(DateOnly Day, RigEstimate Figure)> Pitches(RigItem item, ReadAgainAt at, BoatDays days, Func<Recorded, bool> isSince)
    {
        Station station = item switch { RigItem.PitchCatch => Station.Catch, RigItem.PitchFinish => Station.Finish, _ => Station.Abeam };
        if (_boat.Class is not { } boatClass || at.Side is not { } side)
        {
            yield break;
        }

        var view = new ReadingsView(club, _boat.Records, boatClass, settings);
        foreach (IGrouping<DateOnly, Recorded> day in _boat.Records
            .Where(r => r.As<ReadingTaken>() is { Item: ReadItem.Gate, Angle: null } taken
                && taken.Seat == at.Seat && taken.Side == side && (taken.Station ?? Station.Abeam) == station && isSince(r))
            .GroupBy(days.Of).OrderBy(g => g.Key))
        {
            var corrected = CorrectedReadings.Of(view.Readings(day), settings);
            if (corrected.IndexOf(new(at.Seat, side), station) is >= 0 and var index)
            {
                Estimate pitch = corrected.Pitches[index].Estimate;
                yield return (day.Key, new(pitch.Value.Degrees, pitch.U.Degrees));
            }
        }
    }
}
