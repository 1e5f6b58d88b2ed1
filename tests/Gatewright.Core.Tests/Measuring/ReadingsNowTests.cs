using FsCheck.Fluent;
using FsCheck.Xunit;
using Gatewright.Core.Advising;
using Gatewright.Core.Checking;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Core.Tests.Support;
using Gatewright.Words;

namespace Gatewright.Core.Tests.Measuring;

/// <summary>What a gate read before it was changed, whoever changed it, lifts nothing over a floor and pulls nothing under one.</summary>
public class ReadingsNowTests
{
    private static readonly GatePlace One = Taken.Seat(1);
    private static readonly GatePlace Two = Taken.Seat(2, Side.Starboard);

    [Fact]
    public void A_gate_that_fell_under_its_floor_is_not_lifted_over_it_by_what_it_was()
    {
        BoatCheck check = Check(At(One, 4, 1), At(Two, 4, 1), At(One, 1.5, 9), At(Two, 4, 9));

        GateVerdict fallen = check.Verdict.Gates[0];
        Assert.Equal((Verdict.Stop, Verdict.Good), (fallen.Verdict, check.Verdict.Gates[1].Verdict));
        Assert.Equal(1.5, fallen.At(Station.Catch).Pitch.Value.Degrees, 1);
        Assert.Equal((1, 2), (fallen.At(Station.Catch).Repeats, check.Verdict.Gates[1].At(Station.Catch).Repeats));
        Reason changed = Assert.Single(fallen.Reasons, r => r.Kind == ReasonKind.Changed);
        Assert.Equal((Day(1), Verdict.Unsure), (changed.Before, changed.Verdict));
        Assert.Equal(-2.5, changed.Value.Value.Degrees, 1);
        Assert.StartsWith("Seat 1 port reads 2.5° ± 0.5 lower at the catch than up to 2026-05-01:", Sentence(fallen, changed), StringComparison.Ordinal);
    }

    [Fact]
    public void Why_is_asked_of_the_gate_as_it_reads_now()
    {
        Reading[] now = [At(One, 1.5, 9), At(One, 1.5, 9, Station.Abeam), At(One, 1.5, 9, Station.Finish)];
        BoatCheck check = Check([At(One, 4, 1), At(One, 4, 1, Station.Finish), .. now]);

        Assert.Equal(Check(now).Diagnosis.Gates[0].Wrong, check.Diagnosis.Gates[0].Wrong);
        Assert.All(check.Readings.Readings, r => Assert.Equal(Day(9), r.Lie.Date));
    }

    [Fact]
    public void One_good_reading_does_not_bring_out_a_gate_that_was_under_its_floor_and_a_second_does()
    {
        BoatCheck once = Check(At(One, 1, 1), At(One, 4, 9));
        BoatCheck twice = Check(At(One, 1, 1), At(One, 4, 9), At(One, 4.5, 9));

        Assert.Equal((Verdict.Unsure, true), (once.Verdict.Verdict, once.Verdict.StaysAshore));
        Assert.Equal(4, once.Verdict.Gates[0].At(Station.Catch).Pitch.Value.Degrees, 1);
        Reason floor = Assert.Single(once.Verdict.Gates[0].Reasons, r => r.Kind == ReasonKind.Floor && r.Station == Station.Catch);
        Assert.StartsWith("Of the readings of seat 1 port at the catch that contradict each other one is 1.0°", Sentence(once.Verdict.Gates[0], floor), StringComparison.Ordinal);
        Assert.DoesNotContain(twice.Verdict.Gates[0].Reasons, r => r.Read);
        Assert.True(Assert.Single(twice.Context.Changes).IsConfirmed);
        Assert.StartsWith("Seat 1 port reads otherwise than up to 2026-05-01", Assert.Single(Wording.English.Boats.Notices(twice)), StringComparison.Ordinal);
    }

    [Fact]
    public void What_changed_a_gate_changed_it_at_every_station_and_no_other_gate_and_no_oar()
    {
        Reading sleeve = At(One, 1, 1) with { Item = ReadItem.Sleeve };
        ReadingsNow now = Boat(
            At(One, 4, 1), At(One, 3, 1, Station.Finish), At(One, 0.5, 1) with { Item = ReadItem.PinAft }, sleeve, At(Two, 4, 1), At(One, 7, 9)).Now(4, Taken.Settings);

        Assert.Equal(One, Assert.Single(now.Changes).Gate);
        Assert.Equal([sleeve, At(Two, 4, 1), At(One, 7, 9)], now.Readings.Readings);
    }

    [Fact]
    public void From_the_first_day_that_contradicts_what_came_after_back_nothing_counts()
    {
        ReadingsNow now = Boat(At(One, 4, 1), At(One, 7, 2), At(One, 4, 3), At(One, 4.5, 4)).Now(4, Taken.Settings);

        Assert.Equal([3, 4], now.Readings.Readings.Select(r => r.Lie.Date!.Value.Day));
        Assert.Equal(Day(2), Assert.Single(now.Changes).Before);
    }

    [Fact]
    public void Of_one_day_nobody_knows_which_reading_is_the_slip_and_the_lower_keeps_the_boat_ashore()
    {
        BoatCheck check = Check(At(One, 1, 9), At(One, 4.5, 9));

        Assert.Empty(check.Context.Changes);
        Assert.Equal([Verdict.Unsure, Verdict.Unsure], check.Verdict.Gates[0].Reasons.Where(r => r.Read && r.Kind is ReasonKind.Floor or ReasonKind.Repeats).Select(r => r.Verdict));
        Assert.True(check.Verdict.StaysAshore);
    }

    [Fact]
    public void What_is_to_be_read_next_is_what_contradicts_itself()
    {
        BoatCheck check = Check([.. Stations.All.SelectMany(s => new[] { At(One, 4, 1, s), At(Two, 4, 1, s), At(Two, 4, 9, s) }), At(One, 4.8, 9), At(One, 4, 9, Station.Abeam), At(One, 2.6, 9, Station.Finish)]);
        Assert.Contains(check.Verdict.Gates[0].Reasons, r => r.Kind == ReasonKind.Changed);

        ReadingChoice next = Advisor.For(check, AdvisingSettings.Default).Next!.Choice;

        Assert.Equal((One, NextItem.Gate), (next.Gate, next.Item));
    }

    [Property]
    public FsCheck.Property The_order_of_readings_is_nothing_to_it(uint seed) => Prop.ToProperty(() =>
    {
        var random = new Random((int)(seed % int.MaxValue));
        Reading[] readings = [.. Enumerable.Range(0, 12).Select(_ => At(random.Next(2) == 0 ? One : Two, random.Next(2, 14) / 2.0, random.Next(1, 5)))];
        Reading[] shuffled = [.. readings];
        random.Shuffle(shuffled);

        ReadingsNow one = Boat(readings).Now(4, Taken.Settings);
        ReadingsNow other = Boat(shuffled).Now(4, Taken.Settings);

        Assert.Equal(one.Changes.Select(c => (c.Gate, c.Before, c.IsConfirmed)), other.Changes.Select(c => (c.Gate, c.Before, c.IsConfirmed)));
        Assert.Equal(one.Readings.Readings.Count, other.Readings.Readings.Count);
    });

    [Fact]
    public void Of_gates_that_nothing_was_done_to_one_in_twenty_seems_changed()
    {
        // Drawn as readings are taken: each with its own error, each day with a level error and all with the gauge's zero. Two
        // days a gate, 4000 gates: the share of a twentieth is known to 0.0034, three of which is a hundredth.
        const int Gates = 4000;
        var random = new Random(20260501);
        int changed = Enumerable.Range(0, Gates).Count(_ =>
        {
            double zero = 0.2 * Normal(random);
            return Boat(Drawn(1), Drawn(2)).Now(4, Taken.Settings).Changes.Count > 0;

            Reading Drawn(int day)
            {
                Reading exact = At(One, 4, day, Station.Abeam);
                double noise = Core.Measuring.CorrectedReadings.Of([exact], Taken.Settings).Pitches[0].Budget is { } b
                    ? Math.Sqrt((b.Resolution * b.Resolution) + (b.Repeatability * b.Repeatability) + (b.HeldAngle * b.HeldAngle) + (b.Level * b.Level))
                    : 0;
                return At(One, 4 + zero + (noise * Normal(random)), day, Station.Abeam);
            }
        });

        Assert.InRange(changed / (double)Gates, 0.04, 0.06);
    }

    private static string Sentence(GateVerdict gate, Reason reason) => Wording.English.Reasons.Of(gate.Gate, reason, Standard.Club);

    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(Math.Tau * random.NextDouble());

    private static BoatCheck Check(params Reading[] readings) => BoatRecord.Of(Boat(readings)).Check(CheckSettings.Default);

    private static BoatReadings Boat(params Reading[] readings) => new("Teal", BoatClass.Parse("2-"), readings);

    private static Reading At(GatePlace gate, double degrees, int day, Station station = Station.Catch) =>
        Taken.Gate(gate, station, degrees, Taken.Level with { Date = Day(day) });

    private static DateOnly Day(int day) => new(2026, 5, day);
}
