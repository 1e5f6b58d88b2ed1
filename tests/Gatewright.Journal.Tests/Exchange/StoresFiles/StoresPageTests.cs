using System.Globalization;
using Gatewright.Journal.Exchange.StoresFiles;

namespace Gatewright.Journal.Tests.Exchange.StoresFiles;

/// <summary>docs/stores.md says what the program reads.</summary>
public sealed class StoresPageTests
{
    private const string Page = "stores.md";

    private static readonly MarkdownTable s_columns = MarkdownTable.Of(Page, "column");

    [Fact]
    public void The_table_has_the_columns_and_their_words()
    {
        Assert.Equal(StoresFormat.Columns.Select(c => c.Name), s_columns.Codes("column").Select(c => Assert.Single(c)));
        Assert.Equal(StoresFormat.Columns.Select(c => string.Join(' ', c.Words)), s_columns.Codes("values").Select(words => string.Join(' ', words)));
    }

    [Fact]
    public void The_ranges_in_the_table_are_those_of_the_program()
    {
        string[] values = [.. s_columns["values"]];
        Assert.Equal($"degrees from 0 to {StoresFormat.MostDegrees} for an insert, millimetres above 0 and at most {StoresFormat.MostMillimetres} for a shim or washer, blank for a pin", values[1]);
        Assert.Equal(string.Create(CultureInfo.InvariantCulture, $"a whole number from 0 to {StoresFormat.MostOfAPart:N0}"), values[2]);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("part")]
    [InlineData("size")]
    [InlineData("count")]
    [InlineData("note")]
    public void What_the_table_calls_an_error_when_blank_is_one_and_nothing_else_is(string? blank)
    {
        string[] names = [.. s_columns.Codes("column").Select(c => c[0])];
        string[] cells = [.. s_columns["example"]];
        bool expected = false;
        if (blank is not null)
        {
            int at = Array.IndexOf(names, blank);
            expected = s_columns["when blank"].ElementAt(at).StartsWith("an error", StringComparison.Ordinal);
            cells[at] = "";
        }

        StoresInput input = Shelf.Read(Csv.Lines(string.Join(',', names), string.Join(',', cells)));
        Assert.Equal(expected, input.Errors.Count == 1 && input.Errors[0].Column == blank);
        Assert.Equal(expected, input.Errors.Count > 0);
    }

    [Fact]
    public void The_example_reads_without_an_error_or_a_warning()
    {
        StoresInput input = Shelf.Read(Assert.Single(MarkdownTable.Blocks(Page, "csv")));
        Assert.Empty(input.Errors.Concat(input.Warnings));
        Assert.NotEmpty(input.Stores.Parts);
    }

    [Fact]
    public void The_example_file_reads_without_an_error_or_a_warning()
    {
        StoresInput input = Shelf.Read(File.ReadAllBytes(Path.Combine(Repository.Folder("examples"), "stores.csv")));
        Assert.Empty(input.Errors.Concat(input.Warnings));
        Assert.NotEmpty(input.Stores.Parts);
    }
}
