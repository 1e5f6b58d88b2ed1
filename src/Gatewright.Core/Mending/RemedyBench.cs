using System.Globalization;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;

namespace Gatewright.Core.Mending;

/// <summary>Works out the remedies for one cause at one gate: amounts, directions in words, and what to expect.</summary>
internal sealed class RemedyBench(BoatCheck check, CausePart part, GatePlace gate, MendingSettings settings)
{
    /// <summary>A correction smaller than this is not one: no shim is thin enough, and no gauge would show it.</summary>
    private const double LeastDegrees = 0.25;

    private readonly GateBelief _belief = GateBeliefs.Given(check.Diagnosis, gate, part);
    private readonly GateState _target = check.Context.Target(gate) ?? check.Settings.Diagnosing.Spreads.Target;

    private double AftOff => _belief.Mean.Pin.Aft.Degrees - _target.Pin.Aft.Degrees;

    private double OutOff => _belief.Mean.Pin.Out.Degrees - _target.Pin.Out.Degrees;

    private double PitchOff => _belief.Mean.GatePitch.Degrees - _target.GatePitch.Degrees;

    private bool CanBeSet => part.Cause is Cause.PinAft or Cause.PinOut or Cause.Rigger;

    /// <summary>The insert whose pitch comes nearest to the target, and the change from what stands there now.</summary>
    public Remedy? InsertSwap()
    {
        double wanted = Math.Round(_target.GatePitch.Degrees / settings.InsertStepDegrees) * settings.InsertStepDegrees;
        double change = wanted - _belief.Mean.GatePitch.Degrees;
        if (Math.Abs(PitchOff) < LeastDegrees)
        {
            return null;
        }

        string more = change > 0 ? "more" : "less";
        return Make(
            RemedyKind.InsertSwap,
            GateState.FromDegrees(change, 0, 0),
            $"Fit an insert that gives {Number(wanted)}°: about {Number(Math.Abs(change))}° {more} than what is in the gate now. Look at the old one: worn, cracked, upside down or the wrong stamp.",
            [new(PartKind.Insert, wanted)],
            JobMinutes.InsertSwap,
            _belief.WithNew(0, wanted, settings.InsertU.Degrees));
    }

    /// <summary>A shim under the pin's foot, on the side away from which the top is to go.</summary>
    public Remedy? FootShimAft() => Tilted(
        RemedyKind.PinFootShim,
        PartKind.Shim,
        AftOff,
        settings.Dimensions.PinFootMm,
        off => GateState.FromDegrees(0, off, 0),
        AftOff > 0 ? "under the stern edge of the pin's foot: the top of the pin goes towards the bow"
            : "under the bow edge of the pin's foot: the top of the pin goes towards the stern",
        JobMinutes.PinFootShim);

    /// <summary>The same, across the boat.</summary>
    public Remedy? FootShimOut() => Tilted(
        RemedyKind.PinFootShim,
        PartKind.Shim,
        OutOff,
        settings.Dimensions.PinFootMm,
        off => GateState.FromDegrees(0, 0, off),
        OutOff > 0 ? "under the outer edge of the pin's foot, away from the hull: the top of the pin goes towards the hull"
            : "under the inner edge of the pin's foot, towards the hull: the top of the pin goes away from the hull",
        JobMinutes.PinFootShim);

    /// <summary>A washer behind one bolt of the plate: behind the lower one the pin's top goes inward.</summary>
    public Remedy? PlateWasher() => Tilted(
        RemedyKind.PlateWasher,
        PartKind.Washer,
        OutOff,
        settings.Dimensions.PlateBoltsMm,
        off => GateState.FromDegrees(0, 0, off),
        OutOff > 0 ? "behind the lower bolt of the rigger's plate: the top of the pin goes towards the hull"
            : "behind the upper bolt of the rigger's plate: the top of the pin goes away from the hull",
        JobMinutes.PlateWasher);

    /// <summary>The backstay pulls the pin's top to the stern when it is made shorter.</summary>
    public Remedy? Backstay()
    {
        if (Math.Abs(AftOff) < LeastDegrees)
        {
            return null;
        }

        double mm = Math.Abs(Shim.ThicknessMm(Angle.FromDegrees(AftOff), settings.Dimensions.BackstayHeightMm));
        string how = AftOff > 0
            ? $"Make the backstay {Number(mm)} mm longer: the top of the pin goes {Number(AftOff)}° towards the bow."
            : $"Make the backstay {Number(mm)} mm shorter: the top of the pin goes {Number(-AftOff)}° towards the stern.";
        return Make(
            RemedyKind.Backstay,
            GateState.FromDegrees(0, -AftOff, 0),
            how + " Only where the rigger has an adjustable backstay.",
            [],
            JobMinutes.Backstay,
            _belief.WithNew(1, _target.Pin.Aft.Degrees, settings.TiltU.Degrees));
    }

    /// <summary>A washer for the lean across the boat and the backstay for the lean along it, or whichever is needed.</summary>
    public Remedy? SetBothWays()
    {
        if (PlateWasher() is not { } washer || Backstay() is not { } stay)
        {
            return PlateWasher() ?? Backstay();
        }

        return Make(
            RemedyKind.SetRigger,
            GateState.FromDegrees(0, stay.Change.Pin.Aft.Degrees, washer.Change.Pin.Out.Degrees),
            $"{washer.Instruction} Then: {stay.Instruction}",
            washer.Parts,
            washer.Minutes + stay.Minutes,
            washer.After!.WithNew(1, _target.Pin.Aft.Degrees, settings.TiltU.Degrees));
    }

    /// <summary>How far the tip of the pin must come back, and which way.</summary>
    public Remedy? Straighten() => Math.Max(Math.Abs(AftOff), Math.Abs(OutOff)) < LeastDegrees ? null : Make(
        RemedyKind.StraightenPin,
        GateState.FromDegrees(0, -AftOff, -OutOff),
        $"If the pin itself is bent and its maker allows it: bring its tip back by {Tip()}.",
        [],
        30,
        Upright());

    /// <summary>A new pin stands as upright as new pins do.</summary>
    public Remedy Replace() => Make(
        RemedyKind.ReplacePin,
        GateState.FromDegrees(0, -AftOff, -OutOff),
        "Fit a new pin, and read it from the side and from the end before the gate goes on.",
        [new(PartKind.Pin, 0)],
        JobMinutes.ReplacePin,
        Upright());

    /// <summary>First look whether the rigger only sits wrong.</summary>
    public Remedy Refit() => Make(
        RemedyKind.RefitRigger,
        GateState.FromDegrees(0, -AftOff, -OutOff),
        $"Take the rigger off, look for dirt, a lost washer, a bent stay or a crack, seat it square and tighten it evenly. The top of the pin has to come back by {Tip()}.",
        [],
        30,
        Upright());

    /// <summary>What cannot be set right on the boat.</summary>
    public Remedy Repair() => Make(
        RemedyKind.RepairRigger,
        GateState.FromDegrees(0, -AftOff, -OutOff),
        "If the rigger is bent: have it set or replaced by its maker or a workshop, and read the gate again before the boat goes out.",
        [],
        120,
        Upright());

    /// <summary>Riggers go back to their own places.</summary>
    public Remedy Exchange() => Make(
        RemedyKind.ExchangeRiggers,
        GateState.FromDegrees(0, -AftOff, -OutOff),
        part.Other is { } other
            ? $"The riggers of {part.Gate} and {other} stand on each other's places: exchange them."
            : $"The rigger of {part.Gate} stands end for end: take it off and turn it round.",
        [],
        40,
        Upright());

    /// <summary>A tilt made of shims or washers: as near as the sizes come, and said how near.</summary>
    private Remedy? Tilted(
        RemedyKind kind, PartKind partKind, double off, double baseMm, Func<double, GateState> change, string where, int minutes)
    {
        if (!CanBeSet || Math.Abs(off) < LeastDegrees)
        {
            return null;
        }

        double wanted = Math.Abs(Shim.ThicknessMm(Angle.FromDegrees(off), baseMm));
        ShimPack pack = ShimPack.Nearest(wanted, settings.ShimSizesMm);
        if (pack.ThicknessesMm.Count == 0)
        {
            return null;
        }

        double done = -Math.Sign(off) * Shim.Tilt(pack.TotalMm, baseMm).Degrees;
        double left = Math.Abs(off + done);
        string rest = left < LeastDegrees ? string.Empty : $" That leaves about {Number(left)}°.";
        double u = settings.TiltU.Degrees;
        GateState unsure = change(u);
        return Make(
            kind,
            change(done),
            $"Put {pack} {where}, by about {Number(Math.Abs(done))}° (over a base of {Number(baseMm)} mm: measure yours).{rest}",
            [.. pack.ThicknessesMm.Select(t => new Part(partKind, t))],
            minutes,
            _belief.After(change(done), unsure));
    }

    private GateBelief Upright() => _belief
        .WithNew(1, _target.Pin.Aft.Degrees, settings.NewPinU.Degrees)
        .WithNew(2, _target.Pin.Out.Degrees, settings.NewPinU.Degrees);

    /// <summary>How far the pin's tip must move, in words.</summary>
    private string Tip()
    {
        double aft = settings.Dimensions.PinLengthMm * Math.Tan(Math.Abs(AftOff) * Math.PI / 180);
        double @out = settings.Dimensions.PinLengthMm * Math.Tan(Math.Abs(OutOff) * Math.PI / 180);
        var ways = new List<string>();
        if (Math.Abs(AftOff) >= LeastDegrees)
        {
            ways.Add($"{Number(aft)} mm towards the {(AftOff > 0 ? "bow" : "stern")}");
        }

        if (Math.Abs(OutOff) >= LeastDegrees)
        {
            ways.Add($"{Number(@out)} mm {(OutOff > 0 ? "towards" : "away from")} the hull");
        }

        return ways.Count == 0 ? "less than a gauge shows" : string.Join(" and ", ways);
    }

    private Remedy Make(
        RemedyKind kind, GateState change, string instruction, IReadOnlyList<Part> parts, int minutes, GateBelief after) => new(
        kind, part, change, instruction, parts, minutes, Cautions.For(kind), ExpectedReadings.Of(after, check, settings))
    {
        Before = _belief,
        After = after,
    };

    private static string Number(double value) => value.ToString("0.0", CultureInfo.InvariantCulture);
}
