using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;

namespace Gatewright.Core.Tests.Diagnosing;

/// <summary>
/// The linear model of a boat's readings written out in full, story by story, with a library's dense algebra: slow, plain,
/// and sharing nothing with the program but the readings. Numbers are the published defaults, written out again here.
/// </summary>
internal sealed class DenseModel
{
    private readonly List<string> _unknowns = [];
    private readonly List<double> _means = [];
    private readonly List<double> _variances = [];
    private readonly List<DenseCause> _causes = [];
    private readonly Matrix<double> _design;
    private readonly Vector<double> _readings;
    private readonly Vector<double> _noise;

    public DenseModel(BoatReadings boat, BoatContext context)
    {
        List<GatePlace> gates = [.. boat.Readings.Where(r => r.Item != ReadItem.Sleeve).Select(r => r.Gate).Distinct()];
        List<GatePlace> oars = [.. boat.Readings.Where(r => r.Item == ReadItem.Sleeve).Select(r => r.Gate)
            .Concat(context.Reports.Where(r => r.Kind.IsOfTheBlade()).Select(r => r.Gate!.Value)).Distinct()];
        List<BoatLie> lies = [.. boat.Readings.Select(r => r.Lie).Distinct()];
        List<Gauge> gauges = [.. boat.Readings.Select(r => r.Gauge).DistinctBy(g => g.Name)];
        foreach (GatePlace gate in gates)
        {
            PinLean lean = context.LastGood.TryGetValue(gate, out PinLean last) ? last : PinLean.Upright;
            GateState target = context.Target(gate) ?? new GateState(GatePitch.FromDegrees(4), lean);
            Add($"{gate} pitch", target.GatePitch.Degrees, 0.3);
            Add($"{gate} aft", target.Pin.Aft.Degrees, 0.3);
            Add($"{gate} out", target.Pin.Out.Degrees, 0.3);
        }

        lies.ForEach(lie => AddLevel(lie));
        gauges.ForEach(gauge => Add($"zero {gauge.Name}", gauge.Zero.Estimate.Value.Degrees, gauge.Zero.Estimate.U.Degrees));
        oars.ForEach(oar => Add($"{oar} sleeve", 0, 0.3));
        AddCauses(gates, oars, lies, gauges);
        AddWrongSeats(gates, context);
        _design = Matrix<double>.Build.Dense(boat.Readings.Count, _unknowns.Count);
        _readings = Vector<double>.Build.DenseOfEnumerable(boat.Readings.Select(r => r.Value.Degrees));
        _noise = Vector<double>.Build.DenseOfEnumerable(boat.Readings.Select(Noise));
        for (int row = 0; row < boat.Readings.Count; row++)
        {
            FillRow(row, boat.Readings[row]);
        }
    }

    public IReadOnlyList<string> Unknowns => _unknowns;

    /// <summary>Nothing, every cause, every pair of causes that share no gate and are not both of one boat-wide kind.</summary>
    public IEnumerable<DenseStory> Stories()
    {
        yield return new([]);
        for (int i = 0; i < _causes.Count; i++)
        {
            yield return new([_causes[i]]);
            for (int j = i + 1; j < _causes.Count; j++)
            {
                bool onOneGate = _causes[i].Gates.Intersect(_causes[j].Gates).Any();
                bool ofOneKind = _causes[i].Gates.Length == 0 && _causes[i].Part.Cause == _causes[j].Part.Cause;
                if (!onOneGate && !ofOneKind)
                {
                    yield return new([_causes[i], _causes[j]]);
                }
            }
        }
    }

    /// <summary>ln N(y; H(μ + s), H P Hᵀ + R).</summary>
    public double LogEvidence(DenseStory story)
    {
        (Vector<double> means, Matrix<double> prior) = Prior(story);
        return LogDensity(_readings - (_design * means), ReadingCovariance(prior));
    }

    /// <summary>The Kalman form: K = P Hᵀ S⁻¹, mean μ + s + K(y − H(μ + s)), covariance P − K H P.</summary>
    public (Vector<double> Mean, Matrix<double> Covariance) State(DenseStory story)
    {
        (Vector<double> means, Matrix<double> prior) = Prior(story);
        Matrix<double> gain = ReadingCovariance(prior).Cholesky().Solve(_design * prior).Transpose();
        return (means + (gain * (_readings - (_design * means))), prior - (gain * _design * prior));
    }

    /// <summary>The squared cosine of the angle between what two unknowns do to the readings, weighed by their covariance.</summary>
    public double Alike(string one, string other)
    {
        Vector<double> first = _design.Column(_unknowns.IndexOf(one));
        Vector<double> second = _design.Column(_unknowns.IndexOf(other));
        Cholesky<double> factor = ReadingCovariance(Prior(new([])).Variances).Cholesky();
        double cross = first.DotProduct(factor.Solve(second));
        return cross * cross / (first.DotProduct(factor.Solve(first)) * second.DotProduct(factor.Solve(second)));
    }

    /// <summary>ln of the multivariate normal density.</summary>
    public static double LogDensity(Vector<double> deviation, Matrix<double> covariance)
    {
        Cholesky<double> factor = covariance.Cholesky();
        return -0.5 * ((deviation.Count * Math.Log(2 * Math.PI)) + factor.DeterminantLn + deviation.DotProduct(factor.Solve(deviation)));
    }

    private void Add(string unknown, double mean, double deviation)
    {
        _unknowns.Add(unknown);
        _means.Add(mean);
        _variances.Add(deviation * deviation);
    }

    private void AddLevel(BoatLie lie)
    {
        (HullAttitude attitude, double u) = lie.Level switch
        {
            HullLevel.Read read => (read.Attitude, 0.1),
            HullLevel.BubbleCentred => (HullAttitude.Level, 0.2),
            HullLevel.ByEye => (HullAttitude.Level, 0.7),
            _ => throw new NotSupportedException("Racks are told apart by the tests of levels."),
        };
        Add($"bow {lie}", attitude.BowHigh.Degrees, u);
        Add($"roll {lie}", attitude.PortLow.Degrees, u);
    }

    private void AddCauses(List<GatePlace> gates, List<GatePlace> oars, List<BoatLie> lies, List<Gauge> gauges)
    {
        foreach (GatePlace gate in gates)
        {
            Cause(new(Core.Diagnosing.Cause.GatePitch, gate), 0.015, 2.0, $"{gate} pitch");
            Cause(new(Core.Diagnosing.Cause.PinAft, gate), 0.015, 2.5, $"{gate} aft");
            Cause(new(Core.Diagnosing.Cause.PinOut, gate), 0.015, 2.5, $"{gate} out");
            Cause(new(Core.Diagnosing.Cause.Rigger, gate), 0.015, 2.5, $"{gate} aft", $"{gate} out");
        }

        oars.ForEach(oar => Cause(new(Core.Diagnosing.Cause.Sleeve, oar), 0.015, 2.0, $"{oar} sleeve"));
        string[] level = [.. lies.SelectMany(lie => new[] { $"bow {lie}", $"roll {lie}" })];
        Cause(new(Core.Diagnosing.Cause.HullLevel), 0.03, 2.0, level);
        gauges.ForEach(g => Cause(new(Core.Diagnosing.Cause.GaugeZero, Gauge: g.Name), 0.02, 1.5, $"zero {g.Name}"));
    }

    private void Cause(CausePart part, double chance, double spread, params string[] unknowns) =>
        _causes.Add(new(part, chance, [.. unknowns.Select(u => (_unknowns.IndexOf(u), spread, 0.0))]));

    /// <summary>Of refitted riggers: each pair exchanged, and each one alone turned end for end where its leans are known.</summary>
    private void AddWrongSeats(List<GatePlace> gates, BoatContext context)
    {
        List<GatePlace> refitted = [.. context.Reports
            .Where(r => r.Kind == ReportKind.Refitted).Select(r => r.Gate!.Value).Distinct().Where(gates.Contains).Order()];
        for (int i = 0; i < refitted.Count; i++)
        {
            if (context.LastGood.ContainsKey(refitted[i]))
            {
                WrongSeat(new(Core.Diagnosing.Cause.WrongSeat, refitted[i]), 0.3, Comes(refitted[i], Lean(refitted[i]), across: true));
            }

            for (int j = i + 1; j < refitted.Count; j++)
            {
                (GatePlace one, GatePlace other) = (refitted[i], refitted[j]);
                bool known = context.LastGood.ContainsKey(one) && context.LastGood.ContainsKey(other);
                bool across = known && one.Side != other.Side;
                WrongSeat(
                    new(Core.Diagnosing.Cause.WrongSeat, one, other),
                    known ? 0.3 : 2.5,
                    [.. Comes(one, known ? Lean(other) : Lean(one), across), .. Comes(other, known ? Lean(one) : Lean(other), across)]);
            }
        }
    }

    private (double Aft, double Out) Lean(GatePlace gate) =>
        (_means[_unknowns.IndexOf($"{gate} aft")], _means[_unknowns.IndexOf($"{gate} out")]);

    private IEnumerable<(int Unknown, double Shift)> Comes(GatePlace gate, (double Aft, double Out) lean, bool across)
    {
        (double aft, double @out) = Lean(gate);
        yield return (_unknowns.IndexOf($"{gate} aft"), (across ? -lean.Aft : lean.Aft) - aft);
        yield return (_unknowns.IndexOf($"{gate} out"), lean.Out - @out);
    }

    private void WrongSeat(CausePart part, double spread, IEnumerable<(int Unknown, double Shift)> moves) =>
        _causes.Add(new(part, 0.05, [.. moves.Select(m => (m.Unknown, spread, m.Shift))]));

    private void FillRow(int row, Reading reading)
    {
        double theta = reading.At.Angle.Degrees * Math.PI / 180;
        double lie = reading.Lie.Lie == Lie.Upright ? 1 : -1;
        double side = reading.Gate.Side == Side.Port ? 1 : -1;
        void Set(string unknown, double slope) => _design[row, _unknowns.IndexOf(unknown)] = slope;
        if (reading.Item is ReadItem.Gate or ReadItem.GatePitch)
        {
            Set($"{reading.Gate} pitch", 1);
        }

        if (reading.Item == ReadItem.GatePitch)
        {
            return;
        }

        Set($"zero {reading.Gauge.Name}", 1);
        switch (reading.Item)
        {
            case ReadItem.PinAft:
                Set($"{reading.Gate} aft", 1);
                Set($"bow {reading.Lie}", lie);
                break;
            case ReadItem.PinOut:
                Set($"{reading.Gate} out", 1);
                Set($"roll {reading.Lie}", lie * side);
                break;
            case ReadItem.Sleeve:
                Set($"{reading.Gate} sleeve", 1);
                Set($"bow {reading.Lie}", lie);
                break;
            default:
                Set($"{reading.Gate} aft", Math.Cos(theta));
                Set($"{reading.Gate} out", Math.Sin(theta));
                Set($"bow {reading.Lie}", lie * Math.Cos(theta));
                Set($"roll {reading.Lie}", lie * side * Math.Sin(theta));
                break;
        }
    }

    private static double Noise(Reading reading)
    {
        double held = reading.Item != ReadItem.Gate ? 0 : reading.At.Station == Station.Abeam ? 1 : 5;
        double resolution = reading.Gauge.Resolution.Degrees;
        double repeatability = reading.Gauge.Repeatability.Degrees;
        return (resolution * resolution / 12) + (repeatability * repeatability) + Math.Pow(0.5 * held * Math.PI / 180, 2);
    }

    private (Vector<double> Means, Matrix<double> Variances) Prior(DenseStory story)
    {
        var means = Vector<double>.Build.DenseOfEnumerable(_means);
        var variances = Vector<double>.Build.DenseOfEnumerable(_variances);
        foreach ((int unknown, double spread, double shift) in story.Causes.SelectMany(c => c.Opens))
        {
            means[unknown] += shift;
            variances[unknown] += spread * spread;
        }

        return (means, Matrix<double>.Build.DiagonalOfDiagonalVector(variances));
    }

    private Matrix<double> ReadingCovariance(Matrix<double> prior) =>
        (_design * prior * _design.Transpose()) + Matrix<double>.Build.DiagonalOfDiagonalVector(_noise);
}

/// <summary>A cause: how likely it is, and which unknowns it opens by how much, and shifts.</summary>
internal sealed record DenseCause(CausePart Part, double Chance, (int Unknown, double Spread, double Shift)[] Opens)
{
    public GatePlace[] Gates => [.. new[] { Part.Gate, Part.Other }.OfType<GatePlace>()];
}

/// <summary>A joint story: none, one or two causes.</summary>
internal sealed record DenseStory(IReadOnlyList<DenseCause> Causes)
{
    /// <summary>The same for the same causes, in whatever order.</summary>
    public string Key => KeyOf(Causes.Select(c => c.Part));

    public double LogOdds => Causes.Sum(c => Math.Log(c.Chance / (1 - c.Chance)));

    public static string KeyOf(IEnumerable<CausePart> parts) =>
        string.Join(" and ", parts.Select(p => p.ToString()).Order(StringComparer.Ordinal));
}
