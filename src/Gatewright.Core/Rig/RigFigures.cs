using Gatewright.Core.Measuring;

namespace Gatewright.Core.Rig;

/// <summary>
/// What a boat's rig is, place by place, with the covariance of any two figures (JCGM 100:2008, 5.2.2 and H.2.3): what
/// they share drops out of their difference.
/// </summary>
public sealed class RigFigures
{
    /// <summary>Two-sided 95 % of the normal distribution: two readings of one place further apart than this many u are queried.</summary>
    public const double ApartBy = RepeatedReading.Apart;

    private readonly List<RigFigure> _figures = [];
    private readonly List<Part[]> _parts = [];
    private readonly Func<RigMeasure, RigErrors> _errors;

    private RigFigures(Func<RigMeasure, RigErrors> errors) => _errors = errors;

    /// <summary>Every figure: measure by measure as a boat is set up, then from the bow, port before starboard.</summary>
    public IReadOnlyList<RigFigure> All => _figures;

    /// <summary>The figures of a boat's readings, by the usual errors; overlaps that were not taken are worked out.</summary>
    public static RigFigures Of(IReadOnlyList<RigReading> readings) => Of(readings, RigErrors.Usual);

    /// <summary>The figures of a boat's readings. Readings of one place average; overlaps that were not taken are worked out.</summary>
    public static RigFigures Of(IReadOnlyList<RigReading> readings, Func<RigMeasure, RigErrors> errors)
    {
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(errors);
        var figures = new RigFigures(errors);
        var taken = new List<RigReading>(readings);

        // A stable order, so that the same readings in another order are the same figures to the last bit.
        taken.Sort((x, y) => Compare(x, y));
        for (int from = 0, to; from < taken.Count; from = to)
        {
            to = from + 1;
            while (to < taken.Count && taken[to].Measure == taken[from].Measure && taken[to].Place == taken[from].Place)
            {
                to++;
            }

            figures.Add(taken.GetRange(from, to - from));
        }

        figures.AddOverlaps();
        return figures;
    }

    /// <summary>Where a figure stands among <see cref="All"/>; −1 where it was neither taken nor worked out.</summary>
    public int IndexOf(RigMeasure measure, RigPlace place) => _figures.FindIndex(f => f.Measure == measure && f.Place == place);

    /// <summary>A figure; null where it was neither taken nor worked out.</summary>
    public RigFigure? Find(RigMeasure measure, RigPlace place) =>
        IndexOf(measure, place) is >= 0 and var at ? _figures[at] : null;

    /// <summary>The covariance of two figures of <see cref="All"/>, in the product of their units; of one with itself its variance.</summary>
    public double Covariance(int first, int second)
    {
        double sum = 0;
        foreach (Part one in _parts[first])
        {
            foreach (Part other in _parts[second])
            {
                sum += one.Weight * other.Weight * Shared(one, other);
            }
        }

        return sum;
    }

    /// <summary>The first less the second of two figures of one unit, with the uncertainty of the difference.</summary>
    public RigEstimate Difference(int first, int second)
    {
        double variance = Covariance(first, first) + Covariance(second, second) - (2 * Covariance(first, second));

        // Where everything cancels, rounding alone would leave as often less than nothing.
        return new(_figures[first].Value.Value - _figures[second].Value.Value, Math.Sqrt(Math.Max(0, variance)));
    }

    private static int Compare(RigReading x, RigReading y)
    {
        int byPlace = x.Measure != y.Measure ? x.Measure.CompareTo(y.Measure) : x.Place.CompareTo(y.Place);
        int byDay = byPlace != 0 ? byPlace : Nullable.Compare(x.Day, y.Day);
        return byDay != 0 ? byDay : x.Value.CompareTo(y.Value);
    }

    private void Add(List<RigReading> repeats)
    {
        var parts = new Part[repeats.Count];
        double sum = 0;
        (RigReading lowest, RigReading highest) = (repeats[0], repeats[0]);
        for (int i = 0; i < parts.Length; i++)
        {
            RigReading taken = repeats[i];
            parts[i] = new(taken.Measure, taken.Place, taken.Day, i, 1.0 / parts.Length, taken.SetU);
            sum += taken.Value;
            lowest = taken.Value < lowest.Value ? taken : lowest;
            highest = taken.Value > highest.Value ? taken : highest;
        }

        double apart = highest.Value - lowest.Value;
        double allowed = ApartOf(lowest.Measure, lowest.Day == highest.Day);
        Add(
            new(lowest.Measure, lowest.Place, new(sum / parts.Length, 0), parts.Length, RepeatedReading.IsApart(apart, allowed, parts.Length) ? new(apart, allowed) : null,
                repeats.TrueForAll(r => r.SetU is not null)),
            parts);
    }

    /// <summary>The standard uncertainty of the difference of two readings of one place.</summary>
    private double ApartOf(RigMeasure measure, bool isOneDay)
    {
        RigErrors errors = _errors(measure);
        return Math.Sqrt(2) * (isOneDay ? errors.Own : errors.Once);
    }

    /// <summary>Puts a figure in its place; its uncertainty follows from its parts.</summary>
    private void Add(RigFigure figure, Part[] parts)
    {
        int at = _figures.FindLastIndex(f => f.Measure < figure.Measure || (f.Measure == figure.Measure && f.Place < figure.Place)) + 1;
        _parts.Insert(at, parts);
        _figures.Insert(at, figure);
        _figures[at] = figure with { Value = figure.Value with { U = Math.Sqrt(Math.Max(0, Covariance(at, at))) } };
    }

    /// <summary>Of each seat whose overlap nobody took, by the definition of <see cref="Overlap"/>.</summary>
    private void AddOverlaps()
    {
        foreach (RigFigure width in _figures.FindAll(f => f.Measure is RigMeasure.Span or RigMeasure.Spread))
        {
            bool isScull = width.Measure == RigMeasure.Span;
            List<RigFigure> inboards = _figures.FindAll(f => f.Measure == RigMeasure.Inboard && f.Place.Seat == width.Place.Seat);
            var place = new RigPlace(width.Place.Seat, null);
            if (inboards.Count != (isScull ? 2 : 1) || IndexOf(RigMeasure.Overlap, place) >= 0)
            {
                continue;
            }

            double inboard = inboards[0].Value.Value;
            var parts = new List<Part>(Weighted(inboards[0], 1));
            if (isScull)
            {
                inboard += inboards[1].Value.Value;
                parts.AddRange(Weighted(inboards[1], 1));
            }

            parts.AddRange(Weighted(width, -1));
            double overlap = isScull ? Overlap.OfScull(inboard, width.Value.Value) : Overlap.OfSweep(inboard, width.Value.Value);
            Add(new(RigMeasure.Overlap, place, new(overlap, 0), Repeats: 0), [.. parts]);
        }
    }

    private Part[] Weighted(RigFigure figure, double factor) =>
        Array.ConvertAll(_parts[_figures.IndexOf(figure)], p => p with { Weight = factor * p.Weight });

    /// <summary>What two readings have in common, as the covariance of their errors.</summary>
    private double Shared(Part one, Part other)
    {
        (RigErrors first, RigErrors second) = (_errors(one.Measure), _errors(other.Measure));
        bool isSameMeasure = one.Measure == other.Measure;
        bool isSameSeat = one.Place.Seat == other.Place.Seat;
        bool isSame = isSameMeasure && one.Place == other.Place && one.Day == other.Day && one.Repeat == other.Repeat;
        if (one.SetU is not null || other.SetU is not null)
        {
            // Nobody took it: it shares no tape and no level with what was taken.
            return isSame && one.SetU is { } set ? set * set : 0;
        }

        double sum = isSame ? first.Own * first.Own : 0;
        if (one.Day == other.Day)
        {
            sum += first.Tape * second.Tape;
            if (isSameMeasure)
            {
                sum += (first.OfBoat * first.OfBoat) + (Sign(one) * Sign(other) * first.Tilt * first.Tilt);
                sum += isSameSeat ? first.OfSeat * first.OfSeat : 0;
            }
        }

        return sum;
    }

    private static int Sign(Part part) => part.Place.Side?.Sign() ?? 0;

    /// <summary>A reading's share in a figure.</summary>
    private readonly record struct Part(RigMeasure Measure, RigPlace Place, DateOnly? Day, int Repeat, double Weight, double? SetU);
}
