using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;
using static Gatewright.Core.Tests.Diagnosing.Boats;

namespace Gatewright.Core.Tests.Diagnosing;

/// <summary>That causes which the readings cannot tell apart are named, and others not.</summary>
public sealed class TwinsTests
{
    [Fact]
    public void Abeam_an_insert_a_pin_leaning_aft_and_a_rigger_read_the_same()
    {
        Diagnosis diagnosis = Diagnose(Eight([Station.Abeam], (seat, _) => seat == 5 ? 1.5 : 4));
        AssertTwins(diagnosis, Cause.GatePitch, Cause.PinAft);
        AssertTwins(diagnosis, Cause.GatePitch, Cause.Rigger);
        AssertTwins(diagnosis, Cause.PinAft, Cause.Rigger);
        Assert.All(diagnosis.Twins, twins => Assert.Equal(1, twins.Alike, 1e-9));
        Assert.All(diagnosis.Twins, twins => Assert.InRange(twins.Alike, 0, 1));
    }

    /// <summary>At 1, cos 55° and cos 35°, insert and lean aft differ in shape, but less than noise and healthy scatter hide.</summary>
    [Fact]
    public void Catch_and_finish_still_tell_insert_and_lean_aft_apart_but_poorly()
    {
        Diagnosis diagnosis = Diagnose(Eight([Station.Catch, Station.Finish], (seat, _) => seat == 5 ? 2.5 : 4));
        Twins twins = Assert.Single(diagnosis.Twins);
        Assert.Equal(new CausePart(Cause.GatePitch, Gate(5)), twins.One);
        Assert.Equal(new CausePart(Cause.PinAft, Gate(5)), twins.Other);
        Assert.InRange(twins.Alike, 0.85, 0.99);
    }

    [Fact]
    public void A_hull_bow_high_and_a_gauge_off_zero_read_the_same_abeam()
    {
        Twins twins = Assert.Single(Diagnose(Eight([Station.Abeam], (_, _) => 5.5)).Twins);
        Assert.Equal([Cause.HullLevel, Cause.GaugeZero], [twins.One.Cause, twins.Other.Cause]);
    }

    [Fact]
    public void Causes_that_three_stations_tell_apart_are_no_twins() =>
        Assert.Empty(Diagnose(Eight(Stations.All, (seat, at) => seat != 3 ? 4 : 5.5 - (2 * (int)at))).Twins);

    [Fact]
    public void A_healthy_boat_has_no_twins() => Assert.Empty(Diagnose(Eight([Station.Abeam], (_, _) => 4)).Twins);

    /// <summary>The bounds of the page: a probability of 0.1 each, and 0.8 alike.</summary>
    [Theory]
    [InlineData(2.0, 3.0)]
    [InlineData(2.5, 2.0)]
    [InlineData(6.0, 6.5)]
    [InlineData(6.0, 5.0)]
    [InlineData(4.0, 2.5)]
    public void Likely_causes_are_twins_when_what_they_do_is_alike_enough(double atCatch, double abeam)
    {
        BoatReadings boat = Eight([Station.Catch, Station.Abeam], (seat, at) => seat != 5 ? 4 : at == Station.Catch ? atCatch : abeam);
        Diagnosis diagnosis = Diagnose(boat);
        var dense = new DenseModel(boat, BoatContext.None);
        (Cause Cause, string Unknown)[] single = [(Cause.GatePitch, "pitch"), (Cause.PinAft, "aft"), (Cause.PinOut, "out")];
        foreach ((int i, int j) in new[] { (0, 1), (0, 2), (1, 2) })
        {
            double alike = dense.Alike($"{Gate(5)} {single[i].Unknown}", $"{Gate(5)} {single[j].Unknown}");
            bool likely = diagnosis.Of(single[i].Cause, Gate(5)) >= 0.1 && diagnosis.Of(single[j].Cause, Gate(5)) >= 0.1;
            Twins? told = diagnosis.Twins.SingleOrDefault(t => t.One.Cause == single[i].Cause && t.Other.Cause == single[j].Cause);
            Assert.Equal(likely && alike >= 0.8, told is not null);
            Assert.Equal(alike, told?.Alike ?? alike, 1e-9);
        }
    }

    private static void AssertTwins(Diagnosis diagnosis, Cause one, Cause other) =>
        Assert.Contains(diagnosis.Twins, t => new[] { t.One, t.Other }.ToHashSet()
            .SetEquals([new CausePart(one, Gate(5)), new CausePart(other, Gate(5))]));
}
