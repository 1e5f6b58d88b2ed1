using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Core.Tests.Support;

namespace Gatewright.Core.Tests.Checking;

/// <summary>What of a boat's record speaks of it as it is, and what of it as it was.</summary>
public class BoatRecordTests
{
    private static readonly GatePlace One = Taken.Seat(1);
    private static readonly GatePlace Two = Taken.Seat(2, Side.Starboard);

    [Fact]
    public void Readings_of_different_days_are_combined_while_nothing_was_done_in_between()
    {
        BoatRecord record = BoatRecord.ByDate(Boat(At(One, 4, 1), At(One, 4, 9)), [], []);

        Assert.Equal((2, 0), (record.Current.Readings.Count, record.Old.Count));
    }

    [Fact]
    public void Of_a_gate_the_last_days_it_was_read_on_count_and_how_many_readings_do_not_is_told()
    {
        // Ten rounds at 4, then the pin was bent and nobody knew: five rounds at 1.5.
        IEnumerable<Reading> rounds = Enumerable.Range(1, 15).Select(day => At(One, day <= 10 ? 4 : 1.5, day));
        BoatRecord record = BoatRecord.ByDate(Boat([.. rounds, At(Two, 4, 2)]), [], []);

        BoatCheck check = record.Check(CheckSettings.Default);

        Assert.Equal([12, 13, 14, 15], check.Readings.Readings.Where(r => r.Gate == One).Select(r => r.Lie.Date!.Value.Day));
        Assert.Single(check.Readings.Readings, r => r.Gate == Two);
        Assert.Equal(11, check.Context.LeftAside);
        Assert.Equal(Verdict.Stop, check.Verdict.Gates.Single(g => g.Gate == One).Verdict);
    }

    [Fact]
    public void All_readings_of_a_day_count_and_what_has_no_date_always_does()
    {
        BoatReadings boat = Boat(At(One, 4, 1), At(One, 4, 2), At(One, 4, 2), At(One, 4, null), At(One, 4, null));

        Assert.Equal([2, 2, null, null], boat.Latest(1).Readings.Select(r => r.Lie.Date?.Day));
    }

    [Theory]
    [InlineData(ReportKind.Knock, 1)]
    [InlineData(ReportKind.Refitted, 1)]
    [InlineData(ReportKind.CrabEarly, 0)]
    public void What_may_have_changed_a_gate_makes_its_earlier_readings_old_and_no_other_gates(ReportKind kind, int old)
    {
        BoatRecord record = BoatRecord.ByDate(
            Boat(At(One, 4, 1), At(One, 5, 9), At(Two, 4, 1)), [new(kind, One, null, Day(5))], []);

        Assert.Equal(old, record.Old.Count);
        Assert.All(record.Old, reading => Assert.Equal(One, reading.Gate));
    }

    [Fact]
    public void A_reading_of_the_very_day_counts_as_taken_after()
    {
        BoatRecord record = BoatRecord.ByDate(Boat(At(One, 4, 5)), [], [new(One, Day(5))]);

        Assert.Empty(record.Old);
    }

    [Fact]
    public void A_report_counts_until_its_gate_is_mended_and_not_after()
    {
        Report knock = new(ReportKind.Knock, One, null, Day(3));
        Report crab = new(ReportKind.CrabEarly, Two, null, Day(3));
        Report down = new(ReportKind.DownToOneSide, null, Side.Port, Day(3));
        BoatRecord record = BoatRecord.ByDate(Boat(At(One, 4, 9)), [knock, crab, down], [new(One, Day(4))]);

        Assert.Equal([crab], record.Reports);
    }

    [Fact]
    public void A_report_from_after_the_mending_counts()
    {
        Report knock = new(ReportKind.Knock, One, null, Day(6));
        BoatRecord record = BoatRecord.ByDate(Boat(At(One, 4, 9)), [knock], [new(One, Day(4))]);

        Assert.Equal([knock], record.Reports);
    }

    // Fours read as fours whichever rigger carries them; two riggers that lean differently do not.
    [Fact]
    public void Riggers_exchanged_after_a_good_reading_are_found_by_how_they_leaned_before()
    {
        GatePlace three = Taken.Seat(3);
        Reading[] before = [.. Stroke(One, 0, 1), .. Stroke(three, 0.9, 1)];
        Reading[] after = [.. Stroke(One, 0.9, 9), .. Stroke(three, 0, 9)];
        Report[] refitted = [new(ReportKind.Refitted, One, null, Day(5)), new(ReportKind.Refitted, three, null, Day(5))];

        BoatCheck check = BoatRecord.ByDate(Boat([.. before, .. after]), refitted, []).Check(CheckSettings.Default);

        Assert.Equal(2, check.Context.LastGood.Count);
        Assert.True(check.Context.LastGood[three].Out.Degrees > check.Context.LastGood[One].Out.Degrees);
        Assert.Contains(check.Diagnosis.Stories, story => story.Parts.Any(p => p.Cause == Cause.WrongSeat));
    }

    private static DateOnly Day(int day) => new(2026, 5, day);

    private static BoatReadings Boat(params Reading[] readings) => new("the boat", BoatClass.Parse("4-"), readings);

    private static Reading At(GatePlace gate, double degrees, int? day) => Taken.Gate(
        gate, Station.Abeam, degrees, new BoatLie(Lie.Upright, new HullLevel.BubbleCentred(), day is { } known ? Day(known) : null));

    /// <summary>A whole stroke of a gate of 4° whose pin leans out so much, exactly as it is.</summary>
    private static IEnumerable<Reading> Stroke(GatePlace gate, double leanOut, int day)
    {
        var lie = new BoatLie(Lie.Upright, new HullLevel.Read(HullAttitude.Level), Day(day));
        return Stations.All.Select(station => Taken.Gate(
            gate,
            station,
            PitchGeometry.At(Taken.Settings.Sweep.At(station), GateState.FromDegrees(4, 0, leanOut), gate.Side).Degrees,
            lie));
    }
}
