using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Gatewright.Core;
using Gatewright.Core.Judging;
using Gatewright.Core.Rig;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Exchange.Sheets;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Rigging;
using Gatewright.Journal.Tests.Exchange.Recording;
using Gatewright.Journal.Tests.Replay;

namespace Gatewright.Journal.Tests.Exchange;

/// <summary>Rows that measure the rig.</summary>
public sealed class MeasureTests
{
    private const string Header = "boat,class,seat,side,item,at,reading,unit,lie,bow_high,port_low,gauge,date,note,rack";

    public static TheoryData<string, string> Faults => new()
    {
        { "Teal,2x,1,,span,,,,,,,,,,", "round.csv, line 2, column reading: blank: expected a length, such as 86.5; leave the row out if it was not measured." },
        { "Teal,2x,1,,span,,wide,,,,,,,,", "round.csv, line 2, column reading: 'wide' is not a number: expected a length, such as 86.5, its unit in the column unit." },
        { "Teal,2x,1,,span,,62.5,,,,,,,,", "round.csv, line 2, column reading: '62.5' is not a possible span: expected 120 to 190 cm. If it is inches, write in into the column unit." },
        { "Teal,2x,1,,span,,1595,,,,,,,,", "round.csv, line 2, column reading: '1595' is not a possible span: expected 120 to 190 cm. If it is millimetres, write mm into the column unit." },
        { "Teal,2x,1,,span,,1.5,cm,,,,,,,", "round.csv, line 2, column reading: '1.5' is not a possible span: expected 120 to 190 cm." },
        { "Teal,2x,1,,span,,159,deg,,,,,,,", "round.csv, line 2, column unit: 'deg' is not a unit of span: expected cm, mm or in; blank is cm." },
        { "Teal,2x,1,,stretcher-angle,,42,cm,,,,,,,", "round.csv, line 2, column unit: 'cm' is not a unit of stretcher-angle: expected deg; blank is deg." },
        { "Teal,2x,1,,height,,17,,,,,,,,", "round.csv, line 2, column side: blank: expected port or starboard." },
        { "Teal,2x,1,,spread,,86,,,,,,,,", "round.csv, line 2, column item: 'spread' is no measure of a 2x: expected span." },
        { "Teal,8+,1,,span,,160,,,,,,,,", "round.csv, line 2, column item: 'span' is no measure of a 8+: expected spread." },
        { "Teal,2x,1,,span,catch,159,,,,,,,,", "round.csv, line 2, column at: 'catch' does not go with span, which is measured with no gauge at a gate: leave it blank. If a decimal comma was split, write the number with a point." },
        { "Teal,2x,1,port,gate,catch,4,cm,,,,,,,", "round.csv, line 2, column unit: 'cm' does not go with a reading of the gauge, which is in degrees: leave it blank, or name the measure of the rig in the column item." },
        {
            "Teal,2x,9,,span,,15,hands,,,,,never,,A2",
            Csv.Messages(
                "round.csv, line 2, column seat: '9' is not a seat of 2x: expected a whole number from 1 (bow) to 2.",
                "round.csv, line 2, column unit: 'hands' is not a unit of span: expected cm, mm or in; blank is cm.",
                "round.csv, line 2, column date: 'never' is not a date of this format: expected year-month-day, such as 2026-05-04, or day.month.year, such as 4.5.2026, from 1900 to 2199.",
                "round.csv, line 2, column rack: 'A2' does not go with span, which is measured with no gauge at a gate: leave it blank. If a decimal comma was split, write the number with a point.")
        },
    };

    [Theory]
    [MemberData(nameof(Faults))]
    public void Everything_wrong_with_a_row_is_said(string row, string messages) =>
        Assert.Equal(messages, Csv.ErrorsOf(Csv.Lines(Header, row)));

    [Fact]
    public void A_decimal_comma_that_was_split_is_noticed() => Assert.StartsWith(
        "round.csv, line 2, column reading: '159' is followed by 5 in the next cell",
        Csv.ErrorsOf(Csv.Lines("boat,class,seat,side,item,at,reading,unit", "Teal,2x,1,,span,,159,5,")),
        StringComparison.Ordinal);

    [Fact]
    public void Measures_stand_beside_readings_and_are_of_the_same_boat()
    {
        ReadingsInput input = Csv.Read(Csv.Lines(
            Header,
            "Teal,2x,1,port,gate,catch,4,,,,,,2026-05-04,,",
            "teal,2x,1,port,Oar Length,,113,inches,,,,,2026-05-04,new oars,",
            "Teal,2x,1,,stretcher angle,,42,,,,,,4.5.2026,,"));

        Csv.Boats(input);
        BoatMeasures boat = Assert.Single(input.Measures);
        Assert.Equal("Teal", boat.Boat);
        Assert.Equal(
            [new(RigMeasure.OarLength, new(1, Side.Port), 287.02, new(2026, 5, 4)), new(RigMeasure.StretcherAngle, new(1, null), 42, new(2026, 5, 4))],
            boat.Readings.Select(r => r with { Value = Math.Round(r.Value, 9) }));
        Assert.Equal((113m, RigUnit.Inches), (boat.Measures[0].Value, boat.Measures[0].Unit));
        Assert.Equal("seat 1 port: new oars", input.Notes.Select(n => $"{n.Gate}: {n.Text}").Single());
    }

    [Fact]
    public void A_boat_may_be_there_for_its_rig_alone()
    {
        ReadingsInput input = Csv.Read(Csv.Lines(Header, "Teal,2x,1,,span,,159,,,,,,,,"));

        Assert.Empty(Csv.Boats(input));
        Assert.Empty(input.OnlyToldOf);
        Assert.Single(input.Measures);
    }

    [Fact]
    public void A_sweep_seat_has_one_side() => Assert.StartsWith(
        "round.csv, line 3, column side: 'port' disagrees with starboard in line 2",
        Csv.ErrorsOf(Csv.Lines(Header, "Teal,2-,1,starboard,height,,17,,,,,,,,", "Teal,2-,1,port,inboard,,116,,,,,,,,")),
        StringComparison.Ordinal);

    /// <summary>File to club to table to file: the same measures, as they were written, and the same verdict.</summary>
    [Fact]
    public void What_is_recorded_is_written_and_reads_back()
    {
        ReadingsInput file = Csv.Read(Csv.Lines(
            Header,
            "Teal,2x,1,,span,,159.5,,,,,,2026-05-04,,",
            "Teal,2x,1,,span,,159.3,cm,,,,,2026-05-04,,",
            "Teal,2x,1,port,inboard,,34.6,in,,,,,2026-05-04,,",
            "Teal,2x,1,starboard,inboard,,34.6,in,,,,,2026-05-04,,",
            "Teal,2x,1,port,height,,12,,,,,,2026-05-04,,",
            "Heron,4-,3,,stretcher-angle,,42,deg,,,,,,,"));
        Club club = ReadingsRecordingTests.Record(Club.Empty(Journals.Club), file);
        ReadingsInput back = Csv.Read(Written(club));

        Assert.Empty(back.Errors);
        Assert.Equal(["Heron", "Teal"], back.Measures.Select(m => m.Boat));
        foreach (BoatMeasures expected in file.Measures)
        {
            BoatMeasures actual = back.Measures.Single(m => m.Boat == expected.Boat);
            Assert.Equal(expected.Class, actual.Class);
            Assert.Equal(expected.Measures.Select(Text).Order(), actual.Measures.Select(Text).Order());
            RigTargets targets = RigTargets.Starting(expected.Class, null);
            Assert.Equal(
                RigJudge.Of(expected.Readings, targets).Figures.Select(f => (f.Figure.Measure, f.Figure.Place, f.Verdict)),
                BoatRig.Of(club, expected.Boat.ToLowerInvariant()).Verdict!.Figures.Select(f => (f.Figure.Measure, f.Figure.Place, f.Verdict)));
        }

        Assert.Equal(Verdict.Adjust, BoatRig.Of(club, "teal").Verdict!.Verdict);
        Assert.Empty(ReadingsRecordingTests.StillToRecord(file, club));
    }

    /// <summary>Whatever was measured, in whichever unit: recorded, written and read again it is the same, to the last digit.</summary>
    [Property(MaxTest = 100)]
    public Property Measures_keep_their_figures_through_club_and_table() => Prop.ForAll(Rows(), rows =>
    {
        ReadingsInput file = Csv.Read(Csv.Lines([Header, .. rows]));
        Assert.Empty(file.Errors);
        ReadingsInput back = Csv.Read(Written(ReadingsRecordingTests.Record(Club.Empty(Journals.Club), file)));

        // Of a place the journal takes what agrees with its last reading: here each place has one.
        Assert.Equal(
            file.Measures.SelectMany(b => b.Measures).Select(Text).Order(),
            back.Measures.SelectMany(b => b.Measures).Select(Text).Order());
    });

    private static Arbitrary<string[]> Rows() => (
        from boatClass in Gen.Elements<BoatClass>([.. BoatClass.All])
        from measures in Gen.Elements<RigMeasure>([.. RigMeasures.All.Where(m => m.IsOf(boatClass.Rowing))]).ArrayOf(6)
        from rows in Gen.CollectToArray(measures.Distinct(), measure => Row(boatClass, measure))
        select rows).ToArbitrary();

    private static Gen<string> Row(BoatClass boatClass, RigMeasure measure) =>
        from seat in Gen.Choose(1, boatClass.Seats)
        from unit in Gen.Elements<RigUnit>([.. RigUnits.All.Where(u => measure.Takes(u))])
        from hundredths in Gen.Choose((int)(100 * unit.FromOwn(measure.Plausible().Least)) + 1, (int)(100 * unit.FromOwn(measure.Plausible().Most)) - 1)
        select FormattableString.Invariant($"Teal,{boatClass},{seat},{(measure.HasSide() ? "port" : "")},{measure.Word()},,{hundredths / 100m},{unit.Word()},,,,,2026-05-04,,");

    private static string Text(WrittenMeasure measure) =>
        FormattableString.Invariant($"{measure.Reading.Measure} {measure.Reading.Place} {measure.Value} {measure.Unit}");

    private static string Written(Club club)
    {
        using var text = new StringWriter();
        ClubCsv.Tables.Single(t => t.File == "readings.csv").Write(club, text);
        return text.ToString();
    }
}
