namespace Gatewright.Journal.Tests.Exchange;

/// <summary>What can be wrong with racks and their levels.</summary>
public sealed class RackFaultTests
{
    public static TheoryData<string, string, string> Faults => new()
    {
        {
            "a rack of which nothing is known",
            Csv.RackRows("Kestrel,4-,1,port,gate,catch,4.5,,,,,,,A2,"),
            "round.csv, line 2, column rack: 'A2' has no level in any row: add a row with item level, this rack, its bow_high and port_low; or write how the boat itself lay; or leave rack blank for by eye."
        },
        {
            "a boat as a rack lies that is not named",
            Csv.RackRows("Kestrel,4-,1,port,gate,catch,4.5,,rack,,,,,,"),
            "round.csv, line 2, column bow_high: 'rack' says that the boat lies as its rack does: name it in the column rack."
        },
        {
            "a rack's level without the rack",
            Csv.RackRows(
                ",,,,level,,,,0.3,0.1,,,,,",
                "Kestrel,4-,1,port,gate,catch,4.5,,,,,,,,"),
            "round.csv, line 2, column rack: blank: expected the name of the rack whose level this row states."
        },
        {
            "a rack's level one way",
            Csv.RackRows(
                ",,,,level,,,,0.3,,,,,A2,",
                "Kestrel,4-,1,port,gate,catch,4.5,,,,,,,A2,"),
            "round.csv, line 2, column port_low: blank: expected degrees; the level of a rack is two numbers."
        },
        {
            "a rack's level by bubble",
            Csv.RackRows(
                ",,,,level,,,,bubble,bubble,,,,A2,",
                "Kestrel,4-,1,port,gate,catch,4.5,,,,,,,A2,"),
            Csv.Messages(
                "round.csv, line 2, column bow_high: 'bubble' is not how a rack lies: expected degrees, such as 0.3, in both bow_high and port_low.",
                "round.csv, line 2, column port_low: 'bubble' is not how a rack lies: expected degrees, such as 0.3, in both bow_high and port_low.")
        },
        {
            "a rack's level that is no number",
            Csv.RackRows(
                ",,,,level,,,,flat,0.1,,,,A2,",
                "Kestrel,4-,1,port,gate,catch,4.5,,,,,,,,"),
            "round.csv, line 2, column bow_high: 'flat' is not how a rack lies: expected degrees, such as 0.3, in both bow_high and port_low."
        },
        {
            "a rack's level on a boat",
            Csv.RackRows(
                "Kestrel,4-,1,port,level,abeam,0.3,,0.3,0.1,,,,A2,",
                "Kestrel,4-,1,port,gate,catch,4.5,,,,,,,,"),
            "round.csv, line 2, column boat: 'Kestrel' does not go with item level: such a row states how a rack lies, with rack, bow_high and port_low. Leave the cells of a reading blank, or correct the item."
        },
        {
            "a bed there is not",
            Csv.RackRows(
                ",,,,level,,,,0.3,0.1,,,,A2,carpet",
                "Kestrel,4-,1,port,gate,catch,4.5,,,,,,,,"),
            "round.csv, line 2, column bed: 'carpet' is not a bed: expected firm or soft; blank is firm."
        },
        {
            "the bed of a boat",
            Csv.RackRows("Kestrel,4-,1,port,gate,catch,4.5,,,,,,,,soft"),
            "round.csv, line 2, column bed: 'soft' does not go with a reading: write it in the row with item level that states how the rack lies."
        },
        {
            "a rack with two levels",
            Csv.RackRows(
                ",,,,level,,,,0.3,0.1,,,,A2,",
                ",,,,level,,,,0.4,0.1,,,,a 2,soft",
                "Kestrel,4-,1,port,gate,catch,4.5,,,,,,,A2,"),
            "round.csv, line 3, column rack: 'A2' was given another level in line 2 (bow_high 0.3 port_low 0.1, firm): keep the row that holds, or give each the date on which it was read."
        },
        {
            "a rack with two levels on a day",
            Csv.RackRows(
                ",,,,level,,,,0.3,0.1,,2026-05-04,,A2,",
                ",,,,level,,,,0.4,0.1,,2026-05-04,,A2,",
                "Kestrel,4-,1,port,gate,catch,4.5,,,,,,,,"),
            "round.csv, line 3, column rack: 'A2' was given another level in line 2 (bow_high 0.3 port_low 0.1, firm) on 2026-05-04: keep the row that holds, or give each the date on which it was read."
        },
        {
            "a rack's day that is none",
            Csv.RackRows(
                ",,,,level,,,,0.3,0.1,,yesterday,,A2,",
                "Kestrel,4-,1,port,gate,catch,4.5,,,,,,,A2,"),
            "round.csv, line 2, column date: 'yesterday' is not a date of this format: expected year-month-day, such as 2026-05-04, or day.month.year, such as 4.5.2026, from 1900 to 2199."
        },
        {
            "boats on two racks, one not named",
            Csv.RackRows(
                ",,,,level,,,,0.3,0.1,,,,A2,",
                ",,,,level,,,,0.4,0.1,,,,A3,",
                "Kestrel,4-,1,port,gate,catch,4.5,,,,,,,A2,",
                "Kestrel,4-,1,port,gate,catch,4.5,,,,,,,A3,",
                "Kestrel,4-,1,port,gate,catch,4.5,,,,,,,,"),
            "round.csv, line 6, column bow_high: blank, while other rows of Kestrel, upright, give different levels (rack A2; rack A3): write the one that holds in this row too, or eye if none does."
        },
        {
            "racks and no reading",
            Csv.Lines(
                "item,rack,bow_high,port_low",
                "level,A2,0.3,0.1"),
            "round.csv: levels of racks and no reading: give it together with a file of readings."
        },
        {
            "a list of racks without the levels",
            Csv.Lines(
                "item,rack,bow_high",
                "level,A2,0.3"),
            "round.csv, line 1: missing from the header: port_low. Add what is missing; the header names each column once, in any order."
        },
    };

    [Fact]
    public void No_row_of_the_table_is_lost() => Assert.Equal(15, Faults.Count);

    [Theory]
    [MemberData(nameof(Faults))]
    public void Every_fault_of_a_rack_is_named_with_its_place_and_the_remedy(
        string fault, string text, string expected)
    {
        Assert.NotEmpty(fault);
        Assert.Equal(expected, Csv.ErrorsOf(text));
    }
}
