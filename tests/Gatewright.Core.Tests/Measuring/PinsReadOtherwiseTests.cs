using FsCheck.Fluent;
using FsCheck.Xunit;
using Gatewright.Core.Advising;
using Gatewright.Core.Checking;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Core.Tests.Support;
using Gatewright.Words;

namespace Gatewright.Core.Tests.Measuring;

/// <summary>A pin that leans otherwise than it did is a change as a face is that reads otherwise.</summary>
public class PinsReadOtherwiseTests
{
    private static readonly GatePlace One = Taken.Seat(1);
    private static readonly GatePlace Two = Taken.Seat(2, Side.Starboard);

    /// <summary>
    /// Two readings of one pin with the default gauge, each on a hull with its bubble centred: the gauge's zero falls out, and
    /// twice (0.5²/12 + 0.2² + 0.2²) = 0.20167 is left, the root of which is 0.449. 1.959964 of it is 0.880°. (JCGM 100, 5.2.2.)
    /// </summary>
    private const double Apart = 0.880;

    public static TheoryData<ReadItem, double, string> Ways => new()
    {
        { ReadItem.PinAft, 1, "The pin of seat 1 port leans 1.0° ± 0.4 further to the stern than up to 2026-05-01: more than the 0.9° by which readings of one pin may differ" },
        { ReadItem.PinAft, -1, "The pin of seat 1 port leans 1.0° ± 0.4 further to the bow than up to 2026-05-01" },
        { ReadItem.PinOut, 1, "The pin of seat 1 port leans 1.0° ± 0.4 further away from the hull than up to 2026-05-01" },
        { ReadItem.PinOut, -1, "The pin of seat 1 port leans 1.0° ± 0.4 further towards the hull than up to 2026-05-01" },
        { ReadItem.GatePitch, 1, "The face of seat 1 port reads 1.0° ± 0.3 more against its pin than up to 2026-05-01" },
        { ReadItem.GatePitch, -1, "The face of seat 1 port reads 1.0° ± 0.3 less against its pin than up to 2026-05-01" },
    };

    [Theory]
    [MemberData(nameof(Ways))]
    public void A_pin_read_otherwise_once_leaves_its_gate_unsure_and_says_which_way(ReadItem item, double apart, string sentence)
    {
        BoatCheck check = Check(Pin(item, One, 0.5, 1), Pin(item, One, 0.5 + apart, 9), Face(One, 4, 9), Face(Two, 4, 9));

        Reason changed = Assert.Single(check.Verdict.Gates[0].Reasons, r => r.Kind == ReasonKind.Changed);
        Assert.Equal((item, Verdict.Unsure, Day(1)), (changed.Item, changed.Verdict, changed.Before));
        Assert.Equal(apart, changed.Value.Value.Degrees, 1e-9);
        Assert.StartsWith(sentence, Wording.English.Reasons.Of(One, changed, Standard.Club), StringComparison.Ordinal);
        Assert.Equal(Verdict.Good, check.Verdict.Gates[1].Verdict);
        Assert.DoesNotContain(check.Readings.Readings, r => r.Lie.Date == Day(1));
    }

    [Theory]
    [InlineData(Apart - 0.005, 0)]
    [InlineData(Apart + 0.005, 1)]
    public void The_limit_is_that_of_two_readings_with_a_level_each(double apart, int changes) =>
        Assert.Equal(changes, Now(Pin(ReadItem.PinOut, Two, 0, 1), Pin(ReadItem.PinOut, Two, apart, 9)).Changes.Count);

    [Property]
    public FsCheck.Property Within_what_two_readings_may_differ_by_none_is_seen(int lean, int share, bool isOut) => Prop.ToProperty(() =>
    {
        double then = lean % 6 / 2.0;
        double now = then + ((share % 100) / 100.0 * (Apart - 0.001));
        ReadItem item = isOut ? ReadItem.PinOut : ReadItem.PinAft;

        ReadingsNow seen = Now(Pin(item, One, then, 1), Face(One, 4, 1), Pin(item, One, now, 9));

        Assert.Empty(seen.Changes);
        Assert.Equal(3, seen.Readings.Readings.Count);
    });

    [Theory]
    [InlineData(ReadItem.PinAft, Side.Port)]
    [InlineData(ReadItem.PinOut, Side.Port)]
    [InlineData(ReadItem.PinOut, Side.Starboard)]
    public void A_hull_that_lay_otherwise_is_no_pin_that_leans_otherwise(ReadItem item, Side side)
    {
        // A degree of bow high, and of port low, shows upright as a degree of lean: aft, and out on port, in on starboard.
        GatePlace gate = Taken.Seat(1, side);
        double shown = item == ReadItem.PinAft || side == Side.Port ? 1.5 : -0.5;
        BoatLie tilted = Taken.Read(Lie.Upright, 1, 1);
        BoatLie turned = Taken.Read(Lie.Inverted, 1, 1);

        Assert.Empty(Now(Pin(item, gate, 0.5, 1), Pin(item, gate, shown, 9, tilted)).Changes);
        Assert.Empty(Now(Pin(item, gate, 0.5, 1), Pin(item, gate, 1 - shown, 9, turned)).Changes);
        Assert.Single(Now(Pin(item, gate, 0.5, 1), Pin(item, gate, 0.5, 9, tilted)).Changes);
    }

    [Fact]
    public void A_gauge_whose_zero_is_known_is_taken_out_of_a_lean_and_never_out_of_a_face_against_its_pin()
    {
        Gauge off = Taken.GaugeOf("the other", 0.5, 0.2, 1.5, 0.05);

        Assert.Empty(Now(Pin(ReadItem.PinAft, One, 0, 1), Pin(ReadItem.PinAft, One, 1.5, 9) with { Gauge = off }).Changes);
        Assert.Empty(Now(Pin(ReadItem.GatePitch, One, 4, 1), Pin(ReadItem.GatePitch, One, 4, 9) with { Gauge = off }).Changes);
        Assert.Single(Now(Pin(ReadItem.GatePitch, One, 4, 1), Pin(ReadItem.GatePitch, One, 5.5, 9) with { Gauge = off }).Changes);
    }

    [Fact]
    public void A_pin_is_held_against_its_own_readings_and_no_others() =>
        Assert.Empty(Now(
            Face(One, 4, 1, Station.Abeam), Pin(ReadItem.PinOut, One, 2, 1), Pin(ReadItem.GatePitch, One, 4, 1), Pin(ReadItem.PinAft, One, 0, 9), Pin(ReadItem.PinAft, Two, 2, 1)).Changes);

    [Fact]
    public void Read_a_second_time_it_is_told_and_doubted_no_longer()
    {
        BoatCheck check = Check(Pin(ReadItem.PinAft, One, 0, 1), Pin(ReadItem.PinAft, One, 2, 9), Pin(ReadItem.PinAft, One, 1.5, 9), Face(One, 4, 9));

        Assert.DoesNotContain(check.Verdict.Gates[0].Reasons, r => r.Kind == ReasonKind.Changed);
        Assert.StartsWith("the pin of seat 1 port leans otherwise than up to 2026-05-01", Assert.Single(Wording.English.Boats.Notices(check)), StringComparison.Ordinal);
        Assert.StartsWith("der Dollenstift von Platz 1 Backbord ist anders geneigt als bis 01.05.2026", Assert.Single(Wording.German.Boats.Notices(check)), StringComparison.Ordinal);
    }

    [Fact]
    public void Why_is_asked_of_what_was_read_since_the_pin_leaned_otherwise()
    {
        Reading[] since = [Face(One, 5.5, 9), Pin(ReadItem.PinAft, One, 2, 9)];

        BoatCheck check = Check([Pin(ReadItem.PinAft, One, 0, 1), Face(One, 5, 1), .. since]);

        Assert.Equal(Check(since).Diagnosis.Gates[0].LeanAft.Value.Degrees, check.Diagnosis.Gates[0].LeanAft.Value.Degrees, 1e-9);
        Assert.All(check.Readings.Readings, r => Assert.Equal(Day(9), r.Lie.Date));
    }

    [Fact]
    public void A_pin_read_otherwise_brings_out_no_gate_that_was_under_its_floor_before_its_face_is_read()
    {
        Reading[] once = [Face(One, 1, 1), Pin(ReadItem.PinAft, One, -2, 1), Pin(ReadItem.PinAft, One, 0, 9)];
        BoatCheck unsure = Check(once);
        BoatCheck sure = Check([.. once, Pin(ReadItem.PinAft, One, 0, 9)]);
        BoatCheck read = Check([.. once, Pin(ReadItem.PinAft, One, 0, 9), Face(One, 4, 9), Face(One, 4, 9)]);

        Assert.True(unsure.Verdict.StaysAshore && sure.Verdict.StaysAshore);
        Reason floor = Assert.Single(sure.Verdict.Gates[0].Reasons, r => r.Kind == ReasonKind.Floor && r.Read);
        Assert.StartsWith("Up to 2026-05-01, seat 1 port read 1.0° ± 0.4 at the catch", Wording.English.Reasons.Of(One, floor, Standard.Club), StringComparison.Ordinal);
        Assert.StartsWith("Bis 01.05.2026 zeigte Platz 1 Backbord in der Auslage 1,0° ± 0,4;", Wording.German.Reasons.Of(One, floor, Standard.Club), StringComparison.Ordinal);
        Assert.DoesNotContain(read.Verdict.Gates[0].Reasons, r => r.Read);
    }

    [Fact]
    public void A_face_read_otherwise_at_one_station_keeps_the_floor_of_another_in_doubt()
    {
        BoatCheck once = Check(Face(One, 7, 1), Face(One, -1, 1, Station.Finish), Face(One, 4, 9));

        Assert.Contains(once.Verdict.Gates[0].Reasons, r => r is { Kind: ReasonKind.Floor, Station: Station.Finish, IsOneReading: true, Before.Day: 1 });
        Assert.True(once.Verdict.StaysAshore);
    }

    [Fact]
    public void What_is_to_be_read_next_is_the_pin_that_contradicts_itself()
    {
        Reading[] faces = [.. Stations.All.SelectMany(s => new[] { Face(One, 4, 9, s), Face(Two, 4, 9, s) })];
        BoatCheck check = Check([.. faces, Pin(ReadItem.PinOut, One, -0.8, 1), Pin(ReadItem.PinOut, One, 0.3, 9)]);
        Assert.Contains(check.Verdict.Gates[0].Reasons, r => r.Kind == ReasonKind.Changed);

        ReadingChoice next = Advisor.For(check, AdvisingSettings.Default).Next!.Choice;

        Assert.Equal((One, NextItem.PinOut), (next.Gate, next.Item));
    }

    [Fact]
    public void A_face_not_read_since_it_was_under_its_floor_is_to_be_read_next()
    {
        BoatCheck check = Check(Face(One, 1, 1), Pin(ReadItem.PinAft, One, -2, 1), Pin(ReadItem.PinAft, One, 0, 9), Pin(ReadItem.PinAft, One, 0, 9), Face(Two, 4, 9));

        Advice advice = Advisor.For(check, AdvisingSettings.Default);

        Assert.False(advice.VerdictsSettled);
        Assert.Equal((One, NextItem.Gate), (advice.Next!.Choice.Gate, advice.Next.Choice.Item));
    }

    /// <summary>What is sure of the face says nothing of whether the pin has moved under it.</summary>
    [Fact]
    public void A_gate_that_is_sure_to_be_adjusted_is_not_settled_while_its_pin_contradicts_itself()
    {
        Reading[] faces = [.. Enumerable.Repeat(Stations.All, 3).SelectMany(all => all).SelectMany(s => new[] { Face(One, 9, 9, s), Face(Two, 4, 9, s) })];
        Reading[] pin = [Pin(ReadItem.PinOut, One, 0, 1), Pin(ReadItem.PinOut, One, 3, 9)];
        BoatCheck otherwise = Check([.. faces, .. pin]);

        Assert.Equal(Verdict.Adjust, otherwise.Verdict.Gates[0].Verdict);
        Assert.False(Advisor.For(otherwise, AdvisingSettings.Default).VerdictsSettled);
        Assert.True(Advisor.For(Check([.. faces, pin[1]]), AdvisingSettings.Default).VerdictsSettled);
    }

    private static ReadingsNow Now(params Reading[] readings) => Boat(readings).Now(4, Taken.Settings);

    private static BoatCheck Check(params Reading[] readings) => BoatRecord.Of(Boat(readings)).Check(CheckSettings.Default);

    private static BoatReadings Boat(params Reading[] readings) => new("Teal", BoatClass.Parse("2-"), readings);

    private static Reading Pin(ReadItem item, GatePlace gate, double degrees, int day, BoatLie? lie = null) =>
        Taken.Item(item, gate, degrees) with { Lie = (lie ?? Taken.Level) with { Date = Day(day) } };

    private static Reading Face(GatePlace gate, double degrees, int day, Station station = Station.Catch) =>
        Taken.Gate(gate, station, degrees, Taken.Level with { Date = Day(day) });

    private static DateOnly Day(int day) => new(2026, 5, day);
}
