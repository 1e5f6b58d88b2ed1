using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Diagnosing;

/// <summary>
/// A boat's readings as y = H x + noise about a healthy boat: x the state, with independent normal priors.
/// </summary>
internal sealed class LinearModel
{
    public LinearModel(BoatReadings boat, BoatContext context, DiagnosingSettings settings)
    {
        Settings = settings;
        var shared = new SharedErrors(boat.Readings, settings.Measuring);
        Layout = new(boat, context, shared);
        Context = context;
        (Means, Variances) = Prior(context);
        Rows = boat.Readings.Count;
        Design = new double[Rows * Layout.Size];
        Noise = new double[Rows];
        Residuals = new double[Rows];
        for (int row = 0; row < Rows; row++)
        {
            Reading reading = boat.Readings[row];
            Span<double> line = Design.AsSpan(row * Layout.Size, Layout.Size);
            FillRow(reading, line);
            Noise[row] = ReadingNoise.VarianceOf(reading, settings.Measuring);
            Residuals[row] = reading.Value.Degrees - Numerics.Cholesky.Dot(line, Means);
        }
    }

    public DiagnosingSettings Settings { get; }

    public BoatContext Context { get; }

    public StateLayout Layout { get; }

    public int Rows { get; }

    /// <summary>H, row by row.</summary>
    public double[] Design { get; }

    /// <summary>Variances of the readings' own noise.</summary>
    public double[] Noise { get; }

    /// <summary>y − H μ.</summary>
    public double[] Residuals { get; }

    /// <summary>μ: what a healthy boat, lying as its level says and read with gauges at their zeros, is.</summary>
    public double[] Means { get; }

    /// <summary>Variances of the state's prior, when nothing is wrong.</summary>
    public double[] Variances { get; }

    /// <summary>How a reading follows the state: one row of H.</summary>
    public void FillRow(Reading reading, Span<double> line)
    {
        line.Clear();
        if (reading.Item != ReadItem.GatePitch)
        {
            Layout.Shared.Slopes(reading).CopyTo(line[Layout.FirstShared..]);
        }

        if (reading.Item == ReadItem.Sleeve)
        {
            line[Layout.Sleeve(reading.Gate)!.Value] = 1;
            return;
        }

        Span<double> gate = line.Slice(Layout.Gate(reading.Gate), 3);
        switch (reading.Item)
        {
            case ReadItem.Gate:
                PitchSlopes slopes = PitchSlopes.At(reading.At.Angle, reading.Gate.Side, reading.Lie.Lie);
                (gate[0], gate[1], gate[2]) = (1, slopes.Aft, slopes.Out);
                break;
            case ReadItem.PinAft:
                gate[1] = 1;
                break;
            case ReadItem.PinOut:
                gate[2] = 1;
                break;
            default:
                gate[0] = 1;
                break;
        }
    }

    private (double[] Means, double[] Variances) Prior(BoatContext context)
    {
        double[] means = new double[Layout.Size];
        double[] variances = new double[Layout.Size];
        foreach (GatePlace gate in Layout.Gates)
        {
            GateState target = Target(gate, context);
            int at = Layout.Gate(gate);
            (means[at], variances[at]) = (target.GatePitch.Degrees, Square(Settings.Spreads.HealthyGatePitch));
            (means[at + 1], variances[at + 1]) = (target.Pin.Aft.Degrees, Square(Settings.Spreads.HealthyLean));
            (means[at + 2], variances[at + 2]) = (target.Pin.Out.Degrees, Square(Settings.Spreads.HealthyLean));
        }

        Layout.Shared.Variances.CopyTo(variances, Layout.FirstShared);
        for (int lie = 0; lie < Layout.Shared.Lies.Count; lie++)
        {
            HullAttitude attitude = Layout.Shared.Level(Layout.Shared.Lies[lie]).Attitude;
            means[Layout.Lie(lie)] = attitude.BowHigh.Degrees;
            means[Layout.Lie(lie) + 1] = attitude.PortLow.Degrees;
        }

        for (int gauge = 0; gauge < Layout.Shared.Gauges.Count; gauge++)
        {
            means[Layout.Gauge(gauge)] = Layout.Shared.Gauges[gauge].Zero.Estimate.Value.Degrees;
        }

        foreach (GatePlace oar in Layout.Oars)
        {
            variances[Layout.Sleeve(oar)!.Value] = Square(Settings.Spreads.HealthySleeve);
        }

        return (means, variances);
    }

    /// <summary>A stamp or a set lean comes first; then how the pin stood when it was last good; then what is usual.</summary>
    private GateState Target(GatePlace gate, BoatContext context)
    {
        if (context.Target(gate) is { } known)
        {
            return known;
        }

        GateState usual = Settings.Spreads.Target;
        return context.LastGood.TryGetValue(gate, out PinLean lean) ? usual with { Pin = lean } : usual;
    }

    private static double Square(Angle angle) => angle.Degrees * angle.Degrees;
}
