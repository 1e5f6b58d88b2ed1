using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Mending.Options;

namespace Gatewright.Core.Mending;

/// <summary>Works out the remedies for one cause at one gate: amounts, directions, and what to expect.</summary>
internal sealed class RemedyBench(BoatCheck check, CausePart part, GatePlace gate, MendingSettings settings)
{
    /// <summary>A correction smaller than this is not one: no shim is thin enough, and no gauge would show it.</summary>
    private const double LeastDegrees = 0.25;

    private readonly GateBelief _belief = GateBeliefs.Given(check.Diagnosis, gate, part);
    private readonly GateState _target = check.Context.Target(gate) ?? check.Settings.Diagnosing.Spreads.Target;

    /// <summary>How far the pin is to be tilted to the stern.</summary>
    private double Aft => _target.Pin.Aft.Degrees - _belief.Mean.Pin.Aft.Degrees;

    /// <summary>How far the pin is to be tilted away from the hull.</summary>
    private double Out => _target.Pin.Out.Degrees - _belief.Mean.Pin.Out.Degrees;

    /// <summary>The insert whose pitch comes nearest to the target, and the change from what stands there now.</summary>
    public Remedy? InsertSwap()
    {
        // Halfway between two inserts the one of more pitch: less is what dives.
        double step = settings.InsertStepDegrees;
        double wanted = step * Math.Floor((_target.GatePitch.Degrees / step) + 0.5);
        double change = wanted - _belief.Mean.GatePitch.Degrees;
        if (Math.Abs(change) < LeastDegrees)
        {
            return null;
        }

        return Make(
            RemedyKind.InsertSwap,
            GateState.FromDegrees(change, 0, 0),
            [new Work.FitInsert(wanted, change)],
            [new(PartKind.Insert, wanted)],
            JobMinutes.InsertSwap,
            _belief.WithNew(0, wanted, settings.InsertU.Degrees));
    }

    /// <summary>A shim under the pin's foot, at the edge away from which the top is to go.</summary>
    public Remedy? FootShimAft() => Tilted(TiltWays.FootAlong(Aft), Aft, settings.Dimensions.PinFootMm);

    /// <summary>The same, across the boat.</summary>
    public Remedy? FootShimOut() => Tilted(TiltWays.FootAcross(Out), Out, settings.Dimensions.PinFootMm);

    /// <summary>Washers behind one bolt of the plate: behind the lower one the pin's top goes inward.</summary>
    public Remedy? PlateWasher() => Tilted(TiltWays.Plate(Out), Out, settings.Dimensions.PlateBoltsMm);

    /// <summary>The backstay, set until the pin stands right along the boat.</summary>
    public Remedy? Backstay() => Math.Abs(Aft) >= LeastDegrees && BackstayStep.ToTilt(Aft, settings) is { } step
        ? Make(step, GateState.FromDegrees(0, step.AftDegrees, 0), step.Work with { IsDoubtful = true })
        : null;

    /// <summary>Washers for the lean across the boat and the backstay for the lean along it, or whichever is needed.</summary>
    public Remedy? SetBothWays()
    {
        if (PlateWasher() is not { } washer || Backstay() is not { } stay)
        {
            return PlateWasher() ?? Backstay();
        }

        return Make(
            RemedyKind.SetRigger,
            GateState.FromDegrees(0, stay.Change.Pin.Aft.Degrees, washer.Change.Pin.Out.Degrees),
            [.. washer.Steps, .. stay.Steps],
            washer.Parts,
            washer.Minutes + stay.Minutes,
            washer.After!.After(stay.Change, GateState.FromDegrees(0, settings.TiltU.Degrees, 0)));
    }

    /// <summary>How far the tip of the pin must come back, and which way.</summary>
    public Remedy? Straighten() => Math.Max(Math.Abs(Aft), Math.Abs(Out)) < LeastDegrees ? null : Make(
        RemedyKind.StraightenPin,
        GateState.FromDegrees(0, Aft, Out),
        [new Work.StraightenPin(Tip())],
        [],
        30,
        Upright());

    /// <summary>A new pin stands as upright as new pins do.</summary>
    public Remedy Replace() => Make(
        RemedyKind.ReplacePin,
        GateState.FromDegrees(0, Aft, Out),
        [new Work.FitPin()],
        [new(PartKind.Pin, 0)],
        JobMinutes.ReplacePin,
        Upright());

    /// <summary>First look whether the rigger only sits wrong.</summary>
    public Remedy Refit() => Make(
        RemedyKind.RefitRigger,
        GateState.FromDegrees(0, Aft, Out),
        [new Work.RefitRigger(Tip())],
        [],
        30,
        Upright());

    /// <summary>What cannot be set right on the boat.</summary>
    public Remedy Repair() => Make(
        RemedyKind.RepairRigger,
        GateState.FromDegrees(0, Aft, Out),
        [new Work.RepairRigger()],
        [],
        120,
        Upright());

    /// <summary>Riggers go back to their own places.</summary>
    public Remedy Exchange() => Make(
        RemedyKind.ExchangeRiggers,
        GateState.FromDegrees(0, Aft, Out),
        [new Work.ExchangeRiggers(part.Gate!.Value, part.Other)],
        [],
        40,
        Upright());

    /// <summary>A tilt made of shims or washers: as near as the sizes come, and how near that is.</summary>
    private Remedy? Tilted(TiltWay way, double wanted, double baseMm)
    {
        ShimPack pack = ShimPack.Nearest(Math.Abs(Shim.ThicknessMm(Angle.FromDegrees(wanted), baseMm)), settings.ShimSizesMm);
        if (Math.Abs(wanted) < LeastDegrees || pack.ThicknessesMm.Count == 0)
        {
            return null;
        }

        var step = new PackStep(way, pack, settings);
        double done = Math.Sign(wanted) * step.Degrees;
        double left = Math.Abs(wanted - done);
        return Make(
            step,
            way.IsAlong() ? GateState.FromDegrees(0, done, 0) : GateState.FromDegrees(0, 0, done),
            step.Work with { LeftDegrees = left < LeastDegrees ? 0 : left });
    }

    private GateBelief Upright() => _belief
        .WithNew(1, _target.Pin.Aft.Degrees, settings.NewPinU.Degrees)
        .WithNew(2, _target.Pin.Out.Degrees, settings.NewPinU.Degrees);

    /// <summary>How the pin's tip must move.</summary>
    private TipWay Tip() => new(Travel(Aft), Travel(Out));

    private double Travel(double degrees) => Math.Abs(degrees) < LeastDegrees
        ? 0
        : Shim.ThicknessMm(Angle.FromDegrees(degrees), settings.Dimensions.PinLengthMm);

    private Remedy Make(MendingStep step, GateState change, Work work) => Make(
        step.Kind, change, [work], step.Parts, step.Minutes, step.Apply(_belief, part.Cause));

    private Remedy Make(
        RemedyKind kind, GateState change, IReadOnlyList<Work> steps, IReadOnlyList<Part> parts, int minutes, GateBelief after) => new(
        kind, part, change, steps, parts, minutes, ExpectedReadings.Of(after, check))
    {
        Before = _belief,
        After = after,
    };
}
