using Gatewright.Core.Geometry;

namespace Gatewright.Core.Diagnosing;

/// <summary>What reports say for or against a story: ln p(reports | story, readings).</summary>
/// <remarks>
/// Reports are independent given the story. A gate's causes each can bring a report about by itself (noisy or). What
/// a crab says is averaged over the story's own state; the states themselves are not moved by it, which would leave
/// the normal family, so it weighs stories and not degrees.
/// </remarks>
internal sealed class ReportEvidence(IReadOnlyList<Report> reports, StateLayout layout, DiagnosingSettings settings)
{
    public bool IsEmpty => reports.Count == 0;

    public double Log(IReadOnlyList<CausePart> parts, Func<StoryState> state)
    {
        double sum = 0;
        foreach (Report report in reports)
        {
            sum += Math.Log(Chance(report, parts, state));
        }

        return sum;
    }

    private double Chance(Report report, IReadOnlyList<CausePart> parts, Func<StoryState> state)
    {
        ReportLikelihoods likelihoods = settings.Reports;
        return report.Kind switch
        {
            ReportKind.Knock or ReportKind.Refitted => ByCause(report, parts, likelihoods),
            ReportKind.CrabEarly => ByPitch(report.Gate, Station.Catch, state, likelihoods.CrabEarly.Below, likelihoods.CrabEarly),
            ReportKind.CrabAtFinish => ByPitch(report.Gate, Station.Finish, state, likelihoods.CrabAtFinish.Below, likelihoods.CrabAtFinish),
            ReportKind.WashesOut => ByPitch(report.Gate, Station.Abeam, state, likelihoods.WashesOut.Above, likelihoods.WashesOut),
            _ => BySide(report.Side, state, likelihoods.DownToOneSide),
        };
    }

    private static double ByCause(Report report, IReadOnlyList<CausePart> parts, ReportLikelihoods likelihoods)
    {
        double missed = 1 - likelihoods.Base(report.Kind);
        foreach (CausePart part in parts)
        {
            if (report.Gate is { } gate && part.Touches(gate) && likelihoods.Given(report.Kind, part.Cause) is { } chance)
            {
                missed *= 1 - chance;
            }
        }

        return 1 - missed;
    }

    private double ByPitch(
        GatePlace? at, Station station, Func<StoryState> state, Func<double, double, double> curve, ReportCurve otherwise)
    {
        if (at is not { } gate || !layout.Gates.Contains(gate))
        {
            return otherwise.Base;
        }

        PitchSlopes slopes = PitchSlopes.At(settings.Measuring.Angles(layout.Rowing).At(station), gate.Side, Lie.Upright);
        int first = layout.Gate(gate);
        return layout.Sleeve(gate) is { } sleeve
            ? Average(state(), [first, first + 1, first + 2, sleeve], [1, slopes.Aft, slopes.Out, 1], curve)
            : Average(state(), [first, first + 1, first + 2], [1, slopes.Aft, slopes.Out], curve);
    }

    private double BySide(Side? down, Func<StoryState> state, ReportCurve curve)
    {
        List<GatePlace> low = [.. layout.Gates.Where(g => g.Side == down)];
        List<GatePlace> high = [.. layout.Gates.Where(g => g.Side != down)];
        if (low.Count == 0 || high.Count == 0)
        {
            return curve.Base;
        }

        // Abeam a gate's pitch is γ + a: the mean of the high side less the mean of the low side.
        var at = new List<int>();
        var weights = new List<double>();
        foreach (GatePlace gate in layout.Gates)
        {
            double weight = gate.Side == down ? -1.0 / low.Count : 1.0 / high.Count;
            at.AddRange([layout.Gate(gate), layout.Gate(gate) + 1]);
            weights.AddRange([weight, weight]);
        }

        return Average(state(), [.. at], [.. weights], curve.Above);
    }

    private static double Average(
        StoryState state, ReadOnlySpan<int> at, ReadOnlySpan<double> weights, Func<double, double, double> curve) =>
        curve(state.Mean(at, weights), state.Covariance(at, weights, at, weights));
}
