using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Gatewright.Core.Rig;
using Gatewright.Core.Stroke;

namespace Gatewright.Core.Tests.Stroke;

/// <summary>How near one comes to a wish that cannot be met, and which bound stops one.</summary>
public class NearestRigTests
{
    private static readonly SeatRig Rig = Strokes.Pair;
    private static readonly StrokeGeometry Now = StrokeGeometry.Of(Rig)!;

    private static AllowedStep Allowed(RigMeasure measure) => AllowedStep.Usual(Rig).Single(s => s.Measure == measure);

    /// <summary>With one measure the nearest is at the bound on the wished side, whichever it is: the lever rises as the inboard falls.</summary>
    [Theory]
    [InlineData(3.0, 112.0, false)]
    [InlineData(2.0, 118.0, true)]
    public void One_measure_ends_at_the_bound_that_stops_it(double wanted, double bound, bool isMost)
    {
        NearestRig near = NearestRig.Of(Now, [new(StrokeFigure.Lever, wanted)], [Allowed(RigMeasure.Inboard)]);

        Assert.Equal(bound, near.Nearest.After.Rig.Inboard.Centimetres, 1e-6);
        StoppingBound stop = Assert.Single(near.Stopping);
        Assert.Equal((RigMeasure.Inboard, bound, isMost), (stop.Measure, Math.Round(stop.Bound.Centimetres, 6), stop.IsMost));
    }

    /// <summary>A lattice of every millimetre but ten of what may be set knows no nearer rig, whatever is wished; 0.1 of a hundredth or degree is for rounding to the millimetre.</summary>
    [Property(MaxTest = 60)]
    public Property Nothing_on_a_lattice_of_what_may_be_set_comes_nearer() => Prop.ForAll(
        Arb.From(from load in Gen.Choose(-30, 30) from turn in Gen.Choose(-20, 20) select (load, turn)),
        given => AssertNothingNearer(given.load, given.turn));

    /// <summary>Both with the feet far forward and far back the catch comes nearer: the nearest is in one valley, the rig stands in the other.</summary>
    [Fact]
    public void Of_two_valleys_the_deeper_is_found() => AssertNothingNearer(28, -12);

    private static void AssertNothingNearer(int load, int turn)
    {
        AllowedStep[] allowed = [Allowed(RigMeasure.Inboard), Allowed(RigMeasure.WorkThrough)];
        StrokeWish[] wishes =
        [
            new(StrokeFigure.Load, Now[StrokeFigure.Load] * (1 + (load / 100.0))),
            new(StrokeFigure.Catch, Now.Catch.Degrees + turn),
        ];
        NearestRig near = NearestRig.Of(Now, wishes, allowed);

        double least = double.PositiveInfinity;
        for (double inboard = allowed[0].Least.Centimetres; inboard <= allowed[0].Most.Centimetres; inboard++)
        {
            for (double through = allowed[1].Least.Centimetres; through <= allowed[1].Most.Centimetres; through++)
            {
                SeatRig rig = Rig.With(RigMeasure.Inboard, Strokes.Cm(inboard)).With(RigMeasure.WorkThrough, Strokes.Cm(through));
                if (StrokeGeometry.Of(rig) is { } stroke)
                {
                    least = Math.Min(least, Apart(stroke, wishes));
                }
            }
        }

        Assert.InRange(Apart(near.Nearest.After, wishes), 0, least + 0.1);
    }

    [Fact]
    public void Wishes_that_contradict_each_other_are_stopped_by_no_bound()
    {
        // Gearing and lever both follow the outboard; with the length alone, the one can rise only with the other.
        NearestRig near = NearestRig.Of(
            Now,
            [new(StrokeFigure.Gearing, 1.01 * Now[StrokeFigure.Gearing]), new(StrokeFigure.Lever, 0.99 * Now[StrokeFigure.Lever])],
            [Allowed(RigMeasure.OarLength)]);

        Assert.Empty(near.Nearest.Steps);
        Assert.Empty(near.Stopping);
    }

    /// <summary>A bound between two millimetres, as a setting of 114 and steps of whole ones meet it, is not overstepped.</summary>
    [Fact]
    public void No_bound_is_overstepped_by_rounding()
    {
        AllowedStep inboard = Allowed(RigMeasure.Inboard).Within(Rig, 112.03, 116.08);
        NearestRig near = NearestRig.Of(Now, [new(StrokeFigure.Lever, 1)], [inboard]);

        Assert.InRange(near.Nearest.After.Rig.Inboard.Centimetres, 115.97, 116.08);
    }

    [Fact]
    public void What_can_be_met_is_met()
    {
        NearestRig near = NearestRig.Of(Now, [new(StrokeFigure.Catch, Now.Catch.Degrees + 1)], AllowedStep.Usual(Rig));

        // Four measures to the millimetre, of which each turns the catch by at most 0.06°.
        Assert.Equal(Now.Catch.Degrees + 1, near.Nearest.After.Catch.Degrees, 0.1);
        Assert.Empty(near.Stopping);
    }

    [Fact]
    public void Nothing_settable_or_no_wish_is_refused()
    {
        Assert.Throws<ArgumentException>(() => NearestRig.Of(Now, [], AllowedStep.Usual(Rig)));
        Assert.Throws<ArgumentException>(() => NearestRig.Of(Now, [new(StrokeFigure.Catch, 50)], []));
    }

    private static double Apart(StrokeGeometry stroke, StrokeWish[] wishes) => Math.Sqrt(wishes.Sum(w =>
        Math.Pow((w.Figure.IsRatio() ? 100 / Now[w.Figure] : 1) * (stroke[w.Figure] - w.Value), 2)));
}
