using Gatewright.Core.Judging;
using Gatewright.Core.Tests.Support;
using Gatewright.Words;

namespace Gatewright.Core.Tests.Judging;

/// <summary>Readings of one gate at one station that do not agree.</summary>
public class RepeatsTests
{
    [Fact]
    public void Repeats_that_disagree_are_unsure_however_good_their_mean()
    {
        GateVerdict gate = Twice(3, 5);
        Reason reason = Assert.Single(gate.Reasons);

        Assert.Equal((Verdict.Unsure, ReasonKind.Repeats, Station.Catch), (gate.Verdict, reason.Kind, reason.Station));
        Assert.Equal(2, reason.Value.Value.Degrees);

        // √2 times the noise of one, and 1.96 times that: level and zero drop out of a difference.
        Close.To(0.3542236, reason.Value.U.Degrees, 5e-8);
        Close.To(0.6942655, reason.Limit.Degrees, 5e-7);
        Assert.Equal(
            "Seat 1 port was read more than once at the catch, and two of the readings are 2.0° ± 0.4 apart: more than the 0.7° by which readings of one gate may differ. Read it again.",
            Wording.English.Reasons.Of(gate.Gate, reason, Standard.Club));
    }

    /// <remarks>Studentised range of three, 3.31 (from memory), times the noise of one at the catch, 0.2504739; the table's last digit is worth 0.0013.</remarks>
    [Fact]
    public void The_limit_that_is_told_grows_with_the_number_of_readings()
    {
        double[] read = [3, 4, 5];
        Reason reason = Assert.Single(Judged.Boat(Standard.Club, [.. read.Select(v => Taken.Gate(Taken.Seat(1), Station.Catch, v))]).Gates[0].Reasons);

        Assert.Equal(ReasonKind.Repeats, reason.Kind);
        Close.To(0.82907, reason.Limit.Degrees, 0.0013);
        Assert.InRange(reason.Probability, 0.999, 1);
    }

    [Theory]
    [InlineData(4, 4.5, Verdict.Good)]
    [InlineData(4, 5, Verdict.Unsure)]
    public void Half_a_degree_apart_is_what_a_gauge_in_half_degrees_does_and_one_degree_is_not(
        double first, double second, Verdict verdict) =>
        Assert.Equal(verdict, Twice(first, second).Verdict);

    [Fact]
    public void A_gate_under_its_floor_stays_stopped_when_its_repeats_disagree() =>
        Assert.Equal(Verdict.Stop, Twice(0, 2).Verdict);

    [Theory]
    [InlineData(4, false)]
    [InlineData(2.5, true)]
    [InlineData(1, true)]
    [InlineData(7, false)]
    public void A_boat_stays_ashore_while_a_floor_is_in_doubt_whatever_the_verdict(double atCatch, bool ashore)
    {
        BoatVerdict boat = Judged.Boat(Standard.Club, [Taken.Gate(Taken.Seat(1), Station.Catch, atCatch)]);

        Assert.Equal(ashore, boat.StaysAshore);
    }

    private static GateVerdict Twice(double first, double second) => Judged.Boat(
        Standard.Club,
        [Taken.Gate(Taken.Seat(1), Station.Catch, first), Taken.Gate(Taken.Seat(1), Station.Catch, second)]).Gates[0];
}
