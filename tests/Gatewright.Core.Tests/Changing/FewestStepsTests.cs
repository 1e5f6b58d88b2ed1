using FsCheck.Xunit;
using Gatewright.Core.Changing;
using Gatewright.Core.Rig;

namespace Gatewright.Core.Tests.Changing;

/// <summary>No order of the riggers needs fewer steps than the plan's: held against every order there is.</summary>
public class FewestStepsTests
{
    [Property(MaxTest = 60)]
    public void A_four_is_changed_in_as_few_steps_as_the_best_of_all_orders(int seed) => Holds("4-", seed);

    [Property(MaxTest = 20)]
    public void So_is_an_eight(int seed) => Holds("8+", seed);

    [Property(MaxTest = 60)]
    public void So_is_a_quad_whose_riggers_go_by_twos(int seed) => Holds("4x", seed);

    private static void Holds(string className, int seed)
    {
        var random = new Random(seed);
        RigOfBoat now = Drawn(className, random);
        RigOfBoat wanted = Drawn(className, random);

        ChangePlan plan = now.To(wanted, Rigs.Exact);

        Assert.Empty(plan.Unclear);
        (int steps, int moved) = Best(now, wanted);
        Assert.Equal(steps, plan.Steps.Count);
        Assert.Equal(moved, plan.RiggersMoved);
    }

    /// <summary>Few values, so that many riggers fit in several places.</summary>
    private static RigOfBoat Drawn(string className, Random random)
    {
        RigOfBoat rig = Rigs.Even(className, 0);
        foreach (GatePlace gate in rig.Gates)
        {
            var place = new RigPlace(gate.Seat, gate.Side);
            int pitch = random.Next(3, 6);
            rig = rig.With(RigItem.Height, place, random.Next(16, 18), 0)
                .With(RigItem.GatePitch, place, pitch, 0).With(RigItem.PitchAbeam, place, pitch, 0);
            RigItem width = rig.Class.Rowing == Rowing.Scull ? RigItem.Span : RigItem.Spread;
            rig = rig.With(width, new(gate.Seat, null), (width == RigItem.Span ? 159 : 84) + random.Next(3), 0);
        }

        return rig;
    }

    /// <summary>Of all orders in which riggers stay on their side, in a quad the two of a seat together: steps, and of as many the riggers moved.</summary>
    private static (int Steps, int Moved) Best(RigOfBoat now, RigOfBoat wanted)
    {
        if (now.Class.Rowing == Rowing.Scull)
        {
            return Orders.Of(now.Class.Seats).Select(order => Sum(order.SelectMany((from, to) => new[]
            {
                Count(now, wanted, new(from + 1, Side.Port), new(to + 1, Side.Port), isWidthCounted: true),
                Count(now, wanted, new(from + 1, Side.Starboard), new(to + 1, Side.Starboard), isWidthCounted: false),
            }))).Min();
        }

        (int, int)[] sides = [.. now.Gates.GroupBy(g => g.Side).Select(side =>
        {
            GatePlace[] gates = [.. side];
            return Orders.Of(gates.Length)
                .Select(order => Sum(order.Select((from, to) => Count(now, wanted, gates[from], gates[to], isWidthCounted: true))))
                .Min();
        })];
        return Sum(sides);
    }

    private static (int Steps, int Moved) Sum(IEnumerable<(int Steps, int Moved)> parts) =>
        parts.Aggregate((sum, part) => (sum.Steps + part.Steps, sum.Moved + part.Moved));

    private static (int Steps, int Moved) Count(RigOfBoat now, RigOfBoat wanted, GatePlace from, GatePlace to, bool isWidthCounted)
    {
        int moved = from == to ? 0 : 1;
        int steps = moved;
        foreach (RigItem item in new[] { RigItem.Height, RigItem.PitchAbeam })
        {
            steps += At(now, item, from) == At(wanted, item, to) ? 0 : 1;
        }

        RigItem width = now.Class.Rowing == Rowing.Scull ? RigItem.Span : RigItem.Spread;
        if (isWidthCounted)
        {
            steps += At(now, width, from) == At(wanted, width, to) ? 0 : 1;
        }

        return (steps, moved);
    }

    private static double At(RigOfBoat rig, RigItem item, GatePlace gate) =>
        rig.Find(item, new(gate.Seat, item.HasSide() ? gate.Side : null))!.Value.Value;
}
