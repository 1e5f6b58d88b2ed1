using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Core.Tests.Support;

namespace Gatewright.Core.Tests.Judging;

/// <summary>How far apart the gates of one boat may be at one station, and which of them that is laid to.</summary>
public class RangeTests
{
    [Theory]
    [InlineData(5, false)]
    [InlineData(5.01, true)]
    public void A_range_on_its_limit_is_good_and_beyond_it_is_not(double highest, bool tooWide) =>
        Assert.Equal(tooWide ? [3] : [], LaidTo(Wide, 3.5, 4, highest));

    [Theory]
    [InlineData(new[] { 4.0, 4, 4, 5.75 }, new[] { 4 })]
    [InlineData(new[] { 2.25, 4.0, 4, 4 }, new[] { 1 })]
    [InlineData(new[] { 3.0, 5 }, new[] { 1, 2 })]
    [InlineData(new[] { 3.0, 3.0, 5, 5 }, new[] { 1, 2, 3, 4 })]
    [InlineData(new[] { 4.0, 5.75, 4, 5.75, 4 }, new[] { 2, 4 })]
    [InlineData(new[] { 3.0, 3.5, 5 }, new[] { 3 })]

    // The middle is 4.4, the median: the mean of 3.9 would lay it to the last.
    [InlineData(new[] { 3.0, 3, 3.2, 4.4, 4.4, 4.4, 5 }, new[] { 1, 2 })]
    [InlineData(new[] { 4.0 }, new int[0])]
    public void It_is_laid_to_the_gates_furthest_from_the_middle_of_the_boat(double[] pitches, int[] seats) =>
        Assert.Equal(seats, LaidTo(Wide, pitches));

    [Theory]
    [InlineData(5.5, 3.5, new[] { 1 })]
    [InlineData(4.5, 2.5, new[] { 2 })]
    [InlineData(5.5, 2.5, new[] { 1, 2 })]
    public void Of_a_pair_it_is_laid_to_the_gate_outside_the_stations_own_limits(double first, double second, int[] seats) =>
        Assert.Equal(seats, LaidTo(Standard.Club, first, second));

    [Fact]
    public void It_names_the_other_end_the_limit_and_the_uncertainty_of_the_difference()
    {
        BoatVerdict boat = Judged.Boat(Wide, [.. Readings(4, 4, 4, 5.75)]);
        Reason reason = Assert.Single(boat.Gates[3].Reasons);

        Assert.Equal(
            (Verdict.Unsure, ReasonKind.Range, Station.Catch, 1.75, 1.5, Taken.Seat(1)),
            (reason.Verdict, reason.Kind, reason.Station, reason.Value.Value.Degrees, reason.Limit.Degrees, reason.Other));

        // √2 times the noise of one: level and zero drop out. Φ(0.25 / 0.3542236) = 0.7598.
        Close.To(0.3542236, reason.Value.U.Degrees, 5e-8);
        Close.To(0.7598, reason.Probability, 0.00005);
    }

    /// <summary>Of two gates as far off, one was read twice: it says the same of the boat wherever in the boat it is.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void Of_several_at_the_other_end_it_is_held_against_the_one_that_is_known_best(int twice)
    {
        BoatVerdict boat = Judged.Boat(Wide, [.. Readings(4, 4, 5.75), Taken.Gate(Taken.Seat(twice), Station.Catch, 4)]);
        Reason reason = Assert.Single(boat.Gates[2].Reasons);

        Assert.Equal(Taken.Seat(twice), reason.Other);

        // √1.5 times the noise of one, as the mean of two has half its variance: level and zero drop out.
        Close.To(0.3542236 * Math.Sqrt(1.5 / 2), reason.Value.U.Degrees, 5e-8);
    }

    [Fact]
    public void Stations_are_compared_each_for_itself()
    {
        BoatVerdict boat = Judged.Boat(
            Wide, [Taken.Gate(Taken.Seat(1), Station.Catch, 5), Taken.Gate(Taken.Seat(2), Station.Finish, 3)]);

        Assert.Equal(Verdict.Good, boat.Verdict);
    }

    [Fact]
    public void An_expected_pitch_takes_no_part()
    {
        BoatVerdict boat = Judged.Boat(Wide, [.. Readings(4, 4)], new FixedForecast(new([0.5, 0.5], [3, 9], [0.1, 0.1])));

        Assert.Equal(Verdict.Good, boat.Verdict);
    }

    /// <summary>The club's range with limits so wide that nothing else speaks.</summary>
    private static readonly Standard Wide = Standard.Club with
    {
        Catch = StationLimits.FromDegrees(0, 9, -9),
        Finish = StationLimits.FromDegrees(0, 9, -9),
    };

    private static IEnumerable<Reading> Readings(params double[] pitches) =>
        pitches.Select((pitch, i) => Taken.Gate(Taken.Seat(i + 1), Station.Catch, pitch));

    private static IEnumerable<int> LaidTo(Standard standard, params double[] pitches) =>
        Judged.Boat(standard, [.. Readings(pitches)]).Gates
            .Where(g => g.Reasons.Any(r => r.Kind == ReasonKind.Range))
            .Select(g => g.Gate.Seat);
}
