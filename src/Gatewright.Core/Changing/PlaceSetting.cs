using Gatewright.Core.Geometry;
using Gatewright.Core.Judging;
using Gatewright.Core.Mending;
using Gatewright.Core.Mending.Options;
using Gatewright.Core.Rig;

namespace Gatewright.Core.Changing;

/// <summary>What is known at one place before anything is set there, what that rests on, and the stamp of the insert.</summary>
internal sealed record PlaceState(Func<RigItem, RigEstimate?> Now, Func<RigItem, RigValue?> From, double? Insert, GatePlace? Gate);

/// <summary>
/// What has to be set at one place, in working order. Costing and planning go through the same code, so that what is found to be
/// least is what is done.
/// </summary>
internal sealed class PlaceSetting(TargetRig target, Rowing rowing, ChangeSettings settings, PartSizes sizes, ShelfInUse shelf)
{
    private readonly List<ChangeStep> _steps = [];
    private readonly List<UnclearItem> _unclear = [];

    public IReadOnlyList<ChangeStep> Steps => _steps;

    public IReadOnlyList<UnclearItem> Unclear => _unclear;

    /// <summary>A measure, set by measuring: it comes out as what was aimed at, as well as it is usually measured.</summary>
    public RigEstimate? Measure(RigItem item, RigPlace place, RigEstimate? now)
    {
        if (Wanted(item, place, now) is not { } aim)
        {
            return now;
        }

        var after = new RigEstimate(aim.Value, RigErrors.Usual(item.Measure()!.Value).Once);
        _steps.Add(new(ChangePhases.Of(item), place)
        {
            Item = item,
            Before = now,
            After = after,
            ReadAgain = ReadAgainAfter.Of(item),
            Cautions = ChangePhases.Of(item) is ChangePhase.Width or ChangePhase.Height ? [Caution.Bolts, Caution.Defer] : [Caution.Defer],
        });
        return after;
    }

    /// <summary>The pin upright both ways, then the insert that makes the pitch.</summary>
    public void Gate(RigPlace place, PlaceState state)
    {
        RigEstimate? aft = Lean(RigItem.LeanAft, place, state);
        RigEstimate? across = Lean(RigItem.LeanOut, place, state);
        RigEstimate? pitch = state.Now(RigItem.PitchAbeam);
        if (pitch is { } read && aft is { } lean && state.Now(RigItem.LeanAft) is { } before && lean != before)
        {
            // Abeam a lean aft is added whole.
            pitch = new(read.Value + lean.Value - before.Value, Math.Sqrt((read.U * read.U) + Square(settings.Mending.TiltU.Degrees)));
        }

        Insert(place, state, pitch, aft, across);
    }

    private RigEstimate? Lean(RigItem item, RigPlace place, PlaceState state)
    {
        RigEstimate? now = state.Now(item);
        if (Wanted(item, place, now, state.From(item)) is not { } aim || now is not { } before)
        {
            return now;
        }

        double tilt = aim.Value - before.Value;
        bool isAft = item == RigItem.LeanAft;
        TiltWay way = isAft ? TiltWays.FootAlong(tilt) : TiltWays.Plate(tilt);
        double baseMm = isAft ? settings.Mending.Dimensions.PinFootMm : settings.Mending.Dimensions.PlateBoltsMm;
        ShimPack pack = ShimPack.Nearest(
            Shim.ThicknessMm(Angle.FromDegrees(Math.Abs(tilt)), baseMm), shelf.Sizes(isAft ? PartKind.Shim : PartKind.Washer, isAft ? sizes.Shims : sizes.Washers));
        if (pack.ThicknessesMm.Count == 0)
        {
            _unclear.Add(new(aim, place, now, UnclearWhy.NoPart));
            return now;
        }

        double done = Math.Sign(tilt) * Shim.Tilt(pack.TotalMm, baseMm).Degrees;
        var after = new RigEstimate(before.Value + done, Math.Sqrt(Square(before.U) + Square(settings.Mending.TiltU.Degrees)));
        Part[] parts = [.. pack.ThicknessesMm.Select(mm => new Part(isAft ? PartKind.Shim : PartKind.Washer, mm))];
        shelf.Take(parts);
        _steps.Add(new(ChangePhase.Pin, place)
        {
            Item = item,
            Before = now,
            After = after,
            Work = new Work.Pack(way, pack, Math.Abs(done), baseMm, Left(tilt - done)),
            Parts = parts,
            Effects = Follows(place, state, item, after),
            ReadAgain = ReadAgainAfter.Of(item),
            Cautions = [Caution.BentPin, .. Mending.Cautions.For(isAft ? RemedyKind.PinFootShim : RemedyKind.PlateWasher)],
        });
        return after;
    }

    private void Insert(RigPlace place, PlaceState state, RigEstimate? pitch, RigEstimate? aft, RigEstimate? across)
    {
        if (Wanted(RigItem.PitchAbeam, place, pitch, state.From(RigItem.PitchAbeam)) is not { } aim || pitch is not { } before)
        {
            return;
        }

        double? built = state.Now(RigItem.GatePitch)?.Value ?? state.Insert;
        if (built is not { } gatePitch)
        {
            _unclear.Add(new(aim, place, pitch, UnclearWhy.NotMeasured));
            return;
        }

        double Comes(double insert) => before.Value + insert - gatePitch;
        double best = double.NaN;
        foreach (double size in sizes.Inserts)
        {
            if (double.IsNaN(best) || IsBetter(Comes(size), size, Comes(best), best, aim))
            {
                best = size;
            }
        }

        if (double.IsNaN(best) || Math.Abs(Comes(best) - aim.Value) >= Math.Abs(before.Value - aim.Value) - 1e-9)
        {
            _unclear.Add(new(aim, place, pitch, UnclearWhy.NoPart));
            return;
        }

        Part[] parts = [new(PartKind.Insert, best)];
        shelf.Take(parts);
        if (state.Insert is { } stamp)
        {
            shelf.Give(new(PartKind.Insert, stamp));
        }

        var after = new RigEstimate(Comes(best), Math.Sqrt(Square(settings.Mending.InsertU.Degrees) + Square(aft?.U ?? 0)));
        _steps.Add(new(ChangePhase.Insert, place)
        {
            Item = RigItem.PitchAbeam,
            Before = pitch,
            After = after,
            Work = new Work.FitInsert(best, best - gatePitch),
            Parts = parts,
            Effects = state.Gate is { } gate && aft is { } a && across is { } o ? ThroughStroke(place, gate, (gatePitch, a.Value, o.Value), (best, a.Value, o.Value), isAbeamToo: false) : [],
            ReadAgain = ReadAgainAfter.Of(RigItem.PitchAbeam),
            Cautions = Mending.Cautions.For(RemedyKind.InsertSwap),
        });
    }

    /// <summary>The one that needs no further change, then the one that lies on the shelf, then the nearest; of two as near that of more pitch: less is what dives.</summary>
    private bool IsBetter(double comes, double size, double bestComes, double best, RigAim aim)
    {
        int Rank(double value, double of) => (value >= aim.Lowest - 1e-9 && value <= aim.Highest + 1e-9 ? 0 : 2) + (shelf.Has(new(PartKind.Insert, of)) ? 0 : 1);
        int byRank = Rank(comes, size).CompareTo(Rank(bestComes, best));
        double off = Math.Abs(comes - aim.Value);
        double bestOff = Math.Abs(bestComes - aim.Value);
        return byRank != 0 ? byRank < 0 : off < bestOff - 1e-9 || (off <= bestOff + 1e-9 && size > best);
    }

    private List<ChangeEffect> Follows(RigPlace place, PlaceState state, RigItem item, RigEstimate after)
    {
        if (state.Gate is not { } gate
            || (state.Now(RigItem.GatePitch)?.Value ?? state.Insert) is not { } built
            || _steps.Find(s => s.Item == RigItem.LeanAft && s.Place == place)?.After is var set
            && (set ?? state.Now(RigItem.LeanAft)) is not { } aft
            || state.Now(RigItem.LeanOut) is not { } across)
        {
            return [];
        }

        return item == RigItem.LeanAft
            ? ThroughStroke(place, gate, (built, aft.Value, across.Value), (built, after.Value, across.Value), isAbeamToo: true)
            : ThroughStroke(place, gate, (built, aft.Value, across.Value), (built, aft.Value, after.Value), isAbeamToo: false);
    }

    private List<ChangeEffect> ThroughStroke(
        RigPlace place, GatePlace gate, (double Pitch, double Aft, double Out) before, (double Pitch, double Aft, double Out) after, bool isAbeamToo)
    {
        Measuring.StationAngles angles = settings.Measuring.Angles(rowing);
        GateState was = GateState.FromDegrees(before.Pitch, before.Aft, before.Out);
        GateState becomes = GateState.FromDegrees(after.Pitch, after.Aft, after.Out);
        var effects = new List<ChangeEffect>();
        foreach (Station station in Stations.All)
        {
            if (station != Station.Abeam || isAbeamToo)
            {
                effects.Add(new(
                    station switch { Station.Catch => EffectOf.PitchCatch, Station.Abeam => EffectOf.PitchAbeam, _ => EffectOf.PitchFinish },
                    place,
                    PitchGeometry.At(angles.At(station), was, gate.Side).Degrees,
                    PitchGeometry.At(angles.At(station), becomes, gate.Side).Degrees));
            }
        }

        return effects;
    }

    /// <summary>What an item is to be brought to; null where nothing is to be done about it, or nobody can tell yet.</summary>
    private RigAim? Wanted(RigItem item, RigPlace place, RigEstimate? now, RigValue? from = null)
    {
        if (target.Find(item, place, rowing) is not { } aim)
        {
            return null;
        }

        if (now is not { } value)
        {
            _unclear.Add(new(aim, place, null, UnclearWhy.NotMeasured));
            return null;
        }

        // As side by side: the zero of one gauge that read both drops out of the difference.
        double shared = aim.Gauge is { } gauge && gauge == from?.Gauge ? 2 * from.ZeroU * aim.ZeroU : 0;
        double u = Math.Sqrt(Math.Max(0, Square(value.U) + Square(aim.U) - shared));
        Verdict verdict = settings.Rule.Limits(value.Value, u, aim.Lowest, aim.Highest).Verdict;
        if (verdict == Verdict.Good)
        {
            return null;
        }

        // Of an aim without a tolerance everything lies outside: it has to be told from none as well.
        if (verdict == Verdict.Unsure || Math.Abs(value.Value - aim.Value) <= RigComparison.Apart * u)
        {
            _unclear.Add(new(aim, place, now, UnclearWhy.CannotTell));
            return null;
        }

        return aim;
    }

    private static double Left(double degrees) => Math.Abs(degrees) < 0.25 ? 0 : Math.Abs(degrees);

    private static double Square(double value) => value * value;
}
