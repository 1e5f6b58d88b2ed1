using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Gatewright.Core.Rig;
using Gatewright.Core.Stroke;

namespace Gatewright.Core.Tests.Stroke;

public class WishTests
{
    private static WishFound Find(SeatRig rig, params StrokeWish[] wishes) =>
        WishSearch.Of(StrokeGeometry.Of(rig)!, wishes, AllowedStep.Usual(rig));

    /// <summary>Whatever one step inside its bounds gives, one step is found for; settings to the millimetre move an angle by less than 0.06°.</summary>
    [Property(MaxTest = 200)]
    public Property What_one_step_gives_one_step_finds() => Prop.ForAll(
        Arb.From(from scull in Gen.Elements(true, false) from which in Gen.Choose(0, 3) from share in Gen.Choose(5, 95) select (scull, which, share)),
        given =>
        {
            SeatRig rig = given.scull ? Strokes.Single : Strokes.Pair;
            AllowedStep step = AllowedStep.Usual(rig)[given.which];
            Length to = Strokes.Cm(double.Lerp(step.Least.Centimetres, step.Most.Centimetres, given.share / 100.0));
            StrokeFigure figure = step.Measure is RigMeasure.OarLength ? StrokeFigure.Load : StrokeFigure.Catch;
            if (Math.Abs(to.Centimetres - rig.Get(step.Measure).Centimetres) < 0.2)
            {
                return;
            }

            double wanted = StrokeGeometry.Of(rig.With(step.Measure, to))![figure];
            WishFound found = Find(rig, new StrokeWish(figure, wanted));

            WishAnswer? same = found.Answers.SingleOrDefault(a => a.Steps.Count == 1 && a.Steps[0].Measure == step.Measure);
            Assert.NotNull(same);
            Assert.Equal(to.Centimetres - rig.Get(step.Measure).Centimetres, same.Steps[0].By.Centimetres, 0.0501);
            Assert.All(found.Answers, a => Assert.Equal(wanted, a.After[figure], 0.06));
        });

    [Fact]
    public void The_least_work_comes_first()
    {
        WishFound found = Find(Strokes.Pair, new StrokeWish(StrokeFigure.Catch, StrokeGeometry.Of(Strokes.Pair)!.Catch.Degrees + 1));

        Assert.Equal(RigMeasure.WorkThrough, Assert.Single(found.Answers[0].Steps).Measure);
        Assert.Equal(found.Answers.Select(a => a.Minutes).Order(), found.Answers.Select(a => a.Minutes));
        Assert.All(found.Answers, a => Assert.Single(a.Steps));
    }

    [Fact]
    public void Two_wishes_that_no_measure_gives_alone_take_two()
    {
        StrokeGeometry now = StrokeGeometry.Of(Strokes.Pair)!;

        WishFound found = Find(
            Strokes.Pair, new(StrokeFigure.Load, 1.01 * now[StrokeFigure.Load]), new(StrokeFigure.Catch, now.Catch.Degrees));

        Assert.NotEmpty(found.Answers);
        Assert.All(found.Answers, a => Assert.Equal(2, a.Steps.Count));
        Assert.All(found.Answers, a => Assert.Equal(1.01 * now[StrokeFigure.Load], a.After[StrokeFigure.Load], 0.005));
        Assert.All(found.Answers, a => Assert.Equal(now.Catch.Degrees, a.After.Catch.Degrees, 0.06));
    }

    /// <summary>Where one measure at its bound is not enough, a second is taken in, and no third.</summary>
    [Fact]
    public void Beyond_the_bounds_of_one_measure_a_second_helps()
    {
        SeatRig rig = Strokes.Pair;
        StrokeGeometry furthest = StrokeGeometry.Of(rig.With(RigMeasure.Inboard, Strokes.Cm(112)).With(RigMeasure.OarLength, Strokes.Cm(380)))!;

        WishFound found = Find(rig, new StrokeWish(StrokeFigure.Lever, furthest[StrokeFigure.Lever]));

        // Inboard down to 112 alone gives 2.353, the length up to 385 alone 2.319; 2.393 is asked.
        Assert.NotEmpty(found.Answers);
        Assert.All(found.Answers, a => Assert.Equal(
            [RigMeasure.Inboard, RigMeasure.OarLength], a.Steps.Select(s => s.Measure).Order()));
    }

    /// <summary>A seat that stands at half millimetres, and a wish that takes a measure to its bound: the whole millimetres from the seat end within it.</summary>
    [Property(MaxTest = 100)]
    public Property Steps_of_whole_millimetres_end_within_the_bounds() => Prop.ForAll(
        Arb.From(from which in Gen.Choose(0, 3) from hundredths in Gen.Choose(-50, 50) from isMost in Gen.Elements(true, false) select (which, hundredths, isMost)),
        given =>
        {
            RigMeasure measure = AllowedStep.Usual(Strokes.Pair)[given.which].Measure;
            SeatRig rig = Strokes.Pair.With(measure, Strokes.Pair.Get(measure) + Strokes.Cm(given.hundredths / 100.0));
            IReadOnlyList<AllowedStep> allowed = AllowedStep.Usual(rig);
            AllowedStep step = allowed[given.which];
            StrokeFigure figure = measure is RigMeasure.OarLength ? StrokeFigure.Load : StrokeFigure.Catch;

            WishFound found = Find(rig, new StrokeWish(figure, StrokeGeometry.Of(rig.With(measure, given.isMost ? step.Most : step.Least))![figure]));

            Assert.NotEmpty(found.Answers);
            Assert.All(found.Answers.SelectMany(a => a.Steps), one =>
            {
                AllowedStep may = allowed.Single(a => a.Measure == one.Measure);

                // Tenths of a centimetre are not exact in binary: a thousandth of a millimetre is no step.
                Assert.InRange(rig.Get(one.Measure).Centimetres + one.By.Centimetres, may.Least.Centimetres - 1e-4, may.Most.Centimetres + 1e-4);
            });
        });

    [Fact]
    public void What_no_rig_gives_is_said_to_be_out_of_reach()
    {
        WishFound found = Find(Strokes.Pair, new StrokeWish(StrokeFigure.Catch, 85));

        Assert.Empty(found.Answers);
        Assert.InRange(found.Reachable!.Value.Most, StrokeGeometry.Of(Strokes.Pair)!.Catch.Degrees, 85);
    }

    [Fact]
    public void What_is_so_already_needs_nothing()
    {
        WishFound found = Find(Strokes.Pair, new StrokeWish(StrokeFigure.Gearing, Gearing.Plain(Strokes.Pair)));

        Assert.Empty(Assert.Single(found.Answers).Steps);
    }
}
