using Gatewright.Core.Geometry;

namespace Gatewright.Core.Measuring;

/// <summary>One reading of a gate or its pin with the hull's level and the gauge's zero taken out.</summary>
/// <param name="Reading">The reading as it was taken.</param>
/// <param name="Degrees">On a level hull the pitch of a face, or the lean of a pin.</param>
/// <param name="Noise">What is uncertain of this reading alone.</param>
/// <param name="Slopes">How it follows each of the errors it shares with others.</param>
internal readonly record struct CorrectedReading(
    Reading Reading, double Degrees, UncertaintyBudget Noise, double[] Slopes)
{
    public static CorrectedReading Of(Reading reading, SharedErrors shared, MeasuringSettings settings)
    {
        double[] slopes = shared.Slopes(reading);
        double level = reading.Item == ReadItem.Gate ? Pitch(reading, shared) : Lean(reading, shared, slopes);
        return new(reading, level, ReadingNoise.Of(reading, settings), slopes);
    }

    /// <summary>From bow to stern, each gate from catch to finish; repeats by what they showed.</summary>
    public static int InOrder(CorrectedReading left, CorrectedReading right)
    {
        int order = left.Reading.Gate.CompareTo(right.Reading.Gate);
        if (order == 0)
        {
            order = right.Reading.At.Angle.Degrees.CompareTo(left.Reading.At.Angle.Degrees);
        }

        if (order == 0)
        {
            order = Nullable.Compare(left.Reading.At.Station, right.Reading.At.Station);
        }

        return order == 0 ? left.Degrees.CompareTo(right.Degrees) : order;
    }

    /// <summary>Whether two are readings of one thing at one gate, and of a face at one point of the stroke.</summary>
    public bool Repeats(CorrectedReading other) =>
        Reading.Gate == other.Reading.Gate && Reading.Item == other.Reading.Item && Reading.At == other.Reading.At;

    /// <summary>The covariance with another reading, in square degrees: what both share, and nothing of their noise.</summary>
    public double Covariance(CorrectedReading other, double[] sharedVariances)
    {
        double sum = 0;
        for (int i = 0; i < sharedVariances.Length; i++)
        {
            sum += Slopes[i] * other.Slopes[i] * sharedVariances[i];
        }

        return sum;
    }

    /// <summary>The variance of what one shows less another.</summary>
    public double VarianceOfDifference(CorrectedReading other, double[] sharedVariances)
    {
        double variance = Noise.Variance + other.Noise.Variance;
        for (int i = 0; i < sharedVariances.Length; i++)
        {
            double apart = Slopes[i] - other.Slopes[i];
            variance += apart * apart * sharedVariances[i];
        }

        return variance;
    }

    private static double Pitch(Reading reading, SharedErrors shared)
    {
        Pitch shown = new(reading.Value - shared.Zero(reading.Gauge));
        HullAttitude hull = shared.Level(reading.Lie).Attitude;
        return PitchGeometry.OnLevelHull(shown, reading.At.Angle, reading.Gate.Side, hull, reading.Lie.Lie).Degrees;
    }

    /// <summary>
    /// A pin is seen square-on, so that the hull's tilt adds to its lean as it is; a face read against its pin follows neither the
    /// hull nor the gauge's zero, and nothing is taken out.
    /// </summary>
    private static double Lean(Reading reading, SharedErrors shared, double[] slopes)
    {
        double lean = reading.Value.Degrees;
        for (int i = 0; i < slopes.Length; i++)
        {
            lean -= slopes[i] == 0 ? 0 : slopes[i] * shared.Value(i);
        }

        return lean;
    }
}
