using System.Text;
using Gatewright.Core.Mending;

namespace Gatewright.Journal.Tests.Exchange.StoresFiles;

public sealed class StoresReadingTests
{
    [Fact]
    public void Parts_are_read_with_their_sizes_and_counts() => Assert.Equal(
        "3 × insert 4°, 8 × shim 0.5 mm, 2 × washer 1 mm, 1 × pin",
        Shelf.PartsOf(Shelf.Rows("insert,4,3,", "shim,0.5,8,left drawer", "washer,1,2,", "pin,,1,")));

    [Fact]
    public void A_part_that_is_not_there_but_can_be_had_is_on_the_list() =>
        Assert.Equal("0 × insert 4.5°", Shelf.PartsOf(Shelf.Rows("insert,4.5,0,")));

    [Fact]
    public void A_header_alone_is_a_bare_shelf() => Assert.Equal("", Shelf.PartsOf(Shelf.Rows()));

    // What spreadsheets and people do to such a table; the same list as for readings.
    [Theory]
    [InlineData("part;size;count\nshim;0,5;8\n", "8 × shim 0.5 mm")]
    [InlineData("sep=;\npart;size;count\nshim;0,5;8\n", "8 × shim 0.5 mm")]
    [InlineData("part\tsize\tcount\r\nshim\t0.5\t8\r\n", "8 × shim 0.5 mm")]
    [InlineData("\uFEFFCOUNT, Size ,PART\n8,0.5,Shim\n", "8 × shim 0.5 mm")]
    [InlineData("part,size,count\nshim,\"0,5\",8\n", "8 × shim 0.5 mm")]
    [InlineData("part,size,count\n\nSHIMS , 0.5 mm , 8\n,,\n", "8 × shim 0.5 mm")]
    [InlineData("part,size,count\ninserts,4°,8.0\n", "8 × insert 4°")]
    [InlineData("part,size,count\ninsert,0,1\n", "1 × insert 0°")]
    [InlineData("part,size,count\npin,0,1\npins,,2", "3 × pin")]
    [InlineData("part,size,count,,\nwasher,.5,1,,\n", "1 × washer 0.5 mm")]
    public void What_spreadsheets_and_people_do_is_taken_as_meant(string text, string parts) =>
        Assert.Equal(parts, Shelf.PartsOf(text));

    [Fact]
    public void A_file_in_UTF_16_with_its_mark_is_read() => Assert.Equal(
        "1 × insert 4°",
        Shelf.PartsOf(Shelf.Read([.. Encoding.Unicode.GetPreamble(), .. Encoding.Unicode.GetBytes(Shelf.Rows("insert,4°,1,"))])));

    [Fact]
    public void Lines_of_one_part_are_counted_together_with_a_warning()
    {
        string file = Shelf.Rows("shim,1,3,drawer", "insert,4,1,", "shim,1.0,2,box");
        Assert.Equal("1 × insert 4°, 5 × shim 1 mm", Shelf.PartsOf(file));
        Assert.Equal(
            "stores.csv, line 4, column part: 'shim 1 mm' stands in line 2 too: they are counted together.",
            Shelf.WarningsOf(file));
    }

    [Fact]
    public void A_column_of_somebody_s_own_is_told_of_once() => Assert.Equal(
        "stores.csv, line 1, column Drawer: is not a column of stores: what stands in it is not used.",
        Shelf.WarningsOf("part,size,count,Drawer\nshim,1,3,A\nshim,2,3,B\n"));

    [Fact]
    public void A_note_of_digits_may_be_a_count_that_has_slipped()
    {
        const string Slipped = "stores.csv, line 2, column note: '12' is a number: if the size was written with a decimal comma, its cells have slipped; write it with a point, or save the sheet with semicolons.";
        Assert.Equal(Slipped, Shelf.WarningsOf(Shelf.Rows("insert,4,5,12")));
        Assert.Equal("", Shelf.WarningsOf("part;size;count;note\ninsert;4,5;12;12\n"));
    }

    [Fact]
    public void A_shelf_has_each_part_as_often_as_its_rows_say()
    {
        Stores stores = Shelf.Read(Shelf.Rows("insert,4,3,", "shim,0.5,8,")).Stores;
        Assert.Equal(3, stores.Count(new(PartKind.Insert, 4)));
        Assert.Equal(8, stores.Count(new(PartKind.Shim, 0.5)));
        Assert.Equal(0, stores.Count(new(PartKind.Washer, 0.5)));
    }
}
