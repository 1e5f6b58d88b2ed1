using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Simulating;

namespace Gatewright.Cli.Simulate;

/// <summary>How often the true seat and the true cause of a faulty gate come first, and among the first two.</summary>
/// <param name="Seat">The gate with the largest probability that anything is wrong is the true one.</param>
/// <param name="SeatOfTwo">It is one of the two largest.</param>
/// <param name="Cause">Of every cause at every gate and of the whole boat the true one is the most probable.</param>
/// <param name="CauseOfTwo">It is one of the two most probable.</param>
internal sealed record Ranking(Counted Seat, Counted SeatOfTwo, Counted Cause, Counted CauseOfTwo)
{
    /// <summary>Thrown by less than this in all, a gate is hardly faulty.</summary>
    public static Angle LeastFault { get; } = Angle.FromDegrees(1.5);

    public static Ranking Of(BoatPlan plan, SimulateRequest request)
    {
        List<(int Seat, int Cause)> ranks = Findings.ForEachBoat(request, 1, draws => Rank(plan, draws));
        return new(
            Counted.Among(ranks, r => r.Seat == 0),
            Counted.Among(ranks, r => r.Seat <= 1),
            Counted.Among(ranks, r => r.Cause == 0),
            Counted.Among(ranks, r => r.Cause <= 1));
    }

    private static (int Seat, int Cause) Rank(BoatPlan plan, Draws draws)
    {
        TrueBoat boat = BoatDraw.WithFaultyGate(plan, draws, LeastFault);
        Diagnosis diagnosis = Diagnosis.Of(new Reader(boat, plan, draws).Round("boat"), BoatContext.None, plan.Settings);
        CausePart truth = boat.Wrong[0];
        List<GateDiagnosis> gates = [.. diagnosis.Gates.OrderByDescending(g => g.Wrong)];
        return (gates.FindIndex(g => g.Gate == truth.Gate), Causes(diagnosis).IndexOf(truth));
    }

    /// <summary>Most probable first; what reads alike to the last digit stands as the diagnosis lists it.</summary>
    private static List<CausePart> Causes(Diagnosis diagnosis) =>
    [
        .. diagnosis.Gates
            .SelectMany(g => g.Causes.Where(c => c.Cause is not null), (g, c) => (Part: new CausePart(c.Cause!.Value, g.Gate), c.Probability))
            .Concat(new[] { Core.Diagnosing.Cause.HullLevel, Core.Diagnosing.Cause.GaugeZero }
                .Select(cause => (Part: new CausePart(cause), Probability: diagnosis.Probability(p => p.Cause == cause))))
            .OrderByDescending(c => Math.Round(c.Probability, 12))
            .Select(c => c.Part),
    ];
}
