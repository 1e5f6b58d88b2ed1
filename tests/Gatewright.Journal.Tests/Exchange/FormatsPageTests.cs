using System.Text;
using Gatewright.Core.Judging;
using Gatewright.Core.Rig;
using Gatewright.Journal.Exchange;

namespace Gatewright.Journal.Tests.Exchange;

/// <summary>docs/formats.md says what the program does.</summary>
public sealed class FormatsPageTests
{
    private const string Page = "formats.md";

    private static readonly MarkdownTable s_columns = MarkdownTable.Of(Page, "column");

    [Fact]
    public void The_table_has_the_columns_in_the_order_in_which_they_are_written() =>
        Assert.Equal(ReadingsFormat.Columns.Select(c => c.Name), s_columns.Codes("column").Select(c => Assert.Single(c)));

    [Fact]
    public void The_table_has_the_words_of_each_column()
    {
        Assert.Equal(
            ReadingsFormat.Columns.Select(c => string.Join(' ', c.Words)), s_columns.Codes("values").Select(words => string.Join(' ', words)));
        Assert.Contains(ReadingsFormat.Columns, c => c.Words.Count > 0);
    }

    [Fact]
    public void The_ranges_in_the_table_are_those_of_the_program()
    {
        string[] values = [.. s_columns["values"]];
        Assert.Equal($"-{ReadingsFormat.MostOfAGate} to {ReadingsFormat.MostOfAGate} for a gate, -{ReadingsFormat.MostOfAnother} to {ReadingsFormat.MostOfAnother} for anything else", values[6]);
        Assert.StartsWith($"-{ReadingsFormat.MostOfALevel} to {ReadingsFormat.MostOfALevel},", values[8], StringComparison.Ordinal);
        Assert.Equal(values[8], values[9]);
    }

    /// <summary>A file in which every cell is the table's example, and files in which one of them is blank.</summary>
    [Theory]
    [InlineData(null)]
    [InlineData("boat")]
    [InlineData("class")]
    [InlineData("seat")]
    [InlineData("side")]
    [InlineData("item")]
    [InlineData("at")]
    [InlineData("reading")]
    [InlineData("lie")]
    [InlineData("gauge")]
    [InlineData("date")]
    [InlineData("note")]
    [InlineData("rack")]
    [InlineData("lying")]
    public void What_the_table_calls_an_error_when_blank_is_one_and_nothing_else_is(string? blank)
    {
        string[] names = [.. s_columns.Codes("column").Select(c => c[0])];
        string[] examples = [.. s_columns["example"]];
        examples[Array.IndexOf(names, "item")] = "gate";
        examples[Array.IndexOf(names, "bed")] = "";
        Assert.Equal("", examples[Array.IndexOf(names, "unit")]);
        bool expected = false;
        if (blank is not null)
        {
            int at = Array.IndexOf(names, blank);
            expected = s_columns["when blank"].ElementAt(at).StartsWith("an error", StringComparison.Ordinal);
            examples[at] = "";
        }

        ReadingsInput input = Csv.Read(Csv.Lines(string.Join(',', names), string.Join(',', examples)));
        Assert.Equal(expected, input.Errors.Count == 1 && input.Errors[0].Column == blank);
        Assert.Equal(expected, input.Errors.Count > 0);
    }

    [Fact]
    public void The_columns_a_file_has_to_have_are_those_that_are_an_error_when_blank() => Assert.Equal(
        ReadingsFormat.Columns.Where(c => c.IsRequired).Select(c => c.Name),
        s_columns["when blank"].Zip(s_columns.Codes("column")).Where(r => r.First == "an error").Select(r => r.Second[0]));

    [Fact]
    public void The_examples_of_files_read_without_an_error_or_a_warning()
    {
        string[] files = MarkdownTable.Blocks(Page, "csv");
        Assert.Equal(4, files.Length);
        ReadingsInput input = Csv.Read(files);
        Assert.Equal(4, Assert.Single(input.Measures).Measures.Count);
        Assert.Equal(4, Assert.Single(Csv.Boats(input)).Readings.Count);
        Assert.Equal(2, Assert.Single(input.Records).Reports.Count);
        Assert.Empty(input.Warnings);
    }

    [Fact]
    public void The_table_of_measures_has_each_with_its_range()
    {
        MarkdownTable table = MarkdownTable.Of(Page, "item | where");
        Assert.Equal(RigMeasures.All.Select(m => m.Word()), table.Codes("item").Select(c => Assert.Single(c)));
        Assert.Equal(
            RigMeasures.All.Select(m => FormattableString.Invariant($"{m.Plausible().Least} to {m.Plausible().Most} {(m.IsAngle() ? "degrees" : "cm")}")),
            table["possible"]);
    }

    [Fact]
    public void The_example_of_a_standard_reads_as_it_says()
    {
        StandardInput input = Read(Assert.Single(MarkdownTable.Blocks(Page, "json")));
        Assert.Empty(input.Errors.Concat(input.Warnings));
        Standard expected = Standard.Club with
        {
            Name = "our eights",
            Catch = StationLimits.FromDegrees(3.5, 5, 2),
            LargestDrop = Core.Geometry.Angle.FromDegrees(2),
        };
        Assert.Equal(expected, input.Standard);
    }

    [Fact]
    public void The_tables_of_a_standard_have_the_keys_that_the_program_knows()
    {
        string keys = string.Join(", ", MarkdownTable.Of(Page, "key").Codes("key").Select(c => Assert.Single(c)));
        string stationKeys = string.Join(", ", MarkdownTable.Of(Page, "key of a station").Codes("key of a station").Select(c => Assert.Single(c)));
        Assert.Equal(
            Csv.Messages(
                $"standard.json, at $.zzz: not a key of this format: expected {keys}.",
                $"standard.json, at $.catch.zzz: not a key of this format: expected {stationKeys}."),
            Csv.Messages([.. Read("""{"format":"gatewright.standard/1","name":"ours","extends":"club","zzz":1,"catch":{"zzz":1}}""").Errors.Select(e => e.ToString())]));
    }

    [Fact]
    public void The_table_of_a_standard_has_its_format_and_the_built_in_standards()
    {
        string[][] values = [.. MarkdownTable.Of(Page, "key").Codes("values")];
        Assert.Equal([StandardFile.Format], values[0]);
        Assert.Equal(Standard.BuiltIn.Select(s => s.Name), values[2]);
    }

    private static StandardInput Read(string json) => StandardFile.Read("standard.json", new MemoryStream(Encoding.UTF8.GetBytes(json)));
}
