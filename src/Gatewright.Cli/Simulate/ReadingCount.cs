using Gatewright.Core;
using Gatewright.Core.Advising;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Simulating;

namespace Gatewright.Cli.Simulate;

/// <summary>How many readings one way of reading takes to decide what is wrong with a boat that has one faulty gate.</summary>
/// <param name="How">The way, in words.</param>
/// <param name="Readings">How many; what is never decided counts all that were taken.</param>
/// <param name="Decided">How many boats were decided.</param>
/// <param name="Right">Of how many the true cause was then the likeliest of its gate.</param>
internal sealed record ReadingCount(string How, Averaged Readings, Counted Decided, Counted Right)
{
    /// <summary>As many as five times the gates are read no further: some boats are never decided.</summary>
    private const int MostOfAGate = 5;

    public static IReadOnlyList<ReadingCount> Of(BoatPlan plan, SimulateRequest request)
    {
        Station[] rounds = [request.First, .. Stations.All.Where(s => s != request.First)];
        List<(CausePart Truth, ReadOn Advised, ReadOn Rounds, ReadOn Seats)> boats = Findings.ForEachBoat(request, 3, draws =>
        {
            TrueBoat boat = BoatDraw.WithFaultyGate(plan, draws, Ranking.LeastFault);
            var reader = new Reader(boat, plan, draws);
            (CheckSettings settings, AdvisingSettings advising) = (CheckSettings.Default with { Diagnosing = plan.Settings }, AdvisingSettings.Default);
            return (
                boat.Wrong[0],
                ReadOn.AsAdvised(reader, plan, request.First, settings, advising, MostOfAGate * plan.Gates.Count),
                ReadOn.InOrder(reader, plan, ReadOn.StationByStation(plan, rounds), settings, advising),
                ReadOn.InOrder(reader, plan, ReadOn.SeatBySeat(plan), settings, advising));
        });
        string first = request.First.Phrase();
        return
        [
            Count($"a round {first}, then as advised", b => b.Advised),
            Count("the same round, then the others", b => b.Rounds),
            Count("everything, seat by seat", b => b.Seats),
        ];

        ReadingCount Count(string how, Func<(CausePart Truth, ReadOn Advised, ReadOn Rounds, ReadOn Seats), ReadOn> of) => new(
            how,
            Averaged.Over(boats, b => of(b).Readings),
            Counted.Among(boats, b => of(b).IsDecided),
            Counted.Among(boats, b => of(b).Check.Diagnosis.Gates.Single(g => g.Gate == b.Truth.Gate).Causes[0].Cause == b.Truth.Cause));
    }
}
