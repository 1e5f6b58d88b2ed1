using FsCheck.Xunit;
using Gatewright.Core.Geometry;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Core.Tests.Support;

namespace Gatewright.Core.Tests.Judging;

[Properties(Arbitrary = [typeof(BoatCases)])]
public class JudgeTests
{
    [Fact]
    public void A_gate_inside_all_its_limits_is_good_and_says_nothing_more()
    {
        GateVerdict gate = Judged.Gate(Standard.Club, 4.5, 4.5, 4);

        Assert.Equal(Verdict.Good, gate.Verdict);
        Assert.Empty(gate.Reasons);
        Assert.Equal([4.5, 4.5, 4], Stations.All.Select(s => gate.At(s).Pitch.Value.Degrees));
        Assert.All(gate.Pitches, pitch => Assert.Equal((true, 1, false), (pitch.Read, pitch.Repeats, pitch.RepeatsDisagree)));
    }

    // On a limit, and a step of 0.01 to either side; a level that was read, so that the floor is not in question.
    [Theory]
    [InlineData(Station.Catch, 3, true)]
    [InlineData(Station.Catch, 2.99, false)]
    [InlineData(Station.Catch, 5, true)]
    [InlineData(Station.Catch, 5.01, false)]
    [InlineData(Station.Abeam, 3, true)]
    [InlineData(Station.Abeam, 2.99, false)]
    [InlineData(Station.Abeam, 5, true)]
    [InlineData(Station.Abeam, 5.01, false)]
    [InlineData(Station.Finish, 1.5, true)]
    [InlineData(Station.Finish, 1.49, false)]
    [InlineData(Station.Finish, 5, true)]
    [InlineData(Station.Finish, 5.01, false)]
    public void Club_limits_hold_on_and_inside(Station station, double pitch, bool good) =>
        Assert.Equal(
            good ? Verdict.Good : Verdict.Unsure,
            Judged.Gate(Standard.Club, Taken.Gate(Taken.Seat(1), station, pitch, Taken.Read(Lie.Upright, 0, 0))).Verdict);

    // u is 0.3358: 0.8416212 of it beyond 5.
    [Theory]
    [InlineData(5.282, Verdict.Unsure)]
    [InlineData(5.283, Verdict.Adjust)]
    public void Far_enough_outside_is_adjust(double pitch, Verdict verdict)
    {
        GateVerdict gate = Judged.Gate(Standard.Club, Taken.Gate(Taken.Seat(1), Station.Catch, pitch, Taken.Read(Lie.Upright, 0, 0)));

        Assert.Equal([(ReasonKind.AboveLimit, Station.Catch, verdict)], gate.Grounds());
        Assert.Equal(5, gate.Reasons[0].Limit.Degrees);
        Close.To(0.8, gate.Reasons[0].Probability, 0.001);
    }

    // The same below: 1.6448536 of u = 0.3358 above the floor of 2 is 2.5523.
    [Theory]
    [InlineData(2.552, Verdict.Unsure)]
    [InlineData(2.553, Verdict.Good)]
    public void A_floor_must_be_shown_to_lie_below(double pitch, Verdict byFloor)
    {
        GateVerdict gate = Judged.Gate(Standard.Club, Taken.Gate(Taken.Seat(1), Station.Catch, pitch, Taken.Read(Lie.Upright, 0, 0)));

        Assert.Equal(byFloor != Verdict.Good, gate.Reasons.Any(r => r.Kind == ReasonKind.Floor));
        Assert.Contains(gate.Reasons, r => r.Kind == ReasonKind.BelowLimit && r.Limit.Degrees == 3);
    }

    [Theory]
    [InlineData(Station.Catch, 2)]
    [InlineData(Station.Abeam, 2)]
    [InlineData(Station.Finish, 0)]
    public void On_the_floor_is_stop_and_just_above_it_is_not(Station station, double floor)
    {
        GateVerdict on = Judged.Gate(Standard.Club, Taken.Gate(Taken.Seat(1), station, floor));
        GateVerdict above = Judged.Gate(Standard.Club, Taken.Gate(Taken.Seat(1), station, floor + 0.01));

        Assert.Equal((ReasonKind.Floor, station, Verdict.Stop), on.Grounds().First());
        Assert.Equal(0.5, on.Reasons[0].Probability);
        Assert.DoesNotContain(above.Reasons, r => r.Verdict == Verdict.Stop);
        Assert.Contains((ReasonKind.Floor, station, Verdict.Unsure), above.Grounds());
    }

    // The drop's u is 0.4532: noise √2 · 0.2505, and 0.2 of level with the difference of the slopes, √2.
    [Theory]
    [InlineData(4.5, 2, Verdict.Good)]
    [InlineData(4.5, 1.99, Verdict.Unsure)]
    [InlineData(4.5, 1.62, Verdict.Unsure)]
    [InlineData(4.5, 1.61, Verdict.Adjust)]
    [InlineData(2.5, 5, Verdict.Good)]
    public void A_drop_from_catch_to_finish_is_held_to_its_limit(double atCatch, double atFinish, Verdict verdict)
    {
        GateVerdict gate = Judged.Gate(Standard.Club, atCatch, 4, atFinish);
        Reason? drop = gate.Reasons.SingleOrDefault(r => r.Kind == ReasonKind.Drop);

        Assert.Equal(verdict, drop?.Verdict ?? Verdict.Good);
        if (drop is not null)
        {
            Assert.Equal((Station.Finish, 2.5, true), (drop.Station, drop.Limit.Degrees, drop.Read));
            Close.To(0.4532, drop.Value.U.Degrees, 0.0005);
        }
    }

    [Fact]
    public void A_drop_needs_both_its_ends() =>
        Assert.Empty(Judged.Gate(Standard.Club, Taken.Gate(Taken.Seat(1), Station.Catch, 5), Taken.Gate(Taken.Seat(1), Station.Abeam, 3)).Reasons);

    [Fact]
    public void A_station_that_was_not_read_is_judged_by_its_floor_alone()
    {
        Reading atCatch = Taken.Gate(Taken.Seat(1), Station.Catch, 4);
        GateVerdict high = Assert.Single(Judged.Boat(Standard.Race, [atCatch], new FixedForecast(new([1], [9], [0.1]))).Gates);
        GateVerdict low = Assert.Single(Judged.Boat(Standard.Race, [atCatch], new FixedForecast(new([1], [1], [0.1]))).Gates);

        Assert.Equal(Verdict.Good, high.Verdict);
        Assert.Equal((false, 9.0, 0), (high.At(Station.Abeam).Read, high.At(Station.Abeam).Pitch.Value.Degrees, high.At(Station.Abeam).Repeats));
        Assert.Equal([(ReasonKind.Floor, Station.Abeam, Verdict.Stop)], low.Grounds());
        Assert.False(low.Reasons[0].Read);
    }

    // Two stories, one of them surely under the floor of 2: its chance against 0.5 and 0.05.
    [Theory]
    [InlineData(0.51, Verdict.Stop)]
    [InlineData(0.49, Verdict.Unsure)]
    [InlineData(0.051, Verdict.Unsure)]
    [InlineData(0.049, Verdict.Good)]
    public void An_expected_pitch_is_judged_by_all_its_stories(double bad, Verdict verdict)
    {
        var forecast = new FixedForecast(new([bad, 1 - bad], [0.5, 4], [0.1, 0.1]));
        BoatVerdict boat = Judged.Boat(Standard.Club, [Taken.Gate(Taken.Seat(1), Station.Catch, 4)], forecast);

        Assert.Equal(verdict, boat.Verdict);
    }

    [Fact]
    public void What_to_expect_is_asked_for_only_where_nothing_was_read()
    {
        FixedForecast forecast = FixedForecast.Healthy;
        Judged.Boat(
            Standard.Club,
            [
                Taken.Gate(Taken.Seat(1), Station.Catch, 4),
                Taken.Gate(Taken.Seat(1), Station.Abeam, 4),
                Taken.Gate(Taken.Seat(1), Station.Finish, 4),
                Taken.Gate(Taken.Seat(2, Side.Starboard), Station.Abeam, 4),
            ],
            forecast);

        Assert.Equal(
            [(Taken.Seat(2, Side.Starboard), OarAngle.FromDegrees(55)), (Taken.Seat(2, Side.Starboard), OarAngle.FromDegrees(-35))],
            forecast.Asked);
    }

    [Fact]
    public void A_sculling_boat_is_judged_at_its_own_oar_angles()
    {
        FixedForecast forecast = FixedForecast.Healthy;
        Judged.Boat(Standard.Club, [Taken.Gate(Taken.Seat(1), Station.Abeam, 4, rowing: Rowing.Scull)], forecast, "1x");

        Assert.Equal([62, -43], forecast.Asked.Select(a => a.At.Degrees));
    }

    [Fact]
    public void A_gate_of_which_only_the_pin_was_read_is_judged_by_what_to_expect()
    {
        GateVerdict gate = Judged.Gate(Standard.Club, Taken.Item(ReadItem.PinOut, Taken.Seat(4), 0.5));

        Assert.Equal(Verdict.Good, gate.Verdict);
        Assert.All(gate.Pitches, pitch => Assert.False(pitch.Read));
    }

    [Fact]
    public void Another_angle_that_was_read_is_shown_and_not_judged()
    {
        GateVerdict gate = Judged.Gate(
            Standard.Club, Taken.GateAt(Taken.Seat(1), 20, 1), Taken.Gate(Taken.Seat(1), Station.Catch, 4));

        Assert.Equal(Verdict.Good, gate.Verdict);
        Assert.Equal(4, gate.Pitches.Count);
        Assert.Equal((20.0, 1.0, true), (gate.Pitches[3].At.Angle.Degrees, gate.Pitches[3].Pitch.Value.Degrees, gate.Pitches[3].Read));
    }

    [Fact]
    public void A_boat_of_which_no_gate_was_read_is_unsure()
    {
        BoatVerdict sleeve = Judged.Boat(Standard.Club, [Taken.Item(ReadItem.Sleeve, Taken.Seat(1), 0)]);
        BoatVerdict nothing = Judged.Boat(Standard.Club, []);

        Assert.Equal((Verdict.Unsure, 0, 8), (sleeve.Verdict, sleeve.Gates.Count, sleeve.NotRead.Count));
        Assert.Equal((Verdict.Unsure, 0, 8), (nothing.Verdict, nothing.Gates.Count, nothing.NotRead.Count));
    }

    [Property]
    public void A_boat_is_as_bad_as_its_worst_gate_and_a_gate_as_its_worst_reason(BoatCase boat)
    {
        BoatVerdict verdict = Judged.Boat(Standard.Club, boat.Readings, boatClass: "4x");

        Assert.Equal(verdict.Gates.Count == 0 ? Verdict.Unsure : verdict.Gates.Max(g => g.Verdict), verdict.Verdict);
        Assert.Equal(
            boat.Readings.Where(r => r.Item != ReadItem.Sleeve).Select(r => r.Gate).Distinct().Order(),
            verdict.Gates.Select(g => g.Gate));
        Assert.Equal(8, verdict.Gates.Count + verdict.NotRead.Count);
        foreach (GateVerdict gate in verdict.Gates)
        {
            Assert.Equal(gate.Reasons.Select(r => r.Verdict).DefaultIfEmpty(Verdict.Good).Max(), gate.Verdict);
            Assert.Equal(gate.Reasons.Select(r => r.Verdict).OrderDescending(), gate.Reasons.Select(r => r.Verdict));
            Assert.DoesNotContain(gate.Reasons, r => r.Verdict == Verdict.Good);
        }
    }

    [Property]
    public void The_order_of_readings_changes_no_verdict_and_no_word(BoatCase boat)
    {
        BoatVerdict one = Judged.Boat(Standard.Race, boat.Readings, boatClass: "4x");
        BoatVerdict other = Judged.Boat(Standard.Race, boat.Shuffled, boatClass: "4x");

        Assert.Equal(one.Gates.Select(g => (g.Gate, g.Verdict)), other.Gates.Select(g => (g.Gate, g.Verdict)));
        Assert.Equal(one.NotRead, other.NotRead);
        Assert.Equal(one.Sentences(), other.Sentences());
    }

    [Property]
    public void A_worse_known_level_never_improves_the_verdict_on_a_floor(byte atCatch, byte atFinish)
    {
        Verdict worst = Verdict.Good;
        foreach (BoatLie lie in new[] { Taken.Read(Lie.Upright, 0, 0), Taken.Level, Taken.ByEye })
        {
            GateVerdict gate = Judged.Gate(Standard.Club, atCatch / 40.0, atCatch / 40.0, atFinish / 40.0, lie);
            Verdict floor = gate.Reasons.Where(r => r.Kind == ReasonKind.Floor).Select(r => r.Verdict).DefaultIfEmpty(Verdict.Good).Max();

            Assert.True(floor >= worst);
            worst = floor;
        }
    }

    [Fact]
    public void What_is_missing_is_told()
    {
        var judge = new Judge(Standard.Club, DecisionRule.Default, Taken.Settings);
        var boat = new BoatReadings("the boat", BoatClass.Parse("1x"), []);
        var corrected = CorrectedReadings.Of([], Taken.Settings);

        Assert.Throws<ArgumentNullException>(() => judge.Boat(null!, corrected, FixedForecast.Healthy));
        Assert.Throws<ArgumentNullException>(() => judge.Boat(boat, null!, FixedForecast.Healthy));
        Assert.Throws<ArgumentNullException>(() => judge.Boat(boat, corrected, null!));
    }
}
