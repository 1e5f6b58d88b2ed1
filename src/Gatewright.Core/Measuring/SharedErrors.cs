using Gatewright.Core.Geometry;

namespace Gatewright.Core.Measuring;

/// <summary>
/// The errors that several readings of a boat share: two directions of level for each lying, a zero for each gauge.
/// </summary>
internal sealed class SharedErrors
{
    private readonly List<BoatLie> _lies = [];
    private readonly List<LevelEstimate> _levels = [];
    private readonly List<Gauge> _gauges = [];

    public SharedErrors(IReadOnlyList<Reading> readings, MeasuringSettings settings)
    {
        for (int i = 0; i < readings.Count; i++)
        {
            Add(readings[i].Lie, settings);
            Add(readings[i].Gauge);
        }

        Variances = new double[LevelErrors + _gauges.Count];
        for (int i = 0; i < _lies.Count; i++)
        {
            double u = _levels[i].U.Degrees;
            Variances[2 * i] = u * u;
            Variances[(2 * i) + 1] = u * u;
        }

        for (int i = 0; i < _gauges.Count; i++)
        {
            double u = _gauges[i].Zero.Estimate.U.Degrees;
            Variances[LevelErrors + i] = u * u;
        }
    }

    public IReadOnlyList<BoatLie> Lies => _lies;

    /// <summary>One a name: where readings disagree about a gauge's zero, the one that knows it best speaks for all.</summary>
    public IReadOnlyList<Gauge> Gauges => _gauges;

    /// <summary>Square degrees: bow high and port low of each lying in turn, then each gauge's zero.</summary>
    public double[] Variances { get; }

    /// <summary>How many of the variances are those of a level; the gauges' zeros follow.</summary>
    public int LevelErrors => 2 * _lies.Count;

    public LevelEstimate Level(BoatLie lie) => _levels[_lies.IndexOf(lie)];

    public Angle Zero(Gauge gauge) => _gauges[IndexOf(gauge)].Zero.Estimate.Value;

    /// <summary>The best value of a shared error, in degrees, in the order of <see cref="Variances"/>.</summary>
    public double Value(int index)
    {
        if (index >= LevelErrors)
        {
            return _gauges[index - LevelErrors].Zero.Estimate.Value.Degrees;
        }

        HullAttitude hull = _levels[index / 2].Attitude;
        return index % 2 == 0 ? hull.BowHigh.Degrees : hull.PortLow.Degrees;
    }

    /// <summary>Where a lying stands in <see cref="Lies"/>.</summary>
    public int IndexOf(BoatLie lie) => _lies.IndexOf(lie);

    /// <summary>How a reading follows each shared error, in degrees a degree.</summary>
    public double[] Slopes(Reading reading)
    {
        double[] slopes = new double[Variances.Length];
        if (reading.Item == ReadItem.GatePitch)
        {
            return slopes;
        }

        (double bowHigh, double portLow) = LevelSlopes(reading);
        int lie = _lies.IndexOf(reading.Lie);
        slopes[2 * lie] = bowHigh;
        slopes[(2 * lie) + 1] = portLow;
        slopes[LevelErrors + IndexOf(reading.Gauge)] = 1;
        return slopes;
    }

    private void Add(BoatLie lie, MeasuringSettings settings)
    {
        if (!_lies.Contains(lie))
        {
            _lies.Add(lie);
            _levels.Add(LevelEstimate.Of(lie.Level, settings));
        }
    }

    private void Add(Gauge gauge)
    {
        int index = IndexOf(gauge);
        if (index < 0)
        {
            _gauges.Add(gauge);
        }
        else if (KnowsZeroBetter(gauge.Zero.Estimate, _gauges[index].Zero.Estimate))
        {
            _gauges[index] = gauge;
        }
    }

    /// <summary>Of two that know it as well, the lower zero: any rule would do that no order of readings changes.</summary>
    private static bool KnowsZeroBetter(Estimate one, Estimate other) =>
        one.U != other.U ? one.U < other.U : one.Value < other.Value;

    private int IndexOf(Gauge gauge)
    {
        for (int i = 0; i < _gauges.Count; i++)
        {
            if (_gauges[i].Name == gauge.Name)
            {
                return i;
            }
        }

        return -1;
    }

    /// <summary>
    /// A lean aft is seen from the side and takes the hull's rise whole; a lean out is seen from the end and takes its
    /// roll whole; a face takes of each what its oar angle gives it.
    /// </summary>
    private static (double BowHigh, double PortLow) LevelSlopes(Reading reading)
    {
        int lie = reading.Lie.Lie.Sign();
        switch (reading.Item)
        {
            case ReadItem.PinAft:
                return (lie, 0);
            case ReadItem.PinOut:
                return (0, lie * reading.Gate.Side.Sign());
            default:
                PitchSlopes slopes = PitchSlopes.At(reading.At.Angle, reading.Gate.Side, reading.Lie.Lie);
                return (slopes.BowHigh, slopes.PortLow);
        }
    }
}
