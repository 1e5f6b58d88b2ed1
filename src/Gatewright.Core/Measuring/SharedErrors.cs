using Gatewright.Core.Geometry;

namespace Gatewright.Core.Measuring;

/// <summary>
/// The errors that several readings of a boat share: two directions of level for each lying, a zero for each gauge.
/// </summary>
internal sealed class SharedErrors
{
    private readonly List<BoatLie> _lies = [];
    private readonly List<Gauge> _gauges = [];
    private readonly MeasuringSettings _settings;

    public SharedErrors(IReadOnlyList<Reading> readings, MeasuringSettings settings)
    {
        _settings = settings;
        foreach (Reading reading in readings)
        {
            if (!_lies.Contains(reading.Lie))
            {
                _lies.Add(reading.Lie);
            }

            if (!_gauges.Exists(g => g.Name == reading.Gauge.Name))
            {
                _gauges.Add(reading.Gauge);
            }
        }

        Variances = new double[(2 * _lies.Count) + _gauges.Count];
        for (int i = 0; i < _lies.Count; i++)
        {
            double u = Level(_lies[i]).U.Degrees;
            Variances[2 * i] = u * u;
            Variances[(2 * i) + 1] = u * u;
        }

        for (int i = 0; i < _gauges.Count; i++)
        {
            double u = _gauges[i].Zero.Estimate.U.Degrees;
            Variances[(2 * _lies.Count) + i] = u * u;
        }
    }

    public IReadOnlyList<BoatLie> Lies => _lies;

    public IReadOnlyList<Gauge> Gauges => _gauges;

    /// <summary>Square degrees: bow high and port low of each lying in turn, then each gauge's zero.</summary>
    public double[] Variances { get; }

    public LevelEstimate Level(BoatLie lie) => LevelEstimate.Of(lie.Level, _settings);

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
        slopes[(2 * _lies.Count) + _gauges.FindIndex(g => g.Name == reading.Gauge.Name)] = 1;
        return slopes;
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
