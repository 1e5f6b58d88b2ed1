using Gatewright.Core.Judging;
using Gatewright.Core.Rig;

namespace Gatewright.Core.Tests.Rig;

/// <summary>The survey of 2017 recomputed from its measurements, and its boats judged by the starting targets.</summary>
public class SurveyTests(ITestOutputHelper output)
{
    // Medians as the survey's measurements give them, cm: span or spread, inboard, oar length. World Championships 2017,
    // rigging survey of the international federation. To the digit: a median of such figures is one of them, or the middle of two.
    public static TheoryData<string, double, double, double> Medians => new()
    {
        { "M1x", 160, 88.5, 288.5 },
        { "W1x", 160, 88, 286.5 },
        { "M2x", 159, 88.5, 289 },
        { "W2x", 159.3, 87.5, 287.5 },
        { "M4x", 159, 88, 289.5 },
        { "W4x", 159, 88, 288 },
        { "M2-", 86, 116, 375.5 },
        { "W2-", 86.4, 116.25, 373 },
        { "M4-", 85, 115, 376 },
        { "W4-", 85, 115.25, 373 },
        { "M8+", 83.5, 113.75, 377 },
        { "W8+", 84, 114, 373 },
    };

    // Heights above the seat in the same survey: starboard, port; of sweep one figure.
    public static TheoryData<string, double, double> Heights => new()
    {
        { "M2x", 19.5, 18.25 },
        { "W2x", 17, 15.5 },
        { "M4x", 19.85, 18.5 },
        { "W4x", 17, 16 },
        { "M2-", 17, 17 },
        { "W2-", 16.5, 16.5 },
        { "M4-", 18, 18 },
        { "W4-", 16.5, 16.5 },
        { "M8+", 19, 19 },
        { "W8+", 17, 17 },
    };

    // Worked from those medians by the survey's own definitions.
    public static TheoryData<string, double> Overlaps => new() { { "M1x", 21.0 }, { "M2-", 32.0 }, { "M8+", 32.25 } };

    public static TheoryData<string> Events => [.. Medians.Select(row => row.Data.Item1)];

    [Fact]
    public void The_table_has_every_row() => Assert.Equal((539, 189), (SurveyTable.Seats.Count, SurveyTable.Boats.Count()));

    [Theory]
    [MemberData(nameof(Medians))]
    public void Medians_are_those_published(string @event, double width, double inboard, double length) =>
        Assert.Equal((width, inboard, length), (Median(@event, "width"), Median(@event, "inboard"), Median(@event, "length")));

    [Theory]
    [MemberData(nameof(Heights))]
    public void Heights_are_those_published(string @event, double starboard, double port)
    {
        bool isScull = @event.Contains('x', StringComparison.Ordinal);
        Assert.Equal(starboard, Median(@event, isScull ? "height_starboard" : "height_sweep"));
        Assert.Equal(port, Median(@event, isScull ? "height_port" : "height_sweep"));
    }

    [Theory]
    [MemberData(nameof(Overlaps))]
    public void Overlaps_of_the_medians_are_as_worked(string @event, double overlap)
    {
        (double width, double inboard) = (Median(@event, "width"), Median(@event, "inboard"));

        Assert.Equal(overlap, @event.Contains('x', StringComparison.Ordinal) ? Overlap.OfScull(2 * inboard, width) : Overlap.OfSweep(inboard, width));
    }

    [Theory]
    [MemberData(nameof(Medians))]
    public void Starting_targets_are_the_medians(string @event, double width, double inboard, double length)
    {
        RigTargets targets = Targets(@event);

        Assert.Equal(width, Target(targets, targets.Class.Rowing == Rowing.Scull ? RigMeasure.Span : RigMeasure.Spread).Value);
        Assert.Equal(inboard, Target(targets, RigMeasure.Inboard).Value);
        Assert.Equal(length, Target(targets, RigMeasure.OarLength).Value);
        Assert.Equal(RigSource.Survey, Target(targets, RigMeasure.Inboard).Source);
    }

    /// <summary>A club's boats serve more than one crew: its starting points are wider than those of the best crews.</summary>
    [Theory]
    [MemberData(nameof(Events))]
    public void Tolerances_hold_the_middle_eight_of_ten(string @event)
    {
        RigTargets targets = Targets(@event);
        foreach ((RigMeasure measure, string column) in new[]
        {
            (targets.Class.Rowing == Rowing.Scull ? RigMeasure.Span : RigMeasure.Spread, "width"),
            (RigMeasure.Inboard, "inboard"),
            (RigMeasure.OarLength, "length"),
        })
        {
            double[] values = Sorted(@event, column);
            RigTarget target = Target(targets, measure);
            Assert.InRange(values[values.Length / 10], target.Lowest, target.Highest);
            Assert.InRange(values[^((values.Length / 10) + 1)], target.Lowest, target.Highest);
        }
    }

    /// <summary>
    /// All boats, judged: most of what the best crews rig must lie within targets made of their own medians and wider than
    /// their own spread; not all, or the targets would say nothing.
    /// </summary>
    [Fact]
    public void Every_boat_is_judged_and_most_figures_are_within()
    {
        (int all, int within, int boats, int good, int stop) = (0, 0, 0, 0, 0);
        foreach (IGrouping<string, IGrouping<(string Boat, string Event), SurveySeat>> @event in SurveyTable.Boats.GroupBy(b => b.Key.Event))
        {
            RigTargets targets = Targets(@event.Key);
            List<RigVerdict> verdicts = [.. @event.Select(boat => RigJudge.Of([.. boat.SelectMany(s => s.Readings())], targets))];
            List<JudgedFigure> judged = [.. verdicts.SelectMany(v => v.Figures).Where(f => f.Target is not null)];
            int inside = judged.Count(f => f.Figure.Value.Value >= f.Target!.Lowest && f.Figure.Value.Value <= f.Target.Highest);
            int goodBoats = verdicts.Count(v => v.Verdict == Verdict.Good);
            stop += judged.Count(f => f.Verdict == Verdict.Stop);
            (all, within, boats, good) = (all + judged.Count, within + inside, boats + verdicts.Count, good + goodBoats);
            output.WriteLine(FormattableString.Invariant(
                $"{@event.Key}: {inside} of {judged.Count} figures within ({(double)inside / judged.Count:P1}), {goodBoats} of {verdicts.Count} boats good in all"));

            // By class: four in five at least, which is what lies between the percentiles that the tolerances hold.
            Assert.InRange((double)inside / judged.Count, 0.8, 1);
        }

        output.WriteLine(FormattableString.Invariant($"In all: {within} of {all} figures within ({(double)within / all:P1}), {good} of {boats} boats good in all"));
        Assert.Equal(189, boats);
        Assert.Equal(0, stop);
        Assert.InRange((double)within / all, 0.85, 0.99);

        // A boat has some two dozen figures and differences: fewer boats than figures are good, and still more than half.
        Assert.InRange((double)good / boats, 0.5, 0.9);
    }

    private static RigTargets Targets(string @event) =>
        RigTargets.Starting(BoatClass.Parse(@event[1..]), @event[0] == 'W' ? Crew.Women : Crew.Men);

    private static RigTarget Target(RigTargets targets, RigMeasure measure) => targets.Find(measure, RigAspect.Value, new(1, null))!;

    private static double[] Sorted(string @event, string column) =>
        [.. SurveyTable.Seats.Where(s => s.Event == @event).Select(s => s[column]).OfType<double>().Order()];

    private static double Median(string @event, string column)
    {
        double[] sorted = Sorted(@event, column);
        return (sorted[sorted.Length / 2] + sorted[(sorted.Length - 1) / 2]) / 2;
    }
}
