using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Simulating;

namespace Gatewright.Cli.Simulate;

/// <summary>
/// Whether the probabilities hold: of boats that are faulty as often as boats are, how often what was called so probable
/// was true.
/// </summary>
/// <param name="Bands">From improbable to probable; bands without a cause in them are left out.</param>
/// <param name="Brier">The Brier score: the mean square of what was stated less what was true (1 or 0).</param>
/// <param name="Unread">The score of stating for every cause what its chance was before anything was read.</param>
internal sealed record Reliability(IReadOnlyList<ReliabilityBand> Bands, Averaged Brier, Averaged Unread)
{
    private static readonly double[] Edges = [0, 0.01, 0.05, 0.2, 0.4, 0.6, 0.8, 0.95, 1];

    public static Reliability Of(BoatPlan plan, SimulateRequest request)
    {
        List<List<Statement>> boats = Findings.ForEachBoat(request, 2, draws => Statements(plan, draws));
        List<Statement> all = [.. boats.SelectMany(b => b)];
        return new(
            [.. Edges.Zip(Edges.Skip(1), (from, to) => ReliabilityBand.Of(from, to, all)).OfType<ReliabilityBand>()],
            Averaged.Over(boats, b => b.Average(s => s.Square(s.Probability))),
            Averaged.Over(boats, b => b.Average(s => s.Square(s.Before))));
    }

    private static List<Statement> Statements(BoatPlan plan, Draws draws)
    {
        TrueBoat boat = BoatDraw.FromPrior(plan, draws);
        Diagnosis diagnosis = Diagnosis.Of(new Reader(boat, plan, draws).Round("boat"), BoatContext.None, plan.Settings);
        var result = new List<Statement>();
        foreach (GateDiagnosis gate in diagnosis.Gates)
        {
            result.AddRange(BoatDraw.GateCauses.Select(cause => About(cause, gate.Gate)));
        }

        result.AddRange([About(Cause.HullLevel, null), About(Cause.GaugeZero, null)]);
        return result;

        Statement About(Cause cause, GatePlace? gate) => new(
            diagnosis.Probability(p => p.Cause == cause && p.Gate == gate),
            plan.Settings.Chances.Of(cause),
            boat.Wrong.Any(p => p.Cause == cause && p.Gate == gate));
    }
}

/// <summary>One cause of one boat, how probable it was called, and whether it was true.</summary>
internal readonly record struct Statement(double Probability, double Before, bool IsTrue)
{
    /// <summary>The square of a probability less what was true.</summary>
    public double Square(double probability) => Math.Pow(probability - (IsTrue ? 1 : 0), 2);
}

/// <summary>Causes that were called about as probable.</summary>
/// <param name="From">The least probability in the band.</param>
/// <param name="To">The most; in it only where it is 1.</param>
/// <param name="True">How many of them were true.</param>
/// <param name="Stated">How probable they were called on average.</param>
/// <param name="Error">The standard error of the true share if they are as probable as was said: √Σp(1 − p)/n.</param>
internal sealed record ReliabilityBand(double From, double To, Counted True, double Stated, double Error)
{
    public static ReliabilityBand? Of(double from, double to, IReadOnlyList<Statement> all)
    {
        List<Statement> its = [.. all.Where(s => s.Probability >= from && (s.Probability < to || to == 1))];
        return its.Count == 0
            ? null
            : new(
                from,
                to,
                Counted.Among(its, s => s.IsTrue),
                its.Average(s => s.Probability),
                Math.Sqrt(its.Sum(s => s.Probability * (1 - s.Probability))) / its.Count);
    }
}
