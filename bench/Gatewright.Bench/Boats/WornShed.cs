using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Mending;
using Gatewright.Core.Simulating;
using Gatewright.Planning;

namespace Gatewright.Bench.Boats;

/// <summary>A large club's shed at the end of a hard season, the same one for the same number: 60 boats, 300 gates, faults in most boats.</summary>
internal static class WornShed
{
    public const int Boats = 60;
    public const int Gates = 300;

    private static readonly string[] Classes = ["8+", "4-", "4x", "2x", "1x", "2-", "4+", "8+", "4x", "1x"];

    /// <summary>Half of what all of it would want, so that the boats compete.</summary>
    public static Stores Shelf { get; } = Stores.Of(
    [
        new(new(PartKind.Insert, 3), 4), new(new(PartKind.Insert, 4), 10), new(new(PartKind.Insert, 5), 4),
        new(new(PartKind.Shim, 0.5), 10), new(new(PartKind.Shim, 1), 10), new(new(PartKind.Shim, 2), 5),
        new(new(PartKind.Washer, 0.5), 4), new(new(PartKind.Washer, 1), 8), new(new(PartKind.Washer, 2), 4),
        new(new(PartKind.Pin, 0), 2),
    ]);

    public static IReadOnlyList<ShedBoat> Read(int number)
    {
        var draws = new Draws(new Random(number).NextDouble);
        return [.. Enumerable.Range(0, Boats).Select(i => Boat($"boat {i:00}", new(BoatClass.Parse(Classes[i % Classes.Length])), draws))];
    }

    /// <summary>Three gates in ten are faulty.</summary>
    private static ShedBoat Boat(string name, BoatPlan plan, Draws draws)
    {
        CausePart[] faults = [.. plan.Gates.Where(_ => draws.Happens(0.3)).Select(g => new CausePart(draws.OneOf(BoatDraw.GateCauses), g))];
        TrueBoat boat = BoatDraw.With(plan, faults, draws);
        return new(BoatCheck.Of(new Reader(boat, plan, draws).Round(name), BoatContext.None, CheckSettings.Default));
    }
}
