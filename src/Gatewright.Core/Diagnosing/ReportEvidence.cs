using Gatewright.Core.Geometry;

namespace Gatewright.Core.Diagnosing;

/// <summary>What reports say for or against a story: ln p(reports | story, readings).</summary>
/// <remarks>
/// Reports are independent given the story. What a crab says is averaged over the story's own state; the states
/// themselves are not moved by it, which would leave the normal family, so it weighs stories and not degrees.
/// </remarks>
internal sealed class ReportEvidence
{
    private readonly List<IReportClue> _clues;
    private readonly EvidenceKernel _kernel;
    private readonly ReportLikelihoods _likelihoods;

    public ReportEvidence(EvidenceKernel kernel)
    {
        _kernel = kernel;
        _likelihoods = kernel.Model.Settings.Reports;
        _clues = [.. kernel.Model.Context.Reports.Select(Clue)];
    }

    public bool IsEmpty => _clues.Count == 0;

    /// <summary>ln p(reports | story, readings).</summary>
    public double Log(int story, IReadOnlyList<Opening> parts, StoryTable table)
    {
        double sum = 0;
        foreach (IReportClue clue in _clues)
        {
            sum += Math.Log(clue.Likelihood(story, parts, table));
        }

        return sum;
    }

    private IReportClue Clue(Report report) => report.Kind switch
    {
        ReportKind.Knock or ReportKind.Refitted => new CauseClue(report, _likelihoods),
        ReportKind.CrabEarly => OfPitch(report, Station.Catch, _likelihoods.CrabEarly, falling: true),
        ReportKind.CrabAtFinish => OfPitch(report, Station.Finish, _likelihoods.CrabAtFinish, falling: true),
        ReportKind.WashesOut => OfPitch(report, Station.Abeam, _likelihoods.WashesOut, falling: false),
        _ => OfSides(report, _likelihoods.DownToOneSide),
    };

    /// <summary>The pitch of the blade there: that of the gate, and what the oar's sleeve adds.</summary>
    private IReportClue OfPitch(Report report, Station station, ReportCurve curve, bool falling)
    {
        curve.Check(report.Kind);
        StateLayout layout = _kernel.Model.Layout;
        if (report.Gate is not { } gate || !layout.Gates.Contains(gate))
        {
            return new ConstantClue(curve.Base);
        }

        OarAngle angle = _kernel.Model.Settings.Measuring.Angles(layout.Rowing).At(station);
        PitchSlopes slopes = PitchSlopes.At(angle, gate.Side, Lie.Upright);
        int first = layout.Gate(gate);
        var sum = layout.Sleeve(gate) is { } sleeve
            ? new StateSum(_kernel, [first, first + 1, first + 2, sleeve], [1, slopes.Aft, slopes.Out, 1])
            : new StateSum(_kernel, [first, first + 1, first + 2], [1, slopes.Aft, slopes.Out]);
        return new PitchClue(sum, falling ? curve.Below : curve.Above);
    }

    /// <summary>Abeam a gate's pitch is γ + a: the mean of the high side less the mean of the low side.</summary>
    private IReportClue OfSides(Report report, ReportCurve curve)
    {
        curve.Check(report.Kind);
        StateLayout layout = _kernel.Model.Layout;
        int low = layout.Gates.Count(g => g.Side == report.Side);
        int high = layout.Gates.Count - low;
        if (low == 0 || high == 0)
        {
            return new ConstantClue(curve.Base);
        }

        var at = new List<int>();
        var weights = new List<double>();
        foreach (GatePlace gate in layout.Gates)
        {
            double weight = gate.Side == report.Side ? -1.0 / low : 1.0 / high;
            at.AddRange([layout.Gate(gate), layout.Gate(gate) + 1]);
            weights.AddRange([weight, weight]);
        }

        return new PitchClue(new(_kernel, [.. at], [.. weights]), curve.Above);
    }
}
