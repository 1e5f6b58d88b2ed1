using Gatewright.Core.Rig;
using Gatewright.Core.Stroke;

namespace Gatewright.Core.Tests.Stroke;

public class StrokeChangeTests
{
    /// <summary>What gearing promises of a narrower spread, the lever does not keep, and the load hardly.</summary>
    [Fact]
    public void A_spread_in_by_one_centimetre_raises_gearing_by_its_share_and_the_load_by_far_less()
    {
        StrokeEffect effect = StrokeChange.Of(Strokes.Measured(Strokes.Pair), [new(RigMeasure.Spread, Strokes.Cm(-1))])!.Together;

        // 86/85 − 1 = 1.176 %.
        Assert.Equal(100.0 / 85, effect[StrokeFigure.Gearing].Percent, 1e-9);
        Assert.Equal(0, effect[StrokeFigure.Lever].By, 1e-12);
        Assert.InRange(effect[StrokeFigure.Load].Percent, 0.05, 0.4);
        Assert.InRange(effect[StrokeFigure.Catch].By, 0.2, 0.3);
        Assert.Equal(0, effect[StrokeFigure.Finish].By, 1e-9);
        Assert.Equal(1, effect[StrokeFigure.Overlap].By, 1e-9);
    }

    /// <summary>Stretcher to the stern: the whole arc goes towards the catch.</summary>
    [Fact]
    public void A_stretcher_to_the_stern_moves_catch_and_finish_the_same_way()
    {
        StrokeEffect effect = StrokeChange.Of(Strokes.Measured(Strokes.Pair), [new(RigMeasure.WorkThrough, Strokes.Cm(2))])!.Together;

        Assert.True(effect[StrokeFigure.Catch].By > 1);
        Assert.True(effect[StrokeFigure.Finish].By > 1);
        Assert.Equal(0, effect[StrokeFigure.Gearing].By);
    }

    [Fact]
    public void Together_is_the_sum_of_each_alone_and_their_interaction()
    {
        StrokeChange change = StrokeChange.Of(
            Strokes.Measured(Strokes.Single),
            [new(RigMeasure.Span, Strokes.Cm(-3)), new(RigMeasure.Inboard, Strokes.Cm(-1.5))])!;

        // Outboard over half a span, 200 + 1.5 over 80 − 1.5: the bilinear part in closed form.
        double together = (201.5 / 78.5) - 2.5;
        double alone = (200 / 78.5) - 2.5 + (201.5 / 80) - 2.5;
        Assert.Equal(together - alone, change.Interaction(StrokeFigure.Gearing), 1e-12);
        Assert.NotEqual(0, change.Interaction(StrokeFigure.Catch), 1e-6);
        Assert.Equal(0, change.Interaction(StrokeFigure.Overlap), 1e-9);
    }

    /// <summary>
    /// JCGM 101: the inputs drawn, the figures computed, their spread taken. 40,000 draws tell a deviation within 0.35 %; what
    /// is curved adds a little, so 2 % are allowed.
    /// </summary>
    [Theory]
    [InlineData(Rowing.Sweep)]
    [InlineData(Rowing.Scull)]
    public void Uncertainties_are_those_that_draws_of_the_inputs_have(Rowing rowing)
    {
        SeatRig rig = rowing == Rowing.Sweep ? Strokes.Pair : Strokes.Single;
        RigMeasure width = SeatRig.WidthOf(rowing);
        MeasuredStroke stroke = Strokes.Measured(rig);
        FigureChange effect = StrokeChange.Of(stroke, [new(width, Strokes.Cm(-2))])!.Together[StrokeFigure.Catch];
        var random = new Random(20170930);
        var catches = new List<double>();
        var differences = new List<double>();
        for (int i = 0; i < 40_000; i++)
        {
            double tape = 0.05 * Normal();
            SeatRig drawn = SeatRig.FromCentimetres(
                rowing,
                rig.Width.Centimetres + tape + (Own(width) * Normal()),
                rig.Inboard.Centimetres + tape + (Own(RigMeasure.Inboard) * Normal()),
                rig.OarLength.Centimetres + tape + (Own(RigMeasure.OarLength) * Normal()),
                rig.WorkThrough.Centimetres + tape + (Own(RigMeasure.WorkThrough) * Normal()));
            Reach usual = Reach.Usual(rowing);
            Reach reach = usual with
            {
                AtCatch = usual.AtCatch + Strokes.Cm(2 * Normal()),
                AtFinish = usual.AtFinish + Strokes.Cm(2 * Normal()),
                Arms = usual.Arms + Strokes.Cm(3 * Normal()),
            };
            double before = StrokeGeometry.Of(drawn, reach, OarPoints.Usual(rowing))!.Catch.Degrees;
            SeatRig set = drawn.With(width, drawn.Width + Strokes.Cm(-2 + (0.1 * Normal())));
            catches.Add(before);
            differences.Add(StrokeGeometry.Of(set, reach, OarPoints.Usual(rowing))!.Catch.Degrees - before);
        }

        Assert.InRange(stroke[StrokeFigure.Catch].U / Sd(catches), 0.98, 1.02);
        Assert.InRange(effect.U / Sd(differences), 0.98, 1.02);
        Assert.True(effect.U < stroke[StrokeFigure.Catch].U / 10);

        double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
        double Own(RigMeasure measure) => Math.Sqrt(Math.Pow(RigErrors.Usual(measure).Once, 2) - (0.05 * 0.05));
    }

    [Fact]
    public void What_nobody_measured_is_taken_from_the_targets_and_is_uncertain_by_their_tolerance()
    {
        RigTargets targets = RigTargets.Starting(BoatClass.Parse("2-"), Crew.Men);
        RigFigures figures = RigFigures.Of([new(RigMeasure.Spread, new(2, null), 85.4)]);

        MeasuredSeat seat = MeasuredSeat.Of(figures, targets, 2);

        Assert.Equal(85.4, seat.Rig.Width.Centimetres);
        Assert.Equal(116, seat.Rig.Inboard.Centimetres);
        Assert.Equal([RigMeasure.Inboard, RigMeasure.OarLength, RigMeasure.WorkThrough], seat.Assumed);
        Assert.Equal(RigErrors.Usual(RigMeasure.Spread).Once, seat.Covariance.U(0), 1e-12);
        Assert.Equal(1.5 / Math.Sqrt(3), seat.Covariance.U(1), 1e-12);
    }

    private static double Sd(List<double> values)
    {
        double mean = values.Average();
        return Math.Sqrt(values.Sum(v => (v - mean) * (v - mean)) / (values.Count - 1));
    }
}
