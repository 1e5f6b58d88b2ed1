using Gatewright.Core.Rig;
using Gatewright.Core.Stroke;

namespace Gatewright.App.OnTheWater;

/// <summary>A seat to try changes on: how it is, how it is set now, and what that does.</summary>
public sealed class StrokeLab
{
    private readonly MeasuredSeat _seat;
    private readonly OarPoints _points;
    private readonly IReadOnlyList<AllowedStep> _usual;
    private readonly RigMeasure[] _measures;

    /// <summary>A seat, rowed by the usual reach.</summary>
    public StrokeLab(MeasuredSeat seat)
    {
        ArgumentNullException.ThrowIfNull(seat);
        (_seat, Rig) = (seat, seat.Rig);
        (_points, _usual, _measures) = (OarPoints.Usual(Rig.Rowing), AllowedStep.Usual(Rig), SeatRig.Measures(Rig.Rowing));
        Reach = Reach.Usual(Rig.Rowing);
        (Before, Now) = (MeasuredStroke.Of(seat, Reach, _points), StrokeGeometry.Of(Rig, Reach, _points));
    }

    /// <summary>The seat as it is.</summary>
    public MeasuredSeat Seat => _seat;

    /// <summary>What of it nobody measured.</summary>
    public IReadOnlyList<RigMeasure> Assumed => _seat.Assumed;

    /// <summary>What can be set, in the order in which a boat is set up.</summary>
    public IReadOnlyList<RigMeasure> Measures => _measures;

    /// <summary>The rig as it is set.</summary>
    public SeatRig Rig { get; private set; }

    /// <summary>The rower.</summary>
    public Reach Reach { get; private set; }

    /// <summary>The stroke before the change, by the rower who is set; null where there is none.</summary>
    public MeasuredStroke? Before { get; private set; }

    /// <summary>The stroke as it is set; null where there is none.</summary>
    public StrokeGeometry? Now { get; private set; }

    /// <summary>What the change does; null where nothing is changed, or there is no stroke.</summary>
    public StrokeEffect? Effect { get; private set; }

    /// <summary>From where to where a slider goes: as far as may be set, and a little beyond, and as far as it is set.</summary>
    public (double Least, double Most) Range(RigMeasure measure)
    {
        double now = Rig.Get(measure).Centimetres;
        foreach (AllowedStep step in _usual)
        {
            if (step.Measure == measure)
            {
                return (Math.Min(Math.Floor(step.Least.Centimetres) - 2, now), Math.Max(Math.Ceiling(step.Most.Centimetres) + 2, now));
            }
        }

        return measure.Plausible();
    }

    /// <summary>Sets a measure of the rig. One that would not hold together is let be.</summary>
    public void Set(RigMeasure measure, double centimetres)
    {
        if (measure == RigMeasure.Inboard ? centimetres >= Rig.OarLength.Centimetres : measure == RigMeasure.OarLength && centimetres <= Rig.Inboard.Centimetres)
        {
            return;
        }

        Rig = Rig.With(measure, Length.FromCentimetres(centimetres));
        Work();
    }

    /// <summary>Sets the rower.</summary>
    public void Set(Reach reach)
    {
        Reach = reach;
        Before = MeasuredStroke.Of(_seat, Reach, _points);
        Work();
    }

    /// <summary>Sets the rig to so many steps from how the seat is.</summary>
    public void Take(IReadOnlyList<RigStep> steps)
    {
        ArgumentNullException.ThrowIfNull(steps);
        Rig = _seat.Rig.After(steps) ?? throw new ArgumentException("The rig would not hold together.", nameof(steps));
        Work();
    }

    /// <summary>Back to how the seat is.</summary>
    public void Back()
    {
        Rig = _seat.Rig;
        Set(Reach.Usual(Rig.Rowing));
    }

    private void Work()
    {
        Now = StrokeGeometry.Of(Rig, Reach, _points);
        List<RigStep> steps = [];
        foreach (RigMeasure measure in _measures)
        {
            Length by = Rig.Get(measure) - _seat.Rig.Get(measure);
            if (by.Centimetres != 0)
            {
                steps.Add(new(measure, by));
            }
        }

        Effect = steps.Count > 0 && Before is not null && Now is not null ? StrokeChange.Effect(Before, steps) : null;
    }
}
