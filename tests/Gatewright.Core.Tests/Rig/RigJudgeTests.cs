using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Gatewright.Core.Judging;
using Gatewright.Core.Rig;
using Gatewright.Core.Tests.Support;

namespace Gatewright.Core.Tests.Rig;

public class RigJudgeTests
{
    private static readonly RigTargets Double = RigTargets.Starting(BoatClass.Parse("2x"), Crew.Women);
    private static readonly RigTargets Four = RigTargets.Starting(BoatClass.Parse("4-"), Crew.Men);

    // A rounding error of a mean or a difference of figures of some hundred centimetres.
    private const double Rounding = 1e-9;

    [Fact]
    public void On_target_is_good()
    {
        RigVerdict verdict = RigJudge.Of([Span(1, 159.3), Span(2, 159.3)], Double);

        Assert.Equal(Verdict.Good, verdict.Verdict);
        Assert.All(verdict.Figures, f => Assert.Empty(f.Reasons));
    }

    /// <summary>A setting proves nothing: on target it is unsure, and far enough outside it is as far outside as anything.</summary>
    [Theory]
    [InlineData(159.3, Verdict.Unsure)]
    [InlineData(163, Verdict.Adjust)]
    public void What_was_set_and_not_taken_since_is_never_good(double span, Verdict expected)
    {
        RigVerdict verdict = RigJudge.Of([Span(1, span) with { SetU = 0.5 }, Span(2, 159.3)], Double);

        JudgedFigure judged = verdict.Find(RigMeasure.Span, new(1, null))!;
        Assert.Equal(expected, judged.Verdict);
        Assert.Contains(judged.Reasons, r => r is { Kind: RigReasonKind.NotTakenSince, Verdict: Verdict.Unsure });
        Assert.Equal(expected, verdict.Verdict);
    }

    /// <summary>Its uncertainty is that of setting, whole; with what was taken it shares no tape: u² of the difference is the sum of both.</summary>
    [Fact]
    public void What_was_set_shares_nothing_with_what_was_taken()
    {
        var figures = RigFigures.Of([Span(1, 159.3) with { SetU = 0.5 }, Span(2, 159.3)]);

        Assert.Equal(0.5, figures.All[0].Value.U, Rounding);
        Assert.Equal(0, figures.Covariance(0, 1));
        double taken = RigErrors.Usual(RigMeasure.Span).Once;
        Assert.Equal(Math.Sqrt(0.25 + (taken * taken)), figures.Difference(0, 1).U, Rounding);
    }

    /// <summary>Target 159.3 ± 2 and u 0.21: the limit 161.3 is inside; 0.1 beyond it nobody can tell; 0.4 beyond it is out.</summary>
    [Theory]
    [InlineData(161.3, Verdict.Good)]
    [InlineData(161.4, Verdict.Unsure)]
    [InlineData(161.7, Verdict.Adjust)]
    [InlineData(157.3, Verdict.Good)]
    [InlineData(157.2, Verdict.Unsure)]
    [InlineData(156.9, Verdict.Adjust)]
    public void Outside_is_adjust_where_that_is_sure_enough(double span, Verdict expected)
    {
        JudgedFigure judged = RigJudge.Of([Span(1, span)], Double).Figures.Single();

        Assert.Equal(expected, judged.Verdict);
        if (expected != Verdict.Good)
        {
            RigReason reason = judged.Reasons.Single();
            Assert.Equal(span > 159 ? RigReasonKind.AboveLimit : RigReasonKind.BelowLimit, reason.Kind);
            Close.To(span > 159 ? 161.3 : 157.3, reason.Limit, Rounding);

            // √(0.2² + 0.05²), by hand; 4 figures.
            Close.To(0.2062, reason.Value.U, 0.0001);
            Assert.Equal(expected == Verdict.Adjust, reason.Probability >= 0.8);
        }
    }

    /// <summary>The starboard gate is a centimetre higher, give or take one: 0 and 2 are inside, the other way round is not.</summary>
    [Theory]
    [InlineData(15.5, 16.5, Verdict.Good)]
    [InlineData(16, 16, Verdict.Good)]
    [InlineData(15.5, 17.5, Verdict.Good)]
    [InlineData(16.8, 15.5, Verdict.Adjust)]
    public void Starboard_is_judged_against_port(double port, double starboard, Verdict expected)
    {
        RigVerdict verdict = RigJudge.Of([Height(1, Side.Port, port), Height(1, Side.Starboard, starboard)], Double);

        Assert.Equal(expected, verdict.Verdict);
        List<RigReason> reasons = [.. verdict.Figures.SelectMany(f => f.Reasons)];
        Assert.All(reasons, r => Assert.Equal(RigReasonKind.Sides, r.Kind));

        // Neither side misses its own target, so it is laid to both.
        Assert.Equal(expected == Verdict.Good ? 0 : 2, reasons.Count);
    }

    [Fact]
    public void What_the_two_sides_share_drops_out_of_their_difference()
    {
        RigFigures figures = RigFigures.Of([Height(1, Side.Port, 16), Height(1, Side.Starboard, 17)]);

        // By hand: own 0.15 on each side, the tilt 0.25 up on one side and down on the other: √(2·0.15² + (2·0.25)²); the
        // seat's 0.2, the boat's 0.1 and the tape's 0.05 drop out. One height alone: √(0.15² + 0.2² + 0.1² + 0.05² + 0.25²).
        Close.To(0.5431, figures.Difference(1, 0).U, 0.0001);
        Close.To(0.3708, figures.All[0].Value.U, 0.0001);
    }

    [Fact]
    public void Between_seats_of_one_side_the_tilt_drops_out_too()
    {
        RigFigures figures = RigFigures.Of([Height(1, Side.Port, 16), Height(2, Side.Port, 17)]);

        // √(2·(0.15² + 0.2²)), by hand.
        Close.To(0.3536, figures.Difference(1, 0).U, 0.0001);
    }

    [Fact]
    public void On_another_day_nothing_is_shared()
    {
        var day = new DateOnly(2026, 5, 4);
        RigFigures figures = RigFigures.Of([Span(1, 159) with { Day = day }, Span(2, 159) with { Day = day.AddDays(1) }]);

        // √(2·(0.2² + 0.05²)), by hand.
        Close.To(0.2915, figures.Difference(1, 0).U, 0.0001);
    }

    [Fact]
    public void A_seat_apart_from_the_others_is_the_one_it_is_laid_to()
    {
        RigVerdict verdict = RigJudge.Of([Spread(1, 85), Spread(2, 85), Spread(3, 86.5), Spread(4, 85)], Four);

        JudgedFigure blamed = Assert.Single(verdict.Figures, f => f.Verdict != Verdict.Good);
        RigReason reason = blamed.Reasons.Single();
        Assert.Equal((3, RigReasonKind.Seats, Verdict.Adjust), (blamed.Figure.Place.Seat, reason.Kind, reason.Verdict));
        Close.To(1.5, reason.Value.Value, Rounding);
        Close.To(1, reason.Limit, Rounding);
    }

    /// <summary>Two seats are always as far from their middle: the one that misses its own target is the one to move.</summary>
    [Theory]
    [InlineData(159.5, 161.9, new[] { 2 })]
    [InlineData(158.5, 160.5, new[] { 1, 2 })]
    public void Of_two_seats_it_is_laid_to_the_one_that_is_out(double first, double second, int[] seats)
    {
        RigVerdict verdict = RigJudge.Of([Span(1, first), Span(2, second)], Double);

        Assert.Equal(seats, verdict.Figures.Where(f => f.Reasons.Any(r => r.Kind == RigReasonKind.Seats)).Select(f => f.Figure.Place.Seat));
    }

    [Fact]
    public void Of_two_sides_it_is_laid_to_the_one_that_is_out()
    {
        RigVerdict verdict = RigJudge.Of([Height(1, Side.Port, 19), Height(1, Side.Starboard, 17)], Double);

        Assert.Equal([Side.Port], verdict.Figures.Where(f => f.Reasons.Any(r => r.Kind == RigReasonKind.Sides)).Select(f => f.Figure.Place.Side!.Value));
    }

    /// <summary>Spans 1 apart are on their limit; the overlaps that follow from them and from inboards 0.6 apart differ by 2.2.</summary>
    [Fact]
    public void An_overlap_that_was_worked_out_is_not_held_against_another_seat_s()
    {
        RigReading[] readings =
        [
            Span(1, 159), Inboard(1, Side.Port, 88), Inboard(1, Side.Starboard, 88),
            Span(2, 160), Inboard(2, Side.Port, 87.4), Inboard(2, Side.Starboard, 87.4),
        ];

        Assert.Equal(Verdict.Good, RigJudge.Of(readings, Double).Verdict);
        Assert.NotEqual(Verdict.Good, RigJudge.Of([new(RigMeasure.Overlap, new(1, null), 21), new(RigMeasure.Overlap, new(2, null), 18.8)], Double).Verdict);
    }

    [Fact]
    public void Readings_of_one_place_average()
    {
        RigFigure figure = RigFigures.Of([Span(1, 159.2), Span(1, 159.4)]).All.Single();

        Assert.Equal(2, figure.Repeats);
        Assert.Null(figure.Apart);
        Close.To(159.3, figure.Value.Value, Rounding);

        // √(0.2²/2 + 0.05²), by hand: the tape's zero is in both.
        Close.To(0.1500, figure.Value.U, 0.0001);
    }

    [Fact]
    public void Readings_of_one_place_that_disagree_prove_nothing()
    {
        JudgedFigure judged = RigJudge.Of([Span(1, 158.5), Span(1, 159.9)], Double).Figures.Single();

        Assert.Equal((Verdict.Unsure, RigReasonKind.Repeats), (judged.Verdict, judged.Reasons.Single().Kind));
    }

    /// <remarks>
    /// The range of five is usually wider than the difference of two: 3.86 of their deviation, 0.15, is 0.579, where two may lie 0.416
    /// apart (studentised range, 95 % points for infinite degrees of freedom; from memory).
    /// </remarks>
    [Fact]
    public void Five_readings_of_one_place_may_lie_further_apart_than_two()
    {
        Assert.Null(Apart(17, 17.1, 17.25, 17.35, 17.45));
        Assert.NotNull(Apart(17, 17.1, 17.25, 17.35, 17.6));
        Assert.NotNull(Apart(17, 17.45));

        static RigEstimate? Apart(params double[] heights) =>
            RigFigures.Of([.. heights.Select(h => new RigReading(RigMeasure.Height, new(1, Side.Port), h))]).All.Single().Apart;
    }

    [Fact]
    public void An_overlap_follows_from_inboards_and_span()
    {
        RigFigures figures = RigFigures.Of([Span(1, 160), Inboard(1, Side.Port, 88.5), Inboard(1, Side.Starboard, 88.5)]);

        RigFigure overlap = figures.Find(RigMeasure.Overlap, new(1, null))!;
        Assert.True(overlap.IsComputed);
        Close.To(21, overlap.Value.Value, Rounding);

        // 0.1 twice, 0.2 once, and the tape's zero twice less once: √(2·0.1² + 0.2² + 0.05²), by hand.
        Close.To(0.2500, overlap.Value.U, 0.0001);
    }

    [Fact]
    public void An_overlap_that_was_taken_is_not_worked_out()
    {
        RigFigures figures = RigFigures.Of(
            [Span(1, 160), Inboard(1, Side.Port, 88.5), Inboard(1, Side.Starboard, 88.5), new(RigMeasure.Overlap, new(1, null), 19)]);

        Assert.Equal(19, figures.Find(RigMeasure.Overlap, new(1, null))!.Value.Value);
    }

    [Fact]
    public void Nothing_measured_is_unsure() => Assert.Equal(Verdict.Unsure, RigJudge.Of([], Double).Verdict);

    [Fact]
    public void A_measure_without_a_target_is_not_judged()
    {
        RigVerdict verdict = RigJudge.Of([new(RigMeasure.TrackPosition, new(1, null), 62)], Double);

        Assert.Null(verdict.Figures.Single().Target);
        Assert.Equal(Verdict.Unsure, verdict.Verdict);
    }

    /// <summary>An error common to all seats, such as the tape's zero, leaves every verdict on a difference as it is.</summary>
    [Property(Arbitrary = [typeof(Rigs)])]
    public void A_common_error_changes_no_verdict_on_a_difference(RigReading[] readings, byte tenths)
    {
        double by = tenths / 100.0;
        RigVerdict before = RigJudge.Of(readings, NoOwnTargets());
        RigVerdict after = RigJudge.Of([.. readings.Select(r => r with { Value = r.Value + by })], NoOwnTargets());

        Assert.Equal(Differences(before), Differences(after));
    }

    /// <summary>Turned over from bow to stern and from side to side alike, a rig is judged the same.</summary>
    [Property(Arbitrary = [typeof(Rigs)])]
    public void Seats_have_no_order(RigReading[] readings)
    {
        RigVerdict before = RigJudge.Of(readings, Double);
        RigVerdict after = RigJudge.Of([.. readings.Select(r => r with { Place = r.Place with { Seat = 3 - r.Place.Seat } })], Double);

        Assert.Equal(
            before.Figures.OrderBy(f => (f.Figure.Measure, f.Figure.Place)).Select(f => (f.Figure.Place, f.Verdict)),
            after.Figures.Select(f => (Place: f.Figure.Place with { Seat = 3 - f.Figure.Place.Seat }, f.Verdict, f.Figure.Measure))
                .OrderBy(f => (f.Measure, f.Place)).Select(f => (f.Place, f.Verdict)));
    }

    [Property(Arbitrary = [typeof(Rigs)])]
    public void The_order_of_readings_does_not_matter(RigReading[] readings)
    {
        RigVerdict forward = RigJudge.Of(readings, Double);
        RigVerdict backward = RigJudge.Of([.. readings.Reverse()], Double);

        Assert.Equal(forward.Figures.Select(f => (f.Figure, f.Verdict)), backward.Figures.Select(f => (f.Figure, f.Verdict)));
    }

    /// <summary>Written down in inches and in centimetres a rig is judged the same.</summary>
    [Property(Arbitrary = [typeof(Rigs)])]
    public void The_unit_does_not_matter(RigReading[] readings)
    {
        RigVerdict inCentimetres = RigJudge.Of(readings, Double);
        RigVerdict inInches = RigJudge.Of(
            [.. readings.Select(r => r with { Value = RigUnit.Inches.InOwn(RigUnit.Inches.FromOwn(r.Value)) })], Double);

        Assert.Equal(inCentimetres.Figures.Select(f => f.Verdict), inInches.Figures.Select(f => f.Verdict));
    }

    private static IEnumerable<(RigReasonKind, RigPlace, Verdict)> Differences(RigVerdict verdict) =>
        verdict.Figures.SelectMany(f => f.Reasons).Select(r => (r.Kind, r.Place, r.Verdict));

    /// <summary>Targets of differences alone: what a difference is laid to then does not depend on where the figures lie.</summary>
    private static RigTargets NoOwnTargets() => Double
        .With(new(RigMeasure.Span, RigAspect.Value, 159, 100, RigSource.Boat))
        .With(new(RigMeasure.Height, RigAspect.Value, 16, 100, RigSource.Boat))
        .With(new(RigMeasure.Inboard, RigAspect.Value, 88, 100, RigSource.Boat))
        .With(new(RigMeasure.Overlap, RigAspect.Value, 20, 100, RigSource.Boat));

    private static RigReading Span(int seat, double value) => new(RigMeasure.Span, new(seat, null), value);

    private static RigReading Spread(int seat, double value) => new(RigMeasure.Spread, new(seat, null), value);

    private static RigReading Height(int seat, Side side, double value) => new(RigMeasure.Height, new(seat, side), value);

    private static RigReading Inboard(int seat, Side side, double value) => new(RigMeasure.Inboard, new(seat, side), value);

    /// <summary>Rigs of a double in millimetres, around its targets and well beyond them.</summary>
    private static class Rigs
    {
        public static Arbitrary<RigReading[]> All() => (
            from spans in Figures(1550, 1640, 2)
            from heights in Figures(120, 200, 4)
            from inboards in Figures(860, 895, 4)
            select new[]
            {
                Span(1, spans[0]), Span(2, spans[1]),
                Height(1, Side.Port, heights[0]), Height(1, Side.Starboard, heights[1]), Height(2, Side.Port, heights[2]), Height(2, Side.Starboard, heights[3]),
                Inboard(1, Side.Port, inboards[0]), Inboard(1, Side.Starboard, inboards[1]), Inboard(2, Side.Port, inboards[2]), Inboard(2, Side.Starboard, inboards[3]),
            }).ToArbitrary();

        private static Gen<double[]> Figures(int least, int most, int count) =>
            Gen.Choose(least, most).Select(mm => mm / 10.0).ArrayOf(count);
    }
}
