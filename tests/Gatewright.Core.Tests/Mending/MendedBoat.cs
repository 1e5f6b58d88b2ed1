using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Core.Mending;
using Gatewright.Core.Simulating;
using Gatewright.Core.Tests.Simulating;

namespace Gatewright.Core.Tests.Mending;

/// <summary>A simulated eight with one faulty gate, read at all stations, and a remedy for its true cause.</summary>
internal sealed record MendedBoat(TrueBoat Boat, BoatCheck Check, Remedy Remedy)
{
    private static readonly BoatPlan Eight = new(BoatClass.Parse("8+"));

    public static StationAngles Angles => MeasuringSettings.Default.Sweep;

    public CausePart Truth => Boat.Wrong[0];

    public GatePlace Gate => Truth.Gate!.Value;

    public GateState Before => Boat.Gates[Gate];

    /// <summary>The boat of a seed with each of its remedies, the quickest first; none where the readings show nothing to mend.</summary>
    public static IReadOnlyList<MendedBoat> Of(int seed)
    {
        Draws draws = SeededDraws.Of(seed);
        TrueBoat boat = BoatDraw.WithFaultyGate(Eight, draws, Angle.FromDegrees(1.5));
        BoatCheck check = BoatCheck.Of(new Reader(boat, Eight, draws).Round("boat"), BoatContext.None, CheckSettings.Default);
        CausePart truth = boat.Wrong[0];
        return [.. Remedies.For(check, truth, truth.Gate!.Value, MendingSettings.Default).Select(r => new MendedBoat(boat, check, r))];
    }

    /// <summary>The gate once it has been mended, as well as such work hits.</summary>
    public GateState Mended(Draws draws)
    {
        MendingSettings settings = MendingSettings.Default;
        GateState change = Remedy.Change;
        GateState target = DiagnosingSettings.Default.Spreads.Target;
        return Remedy.Kind switch
        {
            RemedyKind.InsertSwap => Before with { GatePitch = new(Angle.FromDegrees(Remedy.Parts[0].Size) + draws.Normal(settings.InsertU)) },
            RemedyKind.StraightenPin or RemedyKind.ReplacePin or RemedyKind.RefitRigger or RemedyKind.RepairRigger => Before with
            {
                Pin = new(new(target.Pin.Aft.Angle + draws.Normal(settings.NewPinU)), new(target.Pin.Out.Angle + draws.Normal(settings.NewPinU))),
            },
            _ => Before with
            {
                Pin = new(
                    new(Before.Pin.Aft.Angle + change.Pin.Aft.Angle + Hit(change.Pin.Aft.Angle)),
                    new(Before.Pin.Out.Angle + change.Pin.Out.Angle + Hit(change.Pin.Out.Angle))),
            },
        };

        Angle Hit(Angle tilt) => tilt == Angle.Zero ? Angle.Zero : draws.Normal(settings.TiltU);
    }

    /// <summary>The gate when the work was done the wrong way round.</summary>
    public GateState WrongWay()
    {
        GateState change = Remedy.Change;
        return GateState.FromDegrees(
            Before.GatePitch.Degrees - change.GatePitch.Degrees,
            Before.Pin.Aft.Degrees - change.Pin.Aft.Degrees,
            Before.Pin.Out.Degrees - change.Pin.Out.Degrees);
    }

    /// <summary>The gate read again at every station: on a new day the boat lies a little differently, the gauge is the same.</summary>
    public CorrectedReadings ReadAgain(GateState state, Draws draws)
    {
        var hull = new HullAttitude(
            new(draws.Normal(MeasuringSettings.Default.LevelReadU)), new(draws.Normal(MeasuringSettings.Default.LevelReadU)));
        var reader = new Reader(Boat with { Gates = new Dictionary<GatePlace, GateState> { [Gate] = state }, Hull = hull }, Eight, draws);
        return CorrectedReadings.Of([.. Stations.All.Select(s => reader.Gate(Gate, s))], MeasuringSettings.Default);
    }

    /// <summary>Whether a gate really is inside the club's limits everywhere.</summary>
    public bool IsInside(GateState state)
    {
        double[] pitches = [.. Stations.All.Select(s => PitchGeometry.At(Angles.At(s), state, Gate.Side).Degrees)];
        return Stations.All.All(s => pitches[(int)s] >= Standard.Club.At(s).Lowest.Degrees && pitches[(int)s] <= Standard.Club.At(s).Highest.Degrees)
            && pitches[0] - pitches[2] <= Standard.Club.LargestDrop.Degrees;
    }
}
