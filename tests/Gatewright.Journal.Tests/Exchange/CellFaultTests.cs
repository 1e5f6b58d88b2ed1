namespace Gatewright.Journal.Tests.Exchange;

/// <summary>What can be wrong with a cell by itself.</summary>
public sealed class CellFaultTests
{
    public static TheoryData<string, string, string> Faults => new()
    {
        {
            "no boat",
            Csv.Rows(",4-,1,port,gate,catch,4.5,,,,,,"),
            "round.csv, line 2, column boat: blank: expected the boat's name, in every row."
        },
        {
            "a name too long",
            Csv.Rows(new string('K', 201) + ",4-,1,port,gate,catch,4.5,,,,,,"),
            "round.csv, line 2, column boat: 'KKKKKKKKKKKKKKKKKKKKKKKKKKKKKKKKKKKKKKKK…' is 201 characters long: a name has at most 200."
        },
        {
            "a name with hidden characters",
            Csv.Rows("Kes\u202Etrel,4-,1,port,gate,catch,4.5,,,,,,"),
            "round.csv, line 2, column boat: 'Kes�trel' has characters in it that cannot be seen: type the name again."
        },
        {
            "no class",
            Csv.Rows("Kestrel,,1,port,gate,catch,4.5,,,,,,"),
            "round.csv, line 2, column class: blank: expected one of 1x 2x 2- 2+ 4x 4x+ 4- 4+ 8+ 8x+."
        },
        {
            "a class there is not",
            Csv.Rows("Kestrel,5-,1,port,gate,catch,4.5,,,,,,"),
            "round.csv, line 2, column class: '5-' is not a class of boat: expected one of 1x 2x 2- 2+ 4x 4x+ 4- 4+ 8+ 8x+."
        },
        {
            "a class without its sign",
            Csv.Rows("Kestrel,4,1,port,gate,catch,4.5,,,,,,"),
            "round.csv, line 2, column class: '4' is not a class of boat: expected one of 1x 2x 2- 2+ 4x 4x+ 4- 4+ 8+ 8x+."
        },
        {
            "no seat",
            Csv.Rows("Kestrel,4-,,port,gate,catch,4.5,,,,,,"),
            "round.csv, line 2, column seat: blank: expected the seat's number, 1 at the bow."
        },
        {
            "seat 0",
            Csv.Rows("Kestrel,4-,0,port,gate,catch,4.5,,,,,,"),
            "round.csv, line 2, column seat: '0' is not a seat of 4-: expected a whole number from 1 (bow) to 4."
        },
        {
            "a seat that the class has not",
            Csv.Rows("Kestrel,4-,5,port,gate,catch,4.5,,,,,,"),
            "round.csv, line 2, column seat: '5' is not a seat of 4-: expected a whole number from 1 (bow) to 4."
        },
        {
            "a seat that no class has",
            Csv.Rows("Kestrel,9+,9,port,gate,catch,4.5,,,,,,"),
            Csv.Messages(
                "round.csv, line 2, column class: '9+' is not a class of boat: expected one of 1x 2x 2- 2+ 4x 4x+ 4- 4+ 8+ 8x+.",
                "round.csv, line 2, column seat: '9' is not a seat of any boat: expected a whole number from 1 (bow) to 8.")
        },
        {
            "a seat by its name",
            Csv.Rows("Kestrel,4-,bow,port,gate,catch,4.5,,,,,,"),
            "round.csv, line 2, column seat: 'bow' is not a seat of 4-: expected a whole number from 1 (bow) to 4."
        },
        {
            "half a seat",
            Csv.Rows("Kestrel,4-,1.5,port,gate,catch,4.5,,,,,,"),
            "round.csv, line 2, column seat: '1.5' is not a seat of 4-: expected a whole number from 1 (bow) to 4."
        },
        {
            "a single scull's second seat",
            Csv.Rows("Kestrel,1x,2,port,gate,catch,4.5,,,,,,"),
            "round.csv, line 2, column seat: '2' is not a seat of 1x: expected 1."
        },
        {
            "no side",
            Csv.Rows("Kestrel,4-,1,,gate,catch,4.5,,,,,,"),
            "round.csv, line 2, column side: blank: expected port or starboard."
        },
        {
            "a side by the rower's word",
            Csv.Rows("Kestrel,4-,1,strokeside,gate,catch,4.5,,,,,,"),
            "round.csv, line 2, column side: 'strokeside' is not a side: expected port or starboard, as one sees them facing the bow."
        },
        {
            "a side by its letter",
            Csv.Rows("Kestrel,4-,1,S,gate,catch,4.5,,,,,,"),
            "round.csv, line 2, column side: 'S' is not a side: expected port or starboard, as one sees them facing the bow."
        },
        {
            "an item there is not",
            Csv.Rows("Kestrel,4-,1,port,pin,catch,4.5,,,,,,"),
            "round.csv, line 2, column item: 'pin' is not an item: expected gate, pin-aft, pin-out, gate-pitch, sleeve or level; or what was told: knock, refitted, crab-early, crab-at-finish, washes-out, down-to-one-side or mended; or a measure of the rig: spread, span, height, inboard, oar-length, overlap, stretcher-angle, heel-depth, work-through or track-position; blank is gate."
        },
        {
            "no point of the stroke",
            Csv.Rows("Kestrel,4-,1,port,gate,,4.5,,,,,,"),
            "round.csv, line 2, column at: blank: expected catch, abeam or finish, or degrees from abeam."
        },
        {
            "a point of the stroke there is not",
            Csv.Rows("Kestrel,4-,1,port,gate,middle,4.5,,,,,,"),
            "round.csv, line 2, column at: 'middle' is not a point of the stroke: expected catch, abeam or finish, or degrees from abeam, -90 to 90, plus towards the catch."
        },
        {
            "an angle beyond the stroke",
            Csv.Rows("Kestrel,4-,1,port,gate,91,4.5,,,,,,"),
            "round.csv, line 2, column at: '91' is not a point of the stroke: expected catch, abeam or finish, or degrees from abeam, -90 to 90, plus towards the catch."
        },
        {
            "a pin at the catch",
            Csv.Rows("Kestrel,4-,1,port,pin-aft,catch,4.5,,,,,,"),
            "round.csv, line 2, column at: 'catch' does not go with pin-aft, which is read in one place: leave it blank, or write abeam."
        },
        {
            "no reading",
            Csv.Rows("Kestrel,4-,1,port,gate,catch,,,,,,,"),
            "round.csv, line 2, column reading: blank: expected degrees, such as 4.5; leave the row out if it was not read."
        },
        {
            "a reading in words",
            Csv.Rows("Kestrel,4-,1,port,gate,catch,four,,,,,,"),
            "round.csv, line 2, column reading: 'four' is not a number: expected degrees, such as 4.5."
        },
        {
            "a reading with a mark for doubt",
            Csv.Rows("Kestrel,4-,1,port,gate,catch,4.5?,,,,,,"),
            "round.csv, line 2, column reading: '4.5?' is not a number: expected degrees, such as 4.5."
        },
        {
            "a reading without its point",
            Csv.Rows("Kestrel,4-,1,port,gate,catch,45,,,,,,"),
            "round.csv, line 2, column reading: '45' is not a possible reading: expected degrees from -30 to 30. If 4.5 was meant, write it with its decimal point."
        },
        {
            "a reading far too large",
            Csv.Rows("Kestrel,4-,1,port,gate,catch,-460,,,,,,"),
            "round.csv, line 2, column reading: '-460' is not a possible reading: expected degrees from -30 to 30."
        },
        {
            "a pin's reading without its point",
            Csv.Rows("Kestrel,4-,1,port,pin-out,,-46,,,,,,"),
            "round.csv, line 2, column reading: '-46' is not a possible reading: expected degrees from -45 to 45. If -4.6 was meant, write it with its decimal point."
        },
        {
            "a reading that is not a number",
            Csv.Rows("Kestrel,4-,1,port,gate,catch,NaN,,,,,,"),
            "round.csv, line 2, column reading: 'NaN' is not a number: expected degrees, such as 4.5."
        },
        {
            "a reading beyond all numbers",
            Csv.Rows("Kestrel,4-,1,port,gate,catch,1e999,,,,,,"),
            "round.csv, line 2, column reading: '1e999' is not a number: expected degrees, such as 4.5."
        },
        {
            "a reading made a date",
            Csv.Rows("Kestrel,4-,1,port,gate,catch,04.05.2026,,,,,,"),
            "round.csv, line 2, column reading: '04.05.2026' is a date that a spreadsheet made of a number: set the column to Text (or type the decimal sign the sheet expects) and type the number again, such as 4.5."
        },
        {
            "a reading made a month",
            Csv.Rows("Kestrel,4-,1,port,gate,catch,4. May,,,,,,"),
            "round.csv, line 2, column reading: '4. May' is a date that a spreadsheet made of a number: set the column to Text (or type the decimal sign the sheet expects) and type the number again, such as 4.5."
        },
        {
            "a reading made a month in German",
            Csv.Rows("Kestrel,4-,1,port,gate,catch,05. Mrz,,,,,,"),
            "round.csv, line 2, column reading: '05. Mrz' is a date that a spreadsheet made of a number: set the column to Text (or type the decimal sign the sheet expects) and type the number again, such as 4.5."
        },
        {
            "a reading made a date with slashes",
            Csv.Rows("Kestrel,4-,1,port,gate,catch,4/5/26,,,,,,"),
            "round.csv, line 2, column reading: '4/5/26' is a date that a spreadsheet made of a number: set the column to Text (or type the decimal sign the sheet expects) and type the number again, such as 4.5."
        },
        {
            "two readings in a cell",
            Csv.Rows("Kestrel,4-,1,port,gate,catch,4.5 5.0,,,,,,"),
            "round.csv, line 2, column reading: '4.5 5.0' is not a number: expected degrees, such as 4.5."
        },
        {
            "a lie there is not",
            Csv.Rows("Kestrel,4-,1,port,gate,catch,4.5,upside down,,,,,"),
            "round.csv, line 2, column lie: 'upside down' is not a lie: expected upright or inverted; blank is upright."
        },
        {
            "a day with slashes",
            Csv.Rows("Kestrel,4-,1,port,gate,catch,4.5,,,,,04/05/2026,"),
            "round.csv, line 2, column date: '04/05/2026' is not a date of this format: expected year-month-day, such as 2026-05-04, or day.month.year, such as 4.5.2026, from 1900 to 2199. With slashes one cannot tell the day from the month."
        },
        {
            "a day that does not exist",
            Csv.Rows("Kestrel,4-,1,port,gate,catch,4.5,,,,,2026-02-30,"),
            "round.csv, line 2, column date: '2026-02-30' is not a date of this format: expected year-month-day, such as 2026-05-04, or day.month.year, such as 4.5.2026, from 1900 to 2199."
        },
        {
            "a day with a short year",
            Csv.Rows("Kestrel,4-,1,port,gate,catch,4.5,,,,,4.5.26,"),
            "round.csv, line 2, column date: '4.5.26' is not a date of this format: expected year-month-day, such as 2026-05-04, or day.month.year, such as 4.5.2026, from 1900 to 2199."
        },
        {
            "a day of two kinds",
            Csv.Rows("Kestrel,4-,1,port,gate,catch,4.5,,,,,4-5.2026,"),
            "round.csv, line 2, column date: '4-5.2026' is not a date of this format: expected year-month-day, such as 2026-05-04, or day.month.year, such as 4.5.2026, from 1900 to 2199."
        },
        {
            "a day without its year",
            Csv.Rows("Kestrel,4-,1,port,gate,catch,4.5,,,,,4.5.,"),
            "round.csv, line 2, column date: '4.5.' is not a date of this format: expected year-month-day, such as 2026-05-04, or day.month.year, such as 4.5.2026, from 1900 to 2199."
        },
        {
            "a day in words",
            Csv.Rows("Kestrel,4-,1,port,gate,catch,4.5,,,,,4 May 2026,"),
            "round.csv, line 2, column date: '4 May 2026' is not a date of this format: expected year-month-day, such as 2026-05-04, or day.month.year, such as 4.5.2026, from 1900 to 2199."
        },
        {
            "everything wrong at once",
            Csv.Rows(",5,x,left,gates,start,high,flat,a,b,,today,"),
            Csv.Messages(
                "round.csv, line 2, column boat: blank: expected the boat's name, in every row.",
                "round.csv, line 2, column class: '5' is not a class of boat: expected one of 1x 2x 2- 2+ 4x 4x+ 4- 4+ 8+ 8x+.",
                "round.csv, line 2, column seat: 'x' is not a seat of any boat: expected a whole number from 1 (bow) to 8.",
                "round.csv, line 2, column side: 'left' is not a side: expected port or starboard, as one sees them facing the bow.",
                "round.csv, line 2, column item: 'gates' is not an item: expected gate, pin-aft, pin-out, gate-pitch, sleeve or level; or what was told: knock, refitted, crab-early, crab-at-finish, washes-out, down-to-one-side or mended; or a measure of the rig: spread, span, height, inboard, oar-length, overlap, stretcher-angle, heel-depth, work-through or track-position; blank is gate.",
                "round.csv, line 2, column reading: 'high' is not a number: expected degrees, such as 4.5.",
                "round.csv, line 2, column lie: 'flat' is not a lie: expected upright or inverted; blank is upright.",
                "round.csv, line 2, column bow_high: 'a' is not a level: expected degrees, such as 0.3, or bubble for a centred bubble; both columns blank is by eye.",
                "round.csv, line 2, column port_low: 'b' is not a level: expected degrees, such as 0.3, or bubble for a centred bubble; both columns blank is by eye.",
                "round.csv, line 2, column date: 'today' is not a date of this format: expected year-month-day, such as 2026-05-04, or day.month.year, such as 4.5.2026, from 1900 to 2199.")
        },
        {
            "too many cells",
            Csv.Rows("Kestrel,4-,1,port,gate,catch,4.5,,,,,,fine,and more,and more still"),
            "round.csv, line 2: 'and more still' stands beyond the last column: the row has 15 cells, the header 13. If a number was written with a decimal comma between commas, write it with a point, or save the sheet with semicolons."
        },
        {
            "a decimal comma between commas",
            Csv.Rows("Kestrel,4-,1,port,gate,catch,4,5,,,,,,"),
            "round.csv, line 2, column reading: '4' is followed by 5 in the next cell, as if 4,5 had been split at its decimal comma: write it with a point, or save the sheet with semicolons."
        },
        {
            "a decimal comma in front of the note",
            Csv.Lines(
                "boat,class,seat,side,at,reading,note",
                "Kestrel,4-,1,port,catch,4,5,"),
            "round.csv, line 2, column reading: '4' is followed by 5 in the next cell, as if 4,5 had been split at its decimal comma: write it with a point, or save the sheet with semicolons."
        },
    };

    [Fact]
    public void No_row_of_the_table_is_lost() => Assert.Equal(45, Faults.Count);

    [Theory]
    [MemberData(nameof(Faults))]
    public void Every_fault_of_a_cell_is_named_with_its_place_what_was_expected_and_the_remedy(
        string fault, string text, string expected)
    {
        Assert.NotEmpty(fault);
        Assert.Equal(expected, Csv.ErrorsOf(text));
    }
}
