using Gatewright.Core.Advising;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Tests.Advising;

/// <summary>What is advised on boats whose right answer a practitioner knows.</summary>
public class AdviceTests
{
    private static readonly HullLevel ByEye = new HullLevel.ByEye();
    private static readonly GatePlace Five = new(5, Side.Starboard);

    /// <remarks>At the catch every fault of a gate shows: its own pitch whole, a lean aft by cos 55°, one out by sin 55°.</remarks>
    [Fact]
    public void A_boat_that_reads_as_it_should_at_the_catch_needs_no_further_reading()
    {
        Advice advice = Round.At(Station.Catch, "8+", null, 4, 4, 4, 4, 4, 4, 4, 4).Advice;

        Assert.True(advice.CausesFound);
        Assert.True(advice.VerdictsSettled);
        Assert.True(advice.IsDecided);
        Assert.Null(advice.Next);
        Assert.Empty(advice.Others);
    }

    /// <remarks>Common practice: a lean out shows from catch to finish; abeam it cannot be seen.</remarks>
    [Fact]
    public void A_boat_that_reads_as_it_should_abeam_is_looked_at_for_leans_out()
    {
        Advice advice = Round.Abeam("8+", null, 4, 4, 4, 4, 4, 4, 4, 4).Advice;

        Assert.True(advice.CausesFound);
        Assert.False(advice.VerdictsSettled);
        Assert.Equal(Station.Catch, advice.Next!.Choice.At!.Value.Station);
    }

    [Fact]
    public void A_gate_that_is_out_is_read_on_until_its_cause_is_found()
    {
        Advice advice = Round.Abeam("8+", null, 4, 4, 4, 4, 6.5, 4, 4, 4).Advice;

        Assert.False(advice.IsDecided);
        Assert.Equal(new(NextItem.Gate, Five, MeasuringSettings.Default.Sweep.Point(Station.Catch)), advice.Next!.Choice);
    }

    [Fact]
    public void Once_the_cause_of_the_gate_that_is_out_is_found_enough_has_been_read()
    {
        Round round = Round.Abeam("8+", null, 4, 4, 4, 4, 6.5, 4, 4, 4)
            .Pin(ReadItem.PinAft, Five, 2.5)
            .Pin(ReadItem.PinOut, Five, 0);

        Assert.Equal(Cause.PinAft, round.Check.Diagnosis.Gates[4].Causes[0].Cause);
        Assert.True(round.Advice.IsDecided);
        Assert.Null(round.Advice.Next);
    }

    [Theory]
    [InlineData(2.5, Cause.PinAft, Cause.GatePitch)]
    [InlineData(0, Cause.GatePitch, Cause.PinAft)]
    public void The_pin_read_from_the_side_tells_a_leaning_pin_from_a_wrong_insert(double lean, Cause found, Cause ruledOut)
    {
        Round abeam = Round.Abeam("8+", null, 4, 4, 4, 4, 6.5, 4, 4, 4);
        double Chance(Round round, Cause cause) => round.Check.Diagnosis.Probability(p => p.Cause == cause && p.Gate == Five);

        // Abeam the two read alike.
        Assert.InRange(Chance(abeam, found) / Chance(abeam, ruledOut), 0.8, 1.25);

        Round read = abeam.Pin(ReadItem.PinAft, Five, lean);

        Assert.True(Chance(read, found) > 10 * Chance(read, ruledOut));
    }

    [Fact]
    public void Of_causes_alone_the_pin_from_the_side_or_the_face_against_it_tells_most_when_only_abeam_was_read()
    {
        Advice advice = Round.Abeam("8+", null, 4, 4, 4, 4, 6.5, 4, 4, 4).Advice;

        List<NextItem> byCause = [.. advice.Others.Append(advice.Next!).OrderByDescending(r => r.CauseBits).Select(r => r.Choice.Item)];

        Assert.Equal([NextItem.PinAft, NextItem.GatePitch], byCause.Take(2).Order());
    }

    /// <remarks>
    /// Common practice: all gates out by the same amount are not eight riggers but the boat or the gauge. A hull that
    /// is bow-high adds its whole rise abeam, cos 55° of it at the catch, cos 35° at the finish.
    /// </remarks>
    [Fact]
    public void All_gates_high_abeam_and_less_so_at_the_catch_send_one_to_the_level()
    {
        Round round = Both(new HullLevel.BubbleCentred(), abeam: 6.5, atCatch: 5.5);

        Assert.True(round.Check.Diagnosis.Probability(p => p.Cause == Cause.HullLevel) > 0.5);
        Assert.Equal(NextItem.Level, round.Advice.Next!.Choice.Item);
    }

    /// <remarks>Common practice; a gauge off its zero adds the same at every station.</remarks>
    [Fact]
    public void All_gates_high_by_the_same_at_every_station_send_one_to_the_gauge()
    {
        Round round = Both(ByEye, abeam: 6, atCatch: 6);

        Assert.True(round.Check.Diagnosis.Probability(p => p.Cause == Cause.GaugeZero) > 0.5);
        Assert.Equal(new ReadingChoice(NextItem.GaugeReversed, Gauge: "gauge"), round.Advice.Next!.Choice);
    }

    [Theory]
    [InlineData(false, NextItem.GaugeReversed)]
    [InlineData(true, NextItem.Level)]
    public void All_gates_high_alike_send_one_to_the_level_or_the_gauge(bool byEye, NextItem first) => Assert.Equal(
        first, Round.Abeam("8+", byEye ? ByEye : null, 5.5, 5.5, 5.5, 5, 5.5, 6, 5.5, 5.5).Advice.Next!.Choice.Item);

    [Fact]
    public void A_level_that_was_read_and_a_gauge_that_was_checked_are_not_asked_for_again()
    {
        Round round = Round.Abeam("8+", null, 5.5, 5.5, 5.5, 5, 5.5, 6, 5.5, 5.5);
        Advice before = round.Advice;
        BoatReadings taken = ReadingTaken.On(round.Readings, before.Next!.Choice, default, default, MeasuringSettings.Default);
        Advice after = Advisor.For(
            BoatCheck.Of(taken, BoatContext.None, CheckSettings.Default), AdvisingSettings.Default);

        Assert.Equal(NextItem.GaugeReversed, before.Next.Choice.Item);
        Assert.DoesNotContain(
            after.Others.Append(after.Next!), r => r.Choice.Item is NextItem.GaugeReversed or NextItem.Level);
    }

    /// <remarks>
    /// On a boat levelled by eye a reading of 5.5 does not show a gate outside 3 to 5, and healthy gates on a boat that
    /// does not quite lie level explain it: without a better level neither verdict nor cause gets further.
    /// </remarks>
    [Fact]
    public void A_verdict_that_no_cause_explains_is_not_enough()
    {
        Round round = Round.Abeam("8+", ByEye, 5.5, 5.5, 5.5, 5.5, 5.5, 5.5, 5.5, 5.5);

        Assert.Equal(Verdict.Unsure, round.Check.Verdict.Verdict);
        Assert.True(round.Advice.CausesFound);
        Assert.False(round.Advice.IsDecided);
    }

    /// <remarks>Two readings of 5 and 3 are each inside 3 to 5, and further apart than 1.5.</remarks>
    [Fact]
    public void Gates_too_far_apart_but_each_inside_its_limits_want_no_cause()
    {
        Round round = Round.At(Station.Catch, "8+", null, 5, 4, 4, 4, 4, 3, 4, 4);

        Assert.Equal(Verdict.Adjust, round.Check.Verdict.Verdict);
        Assert.True(round.Advice.IsDecided);
    }

    [Fact]
    public void When_no_reading_is_worth_its_time_enough_has_been_read_though_nothing_is_decided()
    {
        AdvisingSettings asking = AdvisingSettings.Default with { LeastGainBits = 100 };

        Advice advice = Advisor.For(Round.Abeam("8+", null, 4, 4, 4, 4, 6.5, 4, 4, 4).Check, asking);

        Assert.Null(advice.Next);
        Assert.False(advice.IsDecided);
        Assert.NotEmpty(Advisor.For(
            Round.Abeam("8+", null, 4, 4, 4, 4, 6.5, 4, 4, 4).Check, AdvisingSettings.Default).Others);
    }

    [Fact]
    public void A_reading_that_takes_longer_is_chosen_later()
    {
        BoatCheck check = Round.Abeam("8+", null, 4, 4, 4, 4, 6.5, 4, 4, 4).Check;
        AdvisingSettings slow = AdvisingSettings.Default with { Times = ReadingTimes.Default with { Gate = 120 } };

        Assert.Equal(NextItem.Gate, Advisor.For(check, AdvisingSettings.Default).Next!.Choice.Item);
        Assert.Equal(NextItem.PinOut, Advisor.For(check, slow).Next!.Choice.Item);
    }

    private static Round Both(HullLevel level, double abeam, double atCatch)
    {
        Round round = Round.Abeam("8+", level, [.. Enumerable.Repeat(abeam, 8)]);
        return Round.Gates(round.Class).Aggregate(round, (r, gate) => r.Gate(gate, Station.Catch, atCatch));
    }
}
