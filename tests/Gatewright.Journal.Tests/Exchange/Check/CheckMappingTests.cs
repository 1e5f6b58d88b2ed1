using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Exchange.Check;

namespace Gatewright.Journal.Tests.Exchange.Check;

public sealed class CheckMappingTests
{
    [Fact]
    public void A_sound_boat_has_no_reasons_and_both_its_gates()
    {
        CheckedBoat boat = CheckMapping.Boat(Boats.Check("1x", Boats.Single(4, 4, Boats.Lying())));
        Assert.Equal(("Heron", "1x", "good"), (boat.Boat, boat.BoatClass, boat.Verdict));
        Assert.Equal([(1, "port"), (1, "starboard")], boat.Seats.Select(seat => (seat.Seat, seat.Side)));
        Assert.All(boat.Seats, seat => Assert.Empty(seat.Reasons));
        Assert.Empty(boat.NotRead);
        Assert.Null(boat.Next);
    }

    [Fact]
    public void What_was_read_of_a_level_boat_is_written_as_it_was_read()
    {
        CheckedBoat boat = CheckMapping.Boat(Boats.Check("1x", Boats.Single(4.5, 3.5, Boats.Lying())));
        Assert.All(boat.Seats[0].Pitch, pitch => Assert.Equal((4.5, true), (pitch.Value, pitch.Read)));
        Assert.All(boat.Seats[1].Pitch, pitch => Assert.Equal((3.5, true), (pitch.Value, pitch.Read)));
        Assert.Equal(["catch", "abeam", "finish"], boat.Seats[0].Pitch.Select(pitch => pitch.At));
        Assert.Equal([62, 0, -43], boat.Seats[0].Pitch.Select(pitch => pitch.Angle));
    }

    [Fact]
    public void Further_points_of_the_stroke_follow_the_three_stations()
    {
        BoatCheck check = Boats.Check("1x", [
            Boats.Reading(1, Side.Port, Boats.At(20), 4, Boats.Lying()),
            Boats.Reading(1, Side.Port, Boats.At(-12.5), 4, Boats.Lying())]);
        CheckedSeat seat = Assert.Single(CheckMapping.Boat(check).Seats);
        Assert.Equal(["catch", "abeam", "finish", "20", "-12.5"], seat.Pitch.Select(pitch => pitch.At));
        Assert.Equal([false, false, false, true, true], seat.Pitch.Select(pitch => pitch.Read));
    }

    [Fact]
    public void Gates_that_were_not_read_are_named()
    {
        BoatCheck check = Boats.Check("2x", Boats.Single(4, 4, Boats.Lying()));
        Assert.Equal([new(2, "port"), new CheckedGate(2, "starboard")], CheckMapping.Boat(check).NotRead);
    }

    [Fact]
    public void The_side_of_a_sweep_gate_that_was_not_read_is_not_known()
    {
        BoatCheck check = Boats.Check("2-", [Boats.Reading(1, Side.Starboard, Boats.At(Station.Abeam), 4, Boats.Lying())]);
        Assert.Equal(new CheckedGate(2, null), Assert.Single(CheckMapping.Boat(check).NotRead));
    }

    [Fact]
    public void A_gate_under_the_floor_is_written_with_its_reason()
    {
        CheckedBoat boat = CheckMapping.Boat(Boats.Check("1x", Boats.Single(1, 4, Boats.Lying())));
        CheckedReason reason = boat.Seats[0].Reasons[0];
        Assert.Equal("stop", boat.Verdict);
        Assert.Equal(("floor", "stop", "catch", 1.0, 2.0, true), (reason.Kind, reason.Verdict, reason.Station, reason.Value, reason.Limit, reason.Read));
        Assert.StartsWith("Seat 1 port reads 1.0° ± 0.3 at the catch, under the floor of 2°", reason.Sentence, StringComparison.Ordinal);
        Assert.Contains(boat.Seats[0].Reasons, r => r.Kind == "range" && r.Other == new CheckedGate(1, "starboard"));
    }

    [Theory]
    [InlineData(4, 4, false)]
    [InlineData(1, 4, true)]
    [InlineData(2.5, 4, true)]
    [InlineData(5.5, 4, false)]
    public void A_boat_that_may_be_under_a_floor_stays_ashore(double port, double starboard, bool staysAshore)
    {
        // 2.5 ± 0.34 leaves 7 % under the floor of 2, more than the 5 % that a floor allows: adjust, and ashore.
        CheckedBoat boat = CheckMapping.Boat(Boats.Check("1x", Boats.Single(port, starboard, Boats.Lying())));
        Assert.Equal(staysAshore, boat.StaysAshore);
        Assert.Equal([staysAshore, false], boat.Seats.Select(seat => seat.StaysAshore));
    }

    [Fact]
    public void Readings_that_do_not_agree_are_written_as_a_reason()
    {
        BoatLie lie = Boats.Lying();
        BoatCheck check = Boats.Check("1x", [.. Boats.Single(4, 4, lie), Boats.Reading(1, Side.Port, Boats.At(Station.Catch), 5.5, lie)]);
        CheckedReason reason = CheckMapping.Boat(check).Seats[0].Reasons.Single(r => r.Kind == "repeats");
        Assert.Equal(("unsure", "catch", 1.5), (reason.Verdict, reason.Station, reason.Value));
    }

    [Fact]
    public void The_hull_is_the_lying_with_most_readings()
    {
        BoatCheck check = Boats.Check("1x", [
            Boats.Reading(1, Side.Port, Boats.At(Station.Abeam), 4, Boats.Lying(Lie.Inverted, new(2026, 3, 13))),
            .. Boats.Single(4.5, 4.5, Boats.Lying(Lie.Upright, new(2026, 3, 14)))]);
        CheckedBoat boat = CheckMapping.Boat(check);
        Assert.Equal([("inverted", "2026-03-13", 1), ("upright", "2026-03-14", 6)], boat.Lies.Select(lie => (lie.Lie, lie.Date, lie.Readings)));
        Assert.Equal((boat.Lies[1].BowHigh, boat.Lies[1].PortLow), (boat.Hull.BowHigh, boat.Hull.PortLow));
    }

    [Fact]
    public void Accounts_are_those_of_at_least_one_in_a_hundred_and_ten_at_most()
    {
        BoatCheck check = Boats.Check("2x", [
            .. Boats.Single(5.5, 4, Boats.Lying()),
            Boats.Reading(2, Side.Port, Boats.At(Station.Abeam), 5.5, Boats.Lying())]);
        CheckedBoat boat = CheckMapping.Boat(check);
        Assert.True(check.Diagnosis.Stories.Count > boat.Causes.Count, "nothing was left out, so the test shows nothing");
        Assert.InRange(boat.Causes.Count, 2, 10);
        Assert.All(boat.Causes, account => Assert.True(account.Probability >= 0.01));
        Assert.Equal(boat.Causes.OrderByDescending(account => account.Probability), boat.Causes);
    }

    [Fact]
    public void An_account_reads_back_as_it_was()
    {
        BoatCheck check = Boats.Check("1x", Boats.Single(6, 2, Boats.Lying()));
        IReadOnlyList<CheckedStory> accounts = CheckMapping.Boat(check).Causes;
        Assert.Equal(
            check.Diagnosis.Stories.Take(accounts.Count).Select(story => story.ToString()),
            accounts.Select(account => account.ToStory().ToString()));
        Assert.Equal(
            new CausePart(Cause.WrongSeat, new GatePlace(3, Side.Port), new GatePlace(4, Side.Starboard)),
            new CheckedPart("wrong-seat", 3, "port", new(4, "starboard"), null).ToPart());
    }

    [Fact]
    public void An_account_is_named_after_its_parts()
    {
        BoatCheck check = Boats.Check("1x", Boats.Single(6, 2, Boats.Lying()));
        IReadOnlyList<CheckedStory> accounts = CheckMapping.Boat(check).Causes;
        Assert.All(accounts, account => Assert.Equal(
            account.Parts.Count == 0 ? Causes.NoneCode : string.Join(" + ", account.Parts.Select(part => part.Cause)), account.Cause));
        Assert.Contains(accounts, account => account.Parts.Count == 2);
    }

    [Fact]
    public void The_causes_of_a_gate_are_together_1()
    {
        BoatCheck check = Boats.Check("1x", Boats.Single(6, 4, Boats.Lying()));
        foreach (CheckedSeat seat in CheckMapping.Boat(check).Seats)
        {
            // Each of at most eight causes is rounded to 6 decimals.
            Assert.Equal(1, seat.Causes.Sum(cause => cause.Probability), 8 * 0.5e-6);
            Assert.Equal(seat.Causes.OrderByDescending(cause => cause.Probability), seat.Causes);
        }
    }

    [Fact]
    public void A_boat_of_which_only_an_oar_was_read_has_no_gates()
    {
        BoatCheck check = Boats.Check("1x", [Boats.Reading(1, Side.Port, Boats.At(Station.Abeam), 0, Boats.Lying()) with { Item = ReadItem.Sleeve }]);
        CheckedBoat boat = CheckMapping.Boat(check);
        Assert.Empty(boat.Seats);
        Assert.Equal(2, boat.NotRead.Count);
    }
}
