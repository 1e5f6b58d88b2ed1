using Gatewright.Core.Advising;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Tests.Advising;

/// <summary>What a boat's readings are once a further one was taken.</summary>
public class ReadingTakenTests
{
    private static readonly GatePlace Two = new(2, Side.Port);
    private static readonly Round Pair = Round.Abeam("2-", new HullLevel.ByEye(), 4, 5);

    [Fact]
    public void A_gates_reading_is_one_more_taken_as_the_others_were()
    {
        StrokePoint atCatch = MeasuringSettings.Default.Sweep.Point(Station.Catch);

        BoatReadings taken = Take(Pair, new(NextItem.Gate, Two, atCatch), 4.5);

        Assert.Equal([.. Pair.Taken, new(ReadItem.Gate, Two, atCatch, Angle.FromDegrees(4.5), Pair.Lie, Pair.Gauge)], taken.Readings);
    }

    [Theory]
    [InlineData(NextItem.PinAft, ReadItem.PinAft)]
    [InlineData(NextItem.PinOut, ReadItem.PinOut)]
    [InlineData(NextItem.GatePitch, ReadItem.GatePitch)]
    [InlineData(NextItem.Sleeve, ReadItem.Sleeve)]
    public void Pins_and_oars_are_read_abeam(NextItem item, ReadItem read)
    {
        Reading taken = Take(Pair, new(item, Two), 1).Readings[^1];

        Assert.Equal((read, Two, (Station?)Station.Abeam), (taken.Item, taken.Gate, taken.At.Station));
    }

    [Fact]
    public void A_level_read_takes_the_place_of_what_was_known_of_that_lying_and_of_no_other()
    {
        var other = new BoatLie(Lie.Inverted, new HullLevel.ByEye());
        Round round = (Pair with { Lie = other }).Gate(Two, Station.Finish, 3);

        BoatReadings taken = ReadingTaken.On(
            round.Readings, new(NextItem.Level), Angle.FromDegrees(0.8), Angle.FromDegrees(-0.3), MeasuringSettings.Default);

        var read = new BoatLie(Lie.Upright, new HullLevel.Read(HullAttitude.FromDegrees(0.8, -0.3)));
        Assert.Equal([read, read, other], taken.Readings.Select(r => r.Lie));
    }

    /// <remarks>GUM style: after a reversal the zero is known to 0.05 where it was 0 ± 0.2 before.</remarks>
    [Fact]
    public void A_reversal_takes_the_place_of_what_was_known_of_that_gauge_and_of_no_other()
    {
        Gauge other = MeasuringSettings.Default.GaugeNamed("other");
        Round round = (Pair with { Gauge = other }).Gate(Two, Station.Finish, 3);

        BoatReadings taken = Take(round, new(NextItem.GaugeReversed, Gauge: "gauge"), 0.7);

        var zero = new GaugeZero(Estimate.FromDegrees(0.7, 0.05), true);
        Assert.Equal([zero, zero, other.Zero], taken.Readings.Select(r => r.Gauge.Zero));
        CorrectedPitch corrected = CorrectedReadings.Of(taken.Readings, MeasuringSettings.Default).Pitches[0];
        Assert.Equal(4 - 0.7, corrected.Pitch.Degrees, 1e-9);
    }

    [Fact]
    public void A_further_reading_is_taken_in_the_lying_and_with_the_gauge_most_used()
    {
        var later = new BoatLie(Lie.Inverted, new HullLevel.ByEye());
        Round round = (Pair with { Lie = later, Gauge = MeasuringSettings.Default.GaugeNamed("other") }).Gate(Two, Station.Finish, 3);

        Reading further = Take(round, new(NextItem.PinAft, Two), 1).Readings[^1];

        Assert.Equal((Pair.Lie, "gauge"), (further.Lie, further.Gauge.Name));
    }

    [Fact]
    public void Of_lyings_as_common_the_latest_is_gone_on_with_whatever_the_order()
    {
        var monday = new BoatLie(Lie.Inverted, new HullLevel.ByEye(), new(2026, 3, 2));
        var friday = new BoatLie(Lie.Upright, new HullLevel.ByEye(), new(2026, 3, 6));
        Reading first = (Round.Of("2-") with { Lie = monday }).Gate(Two, Station.Catch, 4).Taken[0];
        Reading second = (Round.Of("2-") with { Lie = friday }).Gate(Two, Station.Finish, 4).Taken[0];

        Assert.All(new[] { new[] { first, second }, [second, first] }, readings => Assert.Equal(
            friday, Take(Round.Of("2-") with { Taken = readings }, new(NextItem.PinAft, Two), 1).Readings[^1].Lie));
    }

    private static BoatReadings Take(Round round, ReadingChoice choice, double shown) =>
        ReadingTaken.On(round.Readings, choice, Angle.FromDegrees(shown), default, MeasuringSettings.Default);
}
