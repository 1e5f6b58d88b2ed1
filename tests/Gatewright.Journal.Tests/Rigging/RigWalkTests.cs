using Gatewright.Core;
using Gatewright.Core.Rig;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Rigging;
using Gatewright.Journal.Tests.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Tests.Rigging;

/// <summary>The way along a boat whose rig is measured.</summary>
public class RigWalkTests
{
    private static readonly HybridTime Begun = new(100, 0);

    [Fact]
    public void One_measure_goes_down_the_boat_and_the_next_comes_back()
    {
        RigWalk walk = Walk(Of("4-"), RigMeasure.StretcherAngle, RigMeasure.Spread);

        Assert.Equal(
            ["spread 1", "spread 2", "spread 3", "spread 4", "stretcher-angle 4", "stretcher-angle 3", "stretcher-angle 2", "stretcher-angle 1"],
            walk.Order.Select(Told));
    }

    [Fact]
    public void What_has_sides_goes_down_port_and_back_along_starboard_from_where_one_stands()
    {
        Assert.Equal(
            ["height 1 port", "height 2 port", "height 2 starboard", "height 1 starboard"], Walk(Of("2x"), RigMeasure.Height).Order.Select(Told));
        Assert.Equal(
            ["span 1", "span 2", "height 2 port", "height 1 port", "height 1 starboard", "height 2 starboard"],
            Walk(Of("2x"), RigMeasure.Span, RigMeasure.Height).Order.Select(Told));
        Assert.Equal(
            ["height 2 port", "height 4 port", "height 3 starboard", "height 1 starboard"], Walk(Of("4-"), RigMeasure.Height).Order.Select(Told));
    }

    [Fact]
    public void A_boat_is_not_asked_for_what_it_does_not_have() =>
        Assert.All(Walk(Of("2x"), [.. RigMeasures.All]).Order, s => Assert.NotEqual(RigMeasure.Spread, s.Measure));

    [Fact]
    public void What_was_taken_before_it_began_is_asked_for_again_and_what_came_since_is_not()
    {
        RigWalk walk = Walk(Of("2x", Span(1, 50), Span(2, 150)), RigMeasure.Span);

        Assert.Equal("span 1", Told(walk.Now!.Value));
        Assert.Equal(1, walk.Done);
        Assert.Single(walk.Taken);
    }

    [Fact]
    public void After_a_record_comes_the_next_place_that_is_not_done_and_at_the_end_none()
    {
        RigWalk walk = Walk(Of("2x"), RigMeasure.Span).GoTo(new(RigMeasure.Span, new(2, null)));
        walk = walk.Recorded(View(Of("2x", Span(2, 150))));
        Assert.Equal("span 1", Told(walk.Now!.Value));

        walk = walk.Recorded(View(Of("2x", Span(2, 150), Span(1, 160))));
        Assert.Null(walk.Now);
    }

    [Fact]
    public void What_is_skipped_comes_again_after_the_rest()
    {
        RigWalk walk = Walk(Of("2x"), RigMeasure.Span).Skip();
        Assert.Equal("span 2", Told(walk.Now!.Value));

        Assert.Equal("span 1", Told(walk.Recorded(View(Of("2x", Span(2, 150)))).Now!.Value));
        Assert.Equal("span 1", Told(walk.Recorded(View(Of("2x", Span(2, 150)))).Skip().Now!.Value));
    }

    [Fact]
    public void One_moves_along_it_round_both_its_ends()
    {
        RigWalk walk = Walk(Of("2x"), RigMeasure.Span);

        Assert.Equal("span 2", Told(walk.Move(-1).Now!.Value));
        Assert.Equal("span 1", Told(walk.Move(1).Move(1).Now!.Value));
    }

    [Fact]
    public void A_retracted_figure_is_asked_for_again()
    {
        Recorded taken = Span(1, 150).Record;
        Club club = Of("2x").With([taken, Journals.Entry(9, new Retracted(taken.Entry.Id), 160)]);

        Assert.Equal(0, Walk(club, RigMeasure.Span).Done);
    }

    private static string Told(RigStep step) => step.Measure.Word() + " " + step.Place.Seat + (step.Place.Side is { } side ? " " + side.Word() : string.Empty);

    private static RigWalk Walk(Club club, params RigMeasure[] measures) => RigWalk.Of(View(club), measures, Begun);

    private static RigView View(Club club) => new(club, new BoatView(club, "teal"));

    private static (Recorded Record, long Time) Span(int seat, long time) =>
        (Journals.Entry(seat + 1, new MeasureTaken("teal", "span", seat, 159, "cm"), time), time);

    private static Club Of(string boatClass, params (Recorded Record, long Time)[] taken) => Club.Empty(Journals.Club).With(
        [Journals.Entry(1, Journals.Set("teal", "class", boatClass), 1), .. taken.Select(t => t.Record)]);
}
