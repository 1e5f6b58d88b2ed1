using Gatewright.Journal.Exchange;

namespace Gatewright.Journal.Tests.Exchange;

/// <summary>The files in examples can be read.</summary>
public sealed class ExampleFileTests
{
    /// <summary>All but the shelf and the finished jobs, which hold no readings.</summary>
    public static TheoryData<string> Files => [.. Directory.GetFiles(Repository.Folder("examples"), "*.csv")
        .Select(f => Path.GetFileName(f)!)
        .Where(f => f is not ("stores.csv" or "jobs.csv"))];

    [Theory]
    [MemberData(nameof(Files))]
    public void Every_file_of_readings_has_boats_and_no_error(string file)
    {
        ReadingsInput input = Csv.Read(File.ReadAllBytes(Path.Combine(Repository.Folder("examples"), file)));
        Assert.NotEmpty(file == "rig.csv" ? input.Measures.Select(m => m.Boat) : Csv.Boats(input).Select(b => b.Boat));
    }

    [Fact]
    public void The_spreadsheets_own_columns_are_notes_with_a_warning_each() => Assert.Equal(
        ["Squad", "Weather"],
        Csv.Read(File.ReadAllBytes(Path.Combine(Repository.Folder("examples"), "spreadsheet.csv"))).Warnings.Select(w => w.Column));

    [Fact]
    public void The_standard_has_no_error_and_no_warning()
    {
        using FileStream content = File.OpenRead(Path.Combine(Repository.Folder("examples"), "standard-school.json"));
        StandardInput input = StandardFile.Read("standard-school.json", content);
        Assert.NotNull(input.Standard);
        Assert.Empty(input.Warnings);
    }
}
