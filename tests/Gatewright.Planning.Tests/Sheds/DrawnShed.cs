using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Core.Mending;
using Gatewright.Core.Simulating;

namespace Gatewright.Planning.Tests.Sheds;

/// <summary>A few small boats with faulty gates, and a shelf with too little for them: the same for the same seed.</summary>
internal sealed class DrawnShed
{
    private static readonly string[] s_classes = ["1x", "2-", "2x"];

    /// <summary>Few sizes, so that every plan can be tried.</summary>
    public static PlanSettings Settings { get; } = new()
    {
        Mending = MendingSettings.Default with { ShimSizesMm = [1], LeastInsertDegrees = 3, MostInsertDegrees = 5 },
    };

    public DrawnShed(int seed, int boats = 2)
    {
        var random = new Random(seed);
        Standard standard = random.Next(3) == 0 ? Standard.Race : Standard.Club;
        Boats = [.. Enumerable.Range(1, boats).Select(i => Boat($"boat {i}", random, standard))];
        Stores = Shelf(random);
    }

    public IReadOnlyList<ShedBoat> Boats { get; }

    public Stores Stores { get; }

    public ShedPlan Plan() => Plan(Stores);

    public ShedPlan Plan(Stores stores) => new Planner(Settings).Plan(Boats, stores);

    private static ShedBoat Boat(string name, Random random, Standard standard)
    {
        var draws = new Draws(random.NextDouble);
        var plan = new BoatPlan(BoatClass.Parse(s_classes[random.Next(s_classes.Length)]));
        List<GatePlace> gates = [.. plan.Gates.OrderBy(_ => random.Next()).Take(random.Next(1, 3))];
        TrueBoat boat = BoatDraw.With(
            plan, [.. gates.Select(g => new CausePart(BoatDraw.GateCauses[random.Next(4)], g))], draws);
        BoatReadings readings = new Reader(boat, plan, draws).Round(name);
        return new(BoatCheck.Of(readings, BoatContext.None, CheckSettings.Default with { Standard = standard }));
    }

    private static Stores Shelf(Random random) => Stores.Of(
    [
        .. new[] { 3, 4, 5 }.Select(degrees => new PartCount(new(PartKind.Insert, degrees), random.Next(2))),
        new(new(PartKind.Shim, 1), random.Next(5)),
        new(new(PartKind.Washer, 1), random.Next(5)),
        new(new(PartKind.Pin, 0), random.Next(2)),
    ]);
}
