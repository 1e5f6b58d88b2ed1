using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using static Gatewright.Core.Tests.Diagnosing.Boats;

namespace Gatewright.Core.Tests.Diagnosing;

/// <summary>That what people tell counts as evidence, in the direction it should.</summary>
public sealed class ReportTests
{
    /// <summary>Seat 4 is lowish abeam: healthy scatter or a fault, and abeam does not say which.</summary>
    private static readonly BoatReadings Doubtful = Eight([Station.Abeam], (seat, _) => seat == 4 ? 2.5 : 4);

    private static readonly GatePlace Seat4 = Gate(4);

    /// <summary>What moves a reading taken abeam.</summary>
    private static readonly Cause[] MovesAbeam = [Cause.GatePitch, Cause.PinAft, Cause.Rigger];

    [Fact]
    public void A_knock_at_a_seat_raises_its_rigger_and_pin_and_no_others()
    {
        Diagnosis before = Diagnose(Doubtful);
        Diagnosis after = Diagnose(Doubtful, Told(new Report(ReportKind.Knock, Seat4)));
        Assert.True(after.Of(Cause.Rigger, Seat4) > 2 * before.Of(Cause.Rigger, Seat4));
        Assert.True(after.Of(Cause.PinAft, Seat4) > before.Of(Cause.PinAft, Seat4));
        Assert.True(after.Of(Cause.PinOut, Seat4) > before.Of(Cause.PinOut, Seat4));
        Assert.True(after.Of(Cause.GatePitch, Seat4) < before.Of(Cause.GatePitch, Seat4));
        Assert.True(after.Of(Cause.Rigger, Gate(6)) < 2 * before.Of(Cause.Rigger, Gate(6)));
    }

    /// <summary>Given all else alike, a report multiplies a story's odds by what it makes of the report: 0.5 against 0.02.</summary>
    [Fact]
    public void A_knock_multiplies_the_odds_of_a_rigger_against_none_by_twenty_five()
    {
        double before = OddsAlone(Diagnose(Doubtful), Cause.Rigger);
        double after = OddsAlone(Diagnose(Doubtful, Told(new Report(ReportKind.Knock, Seat4))), Cause.Rigger);
        Assert.Equal(25, after / before, 1e-6);
    }

    [Fact]
    public void A_crab_early_in_the_drive_raises_what_makes_the_catch_low()
    {
        Diagnosis before = Diagnose(Doubtful);
        Diagnosis after = Diagnose(Doubtful, Told(new Report(ReportKind.CrabEarly, Seat4)));
        Assert.All(MovesAbeam, cause => Assert.True(OddsAlone(after, cause) > OddsAlone(before, cause), cause.Code()));
        Assert.True(LowAtCatch(after) > LowAtCatch(before));

        static double LowAtCatch(Diagnosis diagnosis) => 1 - diagnosis.At(Seat4, OarAngle.FromDegrees(55)).Above(2);
    }

    [Fact]
    public void A_crab_early_in_the_drive_lowers_what_makes_the_catch_high()
    {
        BoatReadings high = Eight([Station.Catch], (seat, _) => seat == 4 ? 5.5 : 4);
        Diagnosis before = Diagnose(high);
        Diagnosis after = Diagnose(high, Told(new Report(ReportKind.CrabEarly, Seat4)));
        Assert.All(
            [Cause.GatePitch, Cause.PinAft, Cause.PinOut, Cause.Rigger],
            cause => Assert.True(OddsAlone(after, cause) < OddsAlone(before, cause), cause.Code()));
    }

    [Fact]
    public void A_crab_at_the_finish_looks_at_the_finish()
    {
        // Low at the finish and high at the catch: a lean out.
        BoatReadings boat = Eight([Station.Catch], (seat, _) => seat == 4 ? 5.5 : 4);
        double before = Diagnose(boat).Of(Cause.PinOut, Seat4);
        Assert.True(Diagnose(boat, Told(new Report(ReportKind.CrabAtFinish, Seat4))).Of(Cause.PinOut, Seat4) > before);
        Assert.True(Diagnose(boat, Told(new Report(ReportKind.CrabEarly, Seat4))).Of(Cause.PinOut, Seat4) < before);
    }

    [Fact]
    public void A_blade_that_washes_out_raises_what_makes_the_pitch_high()
    {
        BoatReadings high = Eight([Station.Abeam], (seat, _) => seat == 4 ? 6 : 4);
        BoatContext told = Told(new Report(ReportKind.WashesOut, Seat4));
        Assert.All(MovesAbeam, cause =>
        {
            Assert.True(OddsAlone(Diagnose(high, told), cause) > OddsAlone(Diagnose(high), cause), cause.Code());
            Assert.True(OddsAlone(Diagnose(Doubtful, told), cause) < OddsAlone(Diagnose(Doubtful), cause), cause.Code());
        });
    }

    [Fact]
    public void A_boat_down_to_port_raises_stories_with_less_pitch_on_port()
    {
        // Seat 4 is on port.
        double before = Diagnose(Doubtful).At(Seat4).Wrong;
        Assert.True(Diagnose(Doubtful, Down(Side.Port)).At(Seat4).Wrong > before);
        Assert.True(Diagnose(Doubtful, Down(Side.Starboard)).At(Seat4).Wrong < before);
    }

    [Fact]
    public void A_crab_where_the_gate_reads_right_raises_the_oars_sleeve()
    {
        Diagnosis diagnosis = Diagnose(Eight(Stations.All, (_, _) => 4), Told(new Report(ReportKind.CrabEarly, Seat4)));
        Assert.True(diagnosis.Of(Cause.Sleeve, Seat4) > 2 * 0.015);
        Assert.Equal(Cause.Sleeve, diagnosis.At(Seat4).Causes[1].Cause);
        Assert.Equal(0, diagnosis.Of(Cause.Sleeve, Gate(6)));
    }

    [Fact]
    public void A_sleeve_that_reads_low_is_found()
    {
        BoatReadings boat = Eight(Stations.All, (_, _) => 4);
        Diagnosis diagnosis = Diagnose(boat with { Readings = [.. boat.Readings, Read(ReadItem.Sleeve, Seat4, -2.5)] });
        Assert.True(diagnosis.Of(Cause.Sleeve, Seat4) > 0.9);
        Assert.True(diagnosis.Of(Cause.GatePitch, Seat4) < 0.05);
    }

    [Fact]
    public void Of_what_was_not_read_nothing_can_be_said_so_a_report_of_it_changes_nothing()
    {
        BoatReadings four = Boat("8+", Read(Gate(1), Station.Catch, 3), Read(Gate(3), Station.Catch, 4));
        Diagnosis plain = Diagnose(four);
        Report[] reports = [new(ReportKind.Knock, Gate(7)), new(ReportKind.Refitted, Gate(7)), new(ReportKind.DownToOneSide, null, Side.Port)];
        Assert.All(reports, report => AssertSame(plain, Diagnose(four, Told(report))));
    }

    /// <summary>A report as likely whatever is wrong is no evidence.</summary>
    [Fact]
    public void Reports_change_nothing_when_each_is_as_likely_whatever_is_wrong()
    {
        var flat = new ReportLikelihoods
        {
            KnockBase = 0.3,
            KnockIfRigger = 0.3,
            KnockIfPin = 0.3,
            RefittedBase = 0.2,
            RefittedIfRigger = 0.2,
            RefittedIfPin = 0.2,
            CrabEarly = new(2, 1, 0.1, 0.1),
            CrabAtFinish = new(0.5, 1, 0.1, 0.1),
            WashesOut = new(6.5, 1, 0.1, 0.1),
            DownToOneSide = new(1, 0.5, 0.4, 0.4),
        };
        DiagnosingSettings settings = DiagnosingSettings.Default with
        {
            Reports = flat,
            Chances = PriorChances.Default with { Sleeve = 0, WrongSeat = 0 },
        };
        BoatContext told = Told(
            [.. ReportKinds.All.Select(kind => new Report(kind, kind == ReportKind.DownToOneSide ? null : Seat4, Side.Port))]);
        AssertSame(Diagnose(Doubtful), Diagnose(Doubtful, told, settings));
    }

    [Fact]
    public void Reports_in_another_order_say_the_same()
    {
        Report[] reports =
            [new(ReportKind.Knock, Seat4), new(ReportKind.CrabEarly, Gate(6)), new(ReportKind.DownToOneSide, null, Side.Port)];
        AssertSame(Diagnose(Doubtful, Told(reports)), Diagnose(Doubtful, Told([.. reports.Reverse()])));
    }

    /// <summary>How likely one cause at seat 4 alone is, against nothing being wrong.</summary>
    private static double OddsAlone(Diagnosis diagnosis, Cause cause) =>
        diagnosis.Stories.Single(s => s.Parts.Count == 1 && s.Parts[0] == new CausePart(cause, Seat4)).Probability
        / diagnosis.Stories.Single(s => s.IsNone).Probability;

    private static BoatContext Told(params Report[] reports) => new() { Reports = reports };

    private static BoatContext Down(Side side) => Told(new Report(ReportKind.DownToOneSide, null, side));

    private static void AssertSame(Diagnosis one, Diagnosis other)
    {
        Assert.All(one.Gates, gate => Assert.All(gate.Causes, cause => Assert.Equal(
            cause.Probability, other.At(gate.Gate).Causes.Single(c => c.Cause == cause.Cause).Probability, 1e-12)));
    }
}
