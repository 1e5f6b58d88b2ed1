using Gatewright.Core;

namespace Gatewright.App.Explaining;

/// <summary>Something to be seen in one sentence, and the sliders set for it.</summary>
/// <param name="Name">Its name in an address, and of its texts.</param>
/// <param name="Gate">The sliders.</param>
public sealed record Lesson(string Name, TeachingGate Gate)
{
    /// <summary>All of them, from the plain case on.</summary>
    public static IReadOnlyList<Lesson> All { get; } =
    [
        new("true", new()),
        new("out", new() { PinOut = 2, OarAngle = 55 }),
        new("aft", new() { PinAft = 2 }),
        new("insert", new() { GatePitch = 6 }),
        new("bow", new() { BowHigh = 2 }),
        new("rolled", new() { PortLow = 2, OarAngle = 55 }),
        new("turned", new() { BowHigh = 1.5, Lie = Lie.Inverted }),
        new("sleeve", new() { Sleeve = -2 }),
        new("dives", new() { GatePitch = 1.9, PinOut = 3.6, OarAngle = -35 }),
    ];
}
