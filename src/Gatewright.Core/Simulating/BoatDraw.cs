using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Simulating;

/// <summary>Draws boats as the model of the diagnosis believes them to be.</summary>
public static class BoatDraw
{
    /// <summary>The causes that a single faulty gate is drawn from.</summary>
    public static IReadOnlyList<Cause> GateCauses { get; } = [Cause.GatePitch, Cause.PinAft, Cause.PinOut, Cause.Rigger];

    /// <summary>A boat with nothing wrong, or one cause or two, as often as the plan's prior chances say.</summary>
    /// <remarks>
    /// Every cause is drawn by itself, and what makes no story (three causes, or two on one gate) is drawn again: that
    /// leaves each story as likely as the product of its odds, which is what the diagnosis starts from.
    /// </remarks>
    public static TrueBoat FromPrior(BoatPlan plan, Draws draws)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(draws);
        List<CausePart> wrong;
        do
        {
            wrong = [.. Possible(plan).Where(part => draws.Happens(plan.Settings.Chances.Of(part.Cause)))];
        }
        while (!IsStory(wrong));
        return With(plan, wrong, draws);
    }

    /// <summary>A boat with one faulty gate, any gate and any of its four causes alike, far enough out to matter.</summary>
    /// <param name="plan">The boat, and how it is read.</param>
    /// <param name="draws">Random numbers.</param>
    /// <param name="least">Its state is drawn until |γ − γ₀| + |a − a₀| + |o − o₀| of that gate is above this.</param>
    public static TrueBoat WithFaultyGate(BoatPlan plan, Draws draws, Angle least)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(draws);
        GatePlace gate = draws.OneOf(plan.Gates);
        CausePart[] fault = [new(draws.OneOf(GateCauses), gate)];
        TrueBoat boat;
        do
        {
            boat = With(plan, fault, draws);
        }
        while (Off(boat.Gates[gate], plan.Settings.Spreads.Target) <= least);
        return boat;
    }

    /// <summary>A boat with given causes, none of them a rigger on another's place.</summary>
    public static TrueBoat With(BoatPlan plan, IReadOnlyList<CausePart> wrong, Draws draws)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(wrong);
        ArgumentNullException.ThrowIfNull(draws);
        if (wrong.FirstOrDefault(part => part.Cause == Cause.WrongSeat) is { } part)
        {
            throw new ArgumentException($"{part} has no spread to draw from.", nameof(wrong));
        }

        Spreads spreads = plan.Settings.Spreads;
        var gates = new Dictionary<GatePlace, GateState>();
        var sleeves = new Dictionary<GatePlace, SleeveError>();
        foreach (GatePlace gate in plan.Gates)
        {
            gates[gate] = Gate(spreads, draws, cause => wrong.Contains(new(cause, gate)));
            Angle opened = Opened(spreads.Sleeve, wrong.Contains(new(Cause.Sleeve, gate)));
            sleeves[gate] = new(draws.Normal(spreads.HealthySleeve) + draws.Normal(opened));
        }

        LevelEstimate level = LevelEstimate.Of(plan.Lie.Level, plan.Settings.Measuring);
        Angle tipped = Opened(spreads.Level, wrong.Any(p => p.Cause == Cause.HullLevel));
        Angle knocked = Opened(spreads.GaugeZero, wrong.Any(p => p.Cause == Cause.GaugeZero));
        Estimate zero = plan.Gauge.Zero.Estimate;
        return new(
            wrong,
            gates,
            sleeves,
            new(new(level.Attitude.BowHigh.Angle + draws.Normal(level.U) + draws.Normal(tipped)),
                new(level.Attitude.PortLow.Angle + draws.Normal(level.U) + draws.Normal(tipped))),
            zero.Value + draws.Normal(zero.U) + draws.Normal(knocked));
    }

    private static IEnumerable<CausePart> Possible(BoatPlan plan) =>
        plan.Gates.SelectMany(gate => GateCauses.Select(cause => new CausePart(cause, gate)))
            .Append(new(Cause.HullLevel))
            .Append(new(Cause.GaugeZero, Gauge: plan.Gauge.Name));

    private static bool IsStory(List<CausePart> wrong) =>
        wrong.Count < 2 || (wrong.Count == 2 && (wrong[0].Gate is null || wrong[0].Gate != wrong[1].Gate));

    private static GateState Gate(Spreads spreads, Draws draws, Func<Cause, bool> has)
    {
        GateState target = spreads.Target;
        Angle pitch = Opened(spreads.GatePitch, has(Cause.GatePitch));
        Angle aft = Opened(spreads.Lean, has(Cause.PinAft) || has(Cause.Rigger));
        Angle @out = Opened(spreads.Lean, has(Cause.PinOut) || has(Cause.Rigger));
        return new(
            new(target.GatePitch.Angle + draws.Normal(spreads.HealthyGatePitch) + draws.Normal(pitch)),
            new(new(target.Pin.Aft.Angle + draws.Normal(spreads.HealthyLean) + draws.Normal(aft)),
                new(target.Pin.Out.Angle + draws.Normal(spreads.HealthyLean) + draws.Normal(@out))));
    }

    private static Angle Opened(Angle spread, bool isOpen) => isOpen ? spread : Angle.Zero;

    private static Angle Off(GateState gate, GateState target) => Angle.FromDegrees(
        Math.Abs(gate.GatePitch.Degrees - target.GatePitch.Degrees)
        + Math.Abs(gate.Pin.Aft.Degrees - target.Pin.Aft.Degrees)
        + Math.Abs(gate.Pin.Out.Degrees - target.Pin.Out.Degrees));
}
