using System.Collections.Concurrent;
using System.Text.Json;
using System.Text.RegularExpressions;
using Gatewright.Cli.Tests.Harness;

namespace Gatewright.Cli.Tests.CheckShed;

/// <summary>The tables of examples/README.md against what the program says of the files they are about.</summary>
public sealed partial class ExampleVerdictTests
{
    private static readonly ConcurrentDictionary<string, Dictionary<string, string>> Found = new();

    public static TheoryData<string, string, string> Tables
    {
        get
        {
            var rows = new TheoryData<string, string, string>();
            foreach ((string file, string boat, string verdict) in Rows())
            {
                rows.Add(file, boat, verdict);
            }

            return rows;
        }
    }

    [Theory]
    [MemberData(nameof(Tables))]
    public void Each_boat_has_the_verdict_that_its_table_promises(string file, string boat, string verdict) =>
        Assert.Equal(verdict, Verdicts(file)[boat]);

    [Fact]
    public void Every_boat_of_every_example_stands_in_a_table()
    {
        HashSet<(string, string)> promised = [.. Rows().Select(row => (row.File, row.Boat))];
        foreach (string file in ExampleFiles.All.Where(file => file != ExampleFiles.Small))
        {
            Assert.All(Verdicts(file).Keys, boat => Assert.Contains((file, boat), promised));
        }
    }

    [Fact]
    public void The_school_s_own_standard_judges_as_its_table_promises()
    {
        int rows = 0;
        foreach (string line in File.ReadLines("examples/README.md"))
        {
            if (SchoolRow().Match(line) is { Success: true } row)
            {
                string file = Rows().Single(r => r.Boat == row.Groups[1].Value).File;
                Assert.Equal(row.Groups[2].Value, Verdicts(file)[row.Groups[1].Value]);
                Assert.Equal(row.Groups[3].Value, Verdicts(file, "--standard", "examples/standard-school.json")[row.Groups[1].Value]);
                rows++;
            }
        }

        Assert.True(rows >= 5, $"only {rows} rows were found");
    }

    private static Dictionary<string, string> Verdicts(string file, params string[] more) =>
        Found.GetOrAdd(string.Join(' ', [file, .. more]), _ => Find(file, more));

    private static Dictionary<string, string> Find(string file, string[] more)
    {
        using JsonDocument document = JsonDocument.Parse(ProgramRun.Of(["check", file, "--json", .. more]).Output);
        return document.RootElement.GetProperty("boats").EnumerateArray().ToDictionary(
            boat => boat.GetProperty("boat").GetString()!,
            boat => boat.GetProperty("verdict").GetString()!);
    }

    /// <summary>Rows of four columns whose last is a verdict; the file is the last one named in a heading, at first the shed.</summary>
    internal static IEnumerable<(string File, string Boat, string Verdict)> Rows()
    {
        string file = ExampleFiles.Shed;
        foreach (string line in File.ReadLines("examples/README.md"))
        {
            if (Heading().Match(line) is { Success: true } heading)
            {
                file = "examples/" + heading.Groups[1].Value;
            }
            else if (Row().Match(line) is { Success: true } row)
            {
                yield return (file, row.Groups[1].Value, row.Groups[2].Value);
            }
        }
    }

    [GeneratedRegex(@"^#+ ([\w-]+\.csv)")]
    private static partial Regex Heading();

    [GeneratedRegex(@"^\| ([^|]+?) \| [^|]+ \| (?!(?:good|unsure|adjust|stop) )[^|]+ \| (good|unsure|adjust|stop) \|$")]
    private static partial Regex Row();

    [GeneratedRegex(@"^\| ([^|]+?) \| [^|]+ \| (good|unsure|adjust|stop) \| (good|unsure|adjust|stop) \|$")]
    private static partial Regex SchoolRow();
}
