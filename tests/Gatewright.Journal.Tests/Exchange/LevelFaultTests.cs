namespace Gatewright.Journal.Tests.Exchange;

/// <summary>What can be wrong with how a boat lay.</summary>
public sealed class LevelFaultTests
{
    public static TheoryData<string, string, string> Faults => new()
    {
        {
            "a level one way",
            Csv.Rows("Kestrel,4-,1,port,gate,catch,4.5,,0.3,,,,"),
            "round.csv, line 2, column port_low: blank, while bow_high is given: write both (0 where it lies level), or neither for by eye."
        },
        {
            "a level the other way",
            Csv.Rows("Kestrel,4-,1,port,gate,catch,4.5,,,0.3,,,"),
            "round.csv, line 2, column bow_high: blank, while port_low is given: write both (0 where it lies level), or neither for by eye."
        },
        {
            "a level in words",
            Csv.Rows("Kestrel,4-,1,port,gate,catch,4.5,,level,level,,,"),
            Csv.Messages(
                "round.csv, line 2, column bow_high: 'level' is not a level: expected degrees, such as 0.3, or bubble for a centred bubble; both columns blank is by eye.",
                "round.csv, line 2, column port_low: 'level' is not a level: expected degrees, such as 0.3, or bubble for a centred bubble; both columns blank is by eye.")
        },
        {
            "a level made a date",
            Csv.Rows("Kestrel,4-,1,port,gate,catch,4.5,,3. Jan,0.1,,,"),
            "round.csv, line 2, column bow_high: '3. Jan' is a date that a spreadsheet made of a number: set the column to Text and type it again. Expected degrees, such as 0.3, or bubble for a centred bubble; both columns blank is by eye."
        },
        {
            "a level too large",
            Csv.Rows("Kestrel,4-,1,port,gate,catch,4.5,,31,-31,,,"),
            Csv.Messages(
                "round.csv, line 2, column bow_high: '31' is not a possible level: expected degrees from -30 to 30.",
                "round.csv, line 2, column port_low: '-31' is not a possible level: expected degrees from -30 to 30.")
        },
        {
            "a level one way and it is wrong",
            Csv.Rows("Kestrel,4-,1,port,gate,catch,4.5,,x,,,,"),
            Csv.Messages(
                "round.csv, line 2, column port_low: blank, while bow_high is given: write both (0 where it lies level), or neither for by eye.",
                "round.csv, line 2, column bow_high: 'x' is not a level: expected degrees, such as 0.3, or bubble for a centred bubble; both columns blank is by eye.")
        },
        {
            "a bubble and a number",
            Csv.Rows("Kestrel,4-,1,port,gate,catch,4.5,,bubble,0.3,,,"),
            "round.csv, line 2, column port_low: '0.3' does not go with 'bubble' in bow_high: expected two numbers, or one of bubble, eye or rack in either or both."
        },
        {
            "a bubble and the eye",
            Csv.Rows("Kestrel,4-,1,port,gate,catch,4.5,,bubble,eye,,,"),
            "round.csv, line 2, column port_low: 'eye' does not go with 'bubble' in bow_high: expected two numbers, or one of bubble, eye or rack in either or both."
        },
        {
            "a bubble and rubbish",
            Csv.Rows("Kestrel,4-,1,port,gate,catch,4.5,,0.x,bubble,,,"),
            "round.csv, line 2, column port_low: 'bubble' does not go with '0.x' in bow_high: expected two numbers, or one of bubble, eye or rack in either or both."
        },
        {
            "a blank level between two",
            Csv.Rows(
                "Kestrel,4-,1,port,gate,catch,4.5,,0.3,0.1,,,",
                "Kestrel,4-,2,starboard,gate,catch,4.5,,bubble,,,,",
                "Kestrel,4-,3,port,gate,catch,4.5,,,,,,",
                "Kestrel,4-,4,starboard,gate,catch,4.5,,,,,,"),
            "round.csv, line 4, column bow_high: blank, while other rows of Kestrel, upright, give different levels (bow_high 0.3 port_low 0.1; bubble): write the one that holds in this row too, or eye if none does."
        },
        {
            "a blank level on a day with two",
            Csv.Rows(
                "Kestrel,4-,1,port,gate,catch,4.5,inverted,0.3,-0.1,,2026-05-04,",
                "Kestrel,4-,1,port,gate,catch,4.5,inverted,0.5,0,,4.5.2026,",
                "Kestrel,4-,1,port,gate,catch,4.5,inverted,,,,2026-05-04,"),
            "round.csv, line 4, column bow_high: blank, while other rows of Kestrel, inverted on 2026-05-04, give different levels (bow_high 0.3 port_low -0.1; bow_high 0.5 port_low 0): write the one that holds in this row too, or eye if none does."
        },
        {
            "a blank level among many",
            Csv.Rows(
                "Kestrel,4-,1,port,gate,catch,4.5,,0,0,,,",
                "Kestrel,4-,1,port,gate,catch,4.5,,1,0,,,",
                "Kestrel,4-,1,port,gate,catch,4.5,,2,0,,,",
                "Kestrel,4-,1,port,gate,catch,4.5,,3,0,,,",
                "Kestrel,4-,1,port,gate,catch,4.5,,4,0,,,",
                "Kestrel,4-,1,port,gate,catch,4.5,,5,0,,,",
                "Kestrel,4-,1,port,gate,catch,4.5,,6,0,,,",
                "Kestrel,4-,1,port,gate,catch,4.5,,,,,,"),
            "round.csv, line 9, column bow_high: blank, while other rows of Kestrel, upright, give different levels (bow_high 0 port_low 0; bow_high 1 port_low 0; bow_high 2 port_low 0; bow_high 3 port_low 0; bow_high 4 port_low 0; ...): write the one that holds in this row too, or eye if none does."
        },
    };

    [Fact]
    public void No_row_of_the_table_is_lost() => Assert.Equal(12, Faults.Count);

    [Theory]
    [MemberData(nameof(Faults))]
    public void Every_fault_of_a_level_is_named_with_its_place_and_the_remedy(
        string fault, string text, string expected)
    {
        Assert.NotEmpty(fault);
        Assert.Equal(expected, Csv.ErrorsOf(text));
    }
}
