using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Core.Mending.Options;
using Gatewright.Core.Mending;
using Gatewright.Core.Simulating;
using Gatewright.Core.Tests.Support;
using static Gatewright.Core.Tests.Diagnosing.Boats;

namespace Gatewright.Core.Tests.Mending.Options;

/// <summary>Boats whose gates are to be mended.</summary>
internal static class Sheds
{
    public static OptionSettings Usual { get; } = new(MendingSettings.Default, PartSizes.Of(MendingSettings.Default));

    /// <summary>A coxless pair read at three stations on a level hull; bow's gate is sound, stroke's is given.</summary>
    public static BoatCheck Pair(double atCatch, double abeam, double atFinish, Standard? standard = null) => Check(
        standard,
        [.. Stations.All.Select(s => Read(Starboard(1), s, 4)),
            Read(Port(2), Station.Catch, atCatch), Read(Port(2), Station.Abeam, abeam), Read(Port(2), Station.Finish, atFinish)]);

    public static BoatCheck Check(Standard? standard, params Reading[] readings) => BoatCheck.Of(
        Boat("2-", readings), BoatContext.None, CheckSettings.Default with { Standard = standard ?? Standard.Club });

    /// <summary>A boat with one faulty gate, drawn; and that gate.</summary>
    public static (BoatCheck Check, GatePlace Gate) Drawn(int seed, string boatClass = "4x")
    {
        var random = new Random(seed);
        var draws = new Draws(random.NextDouble);
        var plan = new BoatPlan(BoatClass.Parse(boatClass));
        TrueBoat boat = BoatDraw.WithFaultyGate(plan, draws, Angle.FromDegrees(2));
        BoatReadings readings = new Reader(boat, plan, draws).Round("boat");
        return (BoatCheck.Of(readings, BoatContext.None, CheckSettings.Default), boat.Wrong[0].Gate!.Value);
    }

    /// <summary>The only option that does one thing with these parts, and whose instruction has some words in it.</summary>
    public static GateOption With(this IEnumerable<GateOption> options, RemedyKind kind, string words, params Part[] parts) =>
        options.Single(o => o.Kinds.SequenceEqual([kind])
            && o.Parts.SequenceEqual(parts.Order())
            && o.Instruction.Contains(words, StringComparison.Ordinal));
}
