using Gatewright.Core;
using Gatewright.Journal.Exchange;

namespace Gatewright.Journal.Tests.Exchange;

/// <summary>What is understood but said all the same, and what people wrote beside their readings.</summary>
public sealed class NoteAndWarningTests
{
    [Fact]
    public void Notes_and_foreign_columns_are_kept_with_their_gate()
    {
        ReadingsInput input = Csv.Read(Csv.Lines(
            "boat,class,seat,side,at,reading,note,Weather,",
            "Kestrel,4-,1,port,catch,4.5,worn insert,dry,",
            "Kestrel,4-,2,starboard,catch,4.5,,,see log"));
        Assert.Equal(
            [
                new ReadingNote("Kestrel", new(1, Side.Port), "worn insert"),
                new ReadingNote("Kestrel", new(1, Side.Port), "Weather: dry"),
                new ReadingNote("Kestrel", new(2, Side.Starboard), "column 9: see log"),
            ],
            input.Notes);
        Assert.Equal(
            "round.csv, line 1, column Weather: is not a column of readings: what stands in it is kept as a note.",
            Csv.Warnings(input));
    }

    [Fact]
    public void A_foreign_column_does_not_hide_what_separates_the_columns() => Assert.Equal(
        "Weather; wind; water; light; hour; who; why; whence: dry",
        Assert.Single(Csv.Read(Csv.Lines(
            "boat,class,seat,side,at,reading,\"Weather; wind; water; light; hour; who; why; whence\"", "Kestrel,4-,1,port,catch,4.5,dry")).Notes).Text);

    [Theory]
    [InlineData("-4", "4-")]
    [InlineData("\u22122", "2-")]
    public void A_class_that_a_spreadsheet_made_a_number_of_is_taken_as_meant_with_one_warning(string written, string meant)
    {
        ReadingsInput input = Csv.Read(Csv.Rows(
            $"Kestrel,{written},1,port,gate,catch,4.5,,,,,,", $"Kestrel,{written},2,starboard,gate,catch,4.5,,,,,,"));
        Assert.Equal(meant, Assert.Single(Csv.Boats(input)).Class.Name);
        Assert.Equal(
            $"round.csv, line 2, column class: '{written}' was read as {meant}: a spreadsheet made a number of it. Set the column to Text before typing.",
            Csv.Warnings(input));
    }

    [Fact]
    public void A_reading_that_may_have_been_split_at_its_decimal_comma_is_taken_as_it_stands_with_a_warning()
    {
        ReadingsInput input = Csv.Read(Csv.Lines("boat,class,seat,side,at,reading,note", "Kestrel,4-,1,port,catch,4,5"));
        Assert.Equal(4, Assert.Single(Csv.Boats(input)).Readings[0].Value.Degrees);
        Assert.Equal(
            "round.csv, line 2, column reading: '4' is followed by 5 in the next cell: if 4,5 was meant, write it with a point, or save the sheet with semicolons.",
            Csv.Warnings(input));
    }

    [Theory]
    [InlineData("'=1+1", "=1+1")]
    [InlineData("''-x", "'-x")]
    [InlineData("'tis", "'tis")]
    public void The_apostrophe_before_a_formula_is_taken_off_a_name(string written, string meant) => Assert.Equal(
        meant, Assert.Single(Csv.BoatsOf(Csv.Rows($"{written},4-,1,port,gate,catch,4.5,,,,,,"))).Boat);

    [Fact]
    public void What_is_shown_of_a_value_stays_on_its_line_and_moves_no_cursor() => Assert.Equal(
        "round.csv, line 2, column lie: 'a b\uFFFD c' is not a lie: expected upright or inverted; blank is upright.",
        Csv.ErrorsOf(Csv.Rows("Kestrel,4-,1,port,gate,catch,4.5,\"a\nb\u202E\u009Bc\",,,,,")));

    [Fact]
    public void A_thousand_errors_are_kept_in_order_and_the_rest_are_counted()
    {
        ReadingsInput input = Csv.Read(Csv.Rows(
            [.. Enumerable.Range(0, 1_500).Select(i => i == 0 ? "Kestrel,4-,1,port,gate,catch,4.5,,,,,," : "Kestrel,4-,1,port,gate,catch,x,,,,,y,")]));
        Assert.Equal(1_000, input.Errors.Count);
        Assert.Equal((2 * 1_499) - 1_000, input.ErrorsBeyond);
        Assert.Equal("round.csv, line 3, column reading: 'x' is not a number: expected degrees, such as 4.5.", input.Errors[0].ToString());
        Assert.Equal(Enumerable.Range(0, 1_000).Select(i => (int?)(3 + (i / 2))), input.Errors.Select(e => e.Line));
    }

    [Fact]
    public void Errors_that_only_all_rows_show_stand_where_their_row_does() => Assert.Equal(
        [3, 5],
        Csv.Read(Csv.RackRows(
            "Kestrel,4-,1,port,gate,catch,4.5,,,,,,,,",
            "Kestrel,4-,2,starboard,gate,catch,4.5,inverted,,,,,,A2,",
            "Kestrel,4-,3,port,gate,catch,4.5,,,,,,,,",
            "Kestrel,4-,9,port,gate,catch,4.5,,,,,,,,")).Errors.Select(e => e.Line!.Value));
}
