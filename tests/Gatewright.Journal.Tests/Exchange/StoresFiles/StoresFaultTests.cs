namespace Gatewright.Journal.Tests.Exchange.StoresFiles;

/// <summary>What can be wrong with a file of stores.</summary>
public sealed class StoresFaultTests
{
    private const string Count = "how many there are, a whole number from 0 to 100,000; 0 says that the size can be bought";

    public static TheoryData<string, string, string> Faults => new()
    {
        { "nothing", "", "stores.csv: nothing in it: expected a header (part, size, count, note) and under it a row for each part and size." },
        {
            "no header",
            "insert,4,3\n",
            "stores.csv, line 1: 'insert' is not the name of a column, nor is anything else in this line: expected a header (part, size, count, note), its names separated by commas, semicolons or tabs."
        },
        {
            "a column too few",
            "part,size,number\ninsert,4,3\n",
            "stores.csv, line 1: missing from the header: count. Add what is missing; the header names each column once, in any order."
        },
        {
            "a column mistyped",
            "part,size,cuont\ninsert,4,3\n",
            "stores.csv, line 1: missing from the header: count. Add what is missing; the header names each column once, in any order. Is 'cuont' meant for count?"
        },
        { "a column twice", "part,size,count,size\ninsert,4,3,4\n", "stores.csv, line 1, column size: stands in the header more than once: keep one." },
        { "no part", Shelf.Rows(",4,3,"), "stores.csv, line 2, column part: blank: expected insert, shim, washer or pin." },
        { "a part there is not", Shelf.Rows("bolt,4,3,"), "stores.csv, line 2, column part: 'bolt' is not a part: expected insert, shim, washer or pin." },
        { "no size of an insert", Shelf.Rows("insert,,3,"), "stores.csv, line 2, column size: blank: expected the degrees that the insert gives, from 0 to 15, such as 4." },
        { "no size of a shim", Shelf.Rows("shim,,3,"), "stores.csv, line 2, column size: blank: expected the thickness in millimetres, above 0 and at most 20, such as 0.5." },
        { "a size in words", Shelf.Rows("washer,thin,3,"), "stores.csv, line 2, column size: 'thin' is not a number: expected the thickness in millimetres, above 0 and at most 20, such as 0.5." },
        { "a shim of nothing", Shelf.Rows("shim,0,3,"), "stores.csv, line 2, column size: '0' is not a possible size: expected the thickness in millimetres, above 0 and at most 20, such as 0.5." },
        { "an insert too steep", Shelf.Rows("insert,45,3,"), "stores.csv, line 2, column size: '45' is not a possible size: expected the degrees that the insert gives, from 0 to 15, such as 4." },
        { "an insert that leans forward", Shelf.Rows("insert,-1,3,"), "stores.csv, line 2, column size: '-1' is not a possible size: expected the degrees that the insert gives, from 0 to 15, such as 4." },
        { "a washer too thick", Shelf.Rows("washer,20.5,3,"), "stores.csv, line 2, column size: '20.5' is not a possible size: expected the thickness in millimetres, above 0 and at most 20, such as 0.5." },
        {
            "a size made a date",
            Shelf.Rows("shim,05. Jan,3,"),
            "stores.csv, line 2, column size: '05. Jan' is a date that a spreadsheet made of a number: set the column to Text (or type the decimal sign the sheet expects) and type the number again, such as 0.5."
        },
        { "a pin with a size", Shelf.Rows("pin,160 mm,3,"), "stores.csv, line 2, column size: '160 mm' does not go with a pin, which has no size here: leave it blank." },
        { "no count", Shelf.Rows("shim,1,,"), $"stores.csv, line 2, column count: blank: expected {Count}." },
        { "half a shim", Shelf.Rows("shim,1,2.5,"), $"stores.csv, line 2, column count: '2.5' is not a count: expected {Count}." },
        { "fewer than none", Shelf.Rows("shim,1,-2,"), $"stores.csv, line 2, column count: '-2' is not a count: expected {Count}." },
        { "a count in words", Shelf.Rows("shim,1,plenty,"), $"stores.csv, line 2, column count: 'plenty' is not a count: expected {Count}." },
        { "more than any club has", Shelf.Rows("shim,1,100001,"), $"stores.csv, line 2, column count: '100001' is not a count: expected {Count}." },
        { "more than any club has, in two lines", Shelf.Rows("shim,1,99999,", "shim,1,2,"), "stores.csv, line 3, column count: 100,001 of shim 1 mm in all lines together: expected at most 100,000." },
        {
            "a decimal comma between commas",
            Shelf.Rows("shim,0,5,12,"),
            "stores.csv, line 2, column size: '0' is not a possible size: expected the thickness in millimetres, above 0 and at most 20, such as 0.5."
        },
        {
            "cells beyond the last column",
            "part,size,count\nshim,0,5,12\n",
            "stores.csv, line 2: '12' stands beyond the last column: the row has 4 cells, the header 3. If a number was written with a decimal comma between commas, write it with a point, or save the sheet with semicolons."
        },
        { "a stray quote mark", Shelf.Rows("shim,1,3,the \"wide\" ones"), "stores.csv, line 2: 'the \"wide\" ones' has a quote mark inside: put the whole cell in quote marks and double the one inside it, \"6\"\" washer\"." },
        {
            "everything at once",
            Shelf.Rows("bolt,4,3,", "insert,4,3,", "shim,thick,-1,"),
            Csv.Messages(
                "stores.csv, line 2, column part: 'bolt' is not a part: expected insert, shim, washer or pin.",
                "stores.csv, line 4, column size: 'thick' is not a number: expected the thickness in millimetres, above 0 and at most 20, such as 0.5.",
                $"stores.csv, line 4, column count: '-1' is not a count: expected {Count}.")
        },
    };

    [Fact]
    public void No_row_of_the_table_is_lost() => Assert.Equal(26, Faults.Count);

    [Theory]
    [MemberData(nameof(Faults))]
    public void Every_fault_is_one_message_with_its_remedy(string fault, string file, string expected)
    {
        Assert.NotEmpty(fault);
        Assert.Equal(expected, Shelf.ErrorsOf(file));
    }

    [Fact]
    public void A_thousand_errors_are_kept_and_the_rest_counted()
    {
        string file = Shelf.Rows([.. Enumerable.Repeat("bolt,1,1,", 1_200)]);
        Assert.Equal(1_000, Shelf.Read(file).Errors.Count);
        Assert.Equal(200, Shelf.Read(file).ErrorsBeyond);
    }
}
