using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Drawings.History;

namespace Gatewright.Drawings.Tests.History;

public class HistoryGeometryTests
{
    private static readonly DateOnly Start = new(2026, 3, 1);

    [Fact]
    public void A_mend_begins_a_new_line_and_the_reading_of_its_day_is_the_first_on_it()
    {
        var history = new HistoryGeometry([Reading(30), Reading(0), Reading(10), Reading(20)], [Start.AddDays(20)], Standard.Club.Catch);

        Assert.Equal([2, 2], history.Segments.Select(run => run.Count));
        Assert.Equal(Start.AddDays(20), history.Segments[1][0].Day);
        Assert.Equal(history.Readings.OrderBy(r => r.Day), history.Readings);
    }

    [Fact]
    public void Days_are_spaced_as_they_were()
    {
        var history = new HistoryGeometry([Reading(0), Reading(10), Reading(30)], [], null);
        double[] x = [.. history.Readings.Select(r => history.At(r).X)];

        Assert.Equal((x[1] - x[0]) * 2, x[2] - x[1], 9);
    }

    [Theory]
    [InlineData(HistoryGeometry.MostWithBars, false)]
    [InlineData(HistoryGeometry.MostWithBars + 1, true)]
    public void Many_readings_have_a_band_for_their_bars(int count, bool isDense) =>
        Assert.Equal(isDense, new HistoryGeometry([.. Enumerable.Range(0, count).Select(Reading)], [], null).IsDense);

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void Few_readings_or_none_are_drawn_too(int count)
    {
        var history = new HistoryGeometry([.. Enumerable.Range(0, count).Select(Reading)], [], Standard.Club.Catch);

        Assert.All(history.Readings, r =>
        {
            Assert.InRange(history.At(r).X, 0, HistoryGeometry.Width);
            Assert.InRange(history.Bar(r).High, 0, HistoryGeometry.Height);
            Assert.InRange(history.Bar(r).Low, 0, HistoryGeometry.Height);
        });
    }

    private static HistoryReading Reading(int day) => new(Start.AddDays(day), Estimate.FromDegrees(4, 0.3));
}
