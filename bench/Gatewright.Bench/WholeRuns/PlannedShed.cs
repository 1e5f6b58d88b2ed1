using System.Globalization;
using Gatewright.Bench.Boats;
using Gatewright.Bench.Reporting;
using Gatewright.Core.Judging;
using Gatewright.Planning;

namespace Gatewright.Bench.WholeRuns;

/// <summary>The mending of a whole shed planned and proven the best, from the readings to the shopping list, each in a process of its own.</summary>
internal sealed class PlannedShed : IBench, IAlone
{
    private const int Sheds = 3;

    public IEnumerable<Measured> Measure()
    {
        double? before = ChildTime.Seconds();
        List<AloneRun> runs = [.. Enumerable.Range(1, Sheds).Select(shed => Alone.Start<PlannedShed>(shed.ToString(CultureInfo.InvariantCulture)))];
        string note = string.Create(
            CultureInfo.InvariantCulture, $"slowest of {Sheds} sheds; {runs.Min(run => run.Seconds):G3} s the fastest{ChildTime.Note(before, Sheds)}");
        return [new(Target.AtMost(10, "s", "60 boats, 300 gates: their mending planned"), runs.Max(run => run.Seconds), note)];
    }

    public void Do(string argument)
    {
        IReadOnlyList<ShedBoat> boats = WornShed.Read(int.Parse(argument, CultureInfo.InvariantCulture));
        ShedPlan plan = new Planner(PlanSettings.Default).Plan(boats, WornShed.Shelf);

        // A figure for a smaller shed, one without much to do, or a plan that might be bettered would be worth nothing.
        int gates = boats.Sum(boat => boat.Check.Verdict.Gates.Count);
        int bad = boats.Count(boat => boat.Check.Verdict.Verdict != Verdict.Good);
        if (gates != WornShed.Gates || bad < WornShed.Boats / 2 || !plan.IsProven || plan.Count(BoatOutcome.Mended) == 0 || plan.Shopping.Count == 0)
        {
            throw new InvalidOperationException($"{gates} gates, {bad} boats not good, proven: {plan.IsProven}");
        }
    }
}
