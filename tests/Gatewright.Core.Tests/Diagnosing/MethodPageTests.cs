using System.Globalization;
using Gatewright.Core.Diagnosing;

namespace Gatewright.Core.Tests.Diagnosing;

/// <summary>That docs/method-diagnosing.md tells the numbers the program uses.</summary>
public sealed class MethodPageTests
{
    private static readonly Dictionary<string, List<string[]>> Tables = ReadTables();

    [Fact]
    public void Healthy_spreads_are_those_of_the_page()
    {
        Spreads spreads = Spreads.Default;
        AssertTable("healthy", new()
        {
            ["gate pitch, middle"] = [spreads.Target.GatePitch.Degrees],
            ["gate pitch"] = [spreads.HealthyGatePitch.Degrees],
            ["lean, each way"] = [spreads.HealthyLean.Degrees],
            ["sleeve"] = [spreads.HealthySleeve.Degrees],
        });
        Assert.Equal(Gatewright.Core.Geometry.PinLean.Upright, spreads.Target.Pin);
    }

    [Fact]
    public void Opened_spreads_are_those_of_the_page() => AssertTable("opened by a cause", new()
    {
        ["gate-pitch"] = [Spreads.Default.GatePitch.Degrees],
        ["pin-aft, pin-out, and each lean of a rigger"] = [Spreads.Default.Lean.Degrees],
        ["sleeve"] = [Spreads.Default.Sleeve.Degrees],
        ["hull-level, each way, in every lying"] = [Spreads.Default.Level.Degrees],
        ["gauge-zero"] = [Spreads.Default.GaugeZero.Degrees],
    });

    [Fact]
    public void Prior_chances_are_those_of_the_page() =>
        AssertTable("prior chance", Causes.All.ToDictionary(c => c.Code(), c => new[] { PriorChances.Default.Of(c) }));

    [Fact]
    public void The_weights_of_the_defaults_are_those_of_the_page() => AssertTable("weight of the defaults", new()
    {
        ["gates"] = [PriorChances.Default.GatesBehind],
        ["oars"] = [PriorChances.Default.OarsBehind],
        ["boats"] = [PriorChances.Default.BoatsBehind],
        ["gauges"] = [PriorChances.Default.GaugesBehind],
    });

    [Fact]
    public void Chances_of_a_knock_and_a_refit_are_those_of_the_page()
    {
        ReportLikelihoods reports = ReportLikelihoods.Default;
        AssertTable("report | default", new()
        {
            ["knock, nothing or another cause"] = [reports.KnockBase],
            ["knock, rigger"] = [reports.KnockIfRigger],
            ["knock, pin-aft or pin-out"] = [reports.KnockIfPin],
            ["refitted, nothing or another cause"] = [reports.RefittedBase],
            ["refitted, rigger"] = [reports.RefittedIfRigger],
            ["refitted, pin-aft or pin-out"] = [reports.RefittedIfPin],
        });
    }

    [Fact]
    public void Curves_of_reports_are_those_of_the_page()
    {
        ReportLikelihoods reports = ReportLikelihoods.Default;
        AssertTable("report follows", new()
        {
            ["crab-early, falling pitch at the catch"] = Numbers(reports.CrabEarly),
            ["crab-at-finish, falling pitch at the finish"] = Numbers(reports.CrabAtFinish),
            ["washes-out, rising pitch abeam"] = Numbers(reports.WashesOut),
            ["down-to-one-side, rising mean pitch abeam of the other side less that side's"] = Numbers(reports.DownToOneSide),
        });

        static double[] Numbers(ReportCurve curve) => [curve.ThresholdDegrees, curve.WidthDegrees, curve.Base, curve.Peak];
    }

    [Fact]
    public void Every_cause_and_every_report_is_explained()
    {
        Assert.Equal(Causes.All.Select(c => c.Code()), Tables["cause"].Select(row => row[0]));
        Assert.Equal(ReportKinds.All.Select(k => k.Code()), Tables["report | what it says"].Select(row => row[0]));
    }

    /// <summary>The page's example, and the figures of its text, worked by the program.</summary>
    [Fact]
    public void The_example_is_what_the_program_says()
    {
        GateDiagnosis gate = Boats
            .Diagnose(Boats.Eight([Station.Catch, Station.Finish], (seat, at) => seat != 3 ? 4 : at == Station.Catch ? 5 : 1))
            .At(Boats.Gate(3));
        Assert.Equal(
            Tables["seat 3"].Select(row => $"{row[0]} {row[1]}"),
            gate.Causes.Take(2).Select(c => string.Create(CultureInfo.InvariantCulture, $"{c.Code} {c.Probability:0.00}")));
    }

    private static void AssertTable(string name, Dictionary<string, double[]> expected)
    {
        Dictionary<string, double[]> told = Tables[name].ToDictionary(
            row => row[0], row => row[1..].Select(cell => double.Parse(cell, CultureInfo.InvariantCulture)).ToArray());
        Assert.Equal(expected.Keys.Order(), told.Keys.Order());
        Assert.All(expected, pair => Assert.Equal(pair.Value, told[pair.Key]));
    }

    /// <summary>Every table of the page by its first heading cell; by its first two where pages have several such.</summary>
    private static Dictionary<string, List<string[]>> ReadTables()
    {
        var tables = new Dictionary<string, List<string[]>>();
        List<string[]>? rows = null;
        foreach (string line in File.ReadLines(Page()))
        {
            if (!line.StartsWith('|'))
            {
                rows = null;
                continue;
            }

            string[] cells = [.. line.Trim('|').Split('|').Select(cell => cell.Trim())];
            if (rows is null)
            {
                rows = [];
                tables.Add(cells[0] == "report" ? $"{cells[0]} | {cells[1]}" : cells[0], rows);
            }
            else if (!cells[0].StartsWith("---", StringComparison.Ordinal))
            {
                rows.Add(cells);
            }
        }

        return tables;
    }

    private static string Page()
    {
        for (DirectoryInfo? at = new(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            string page = Path.Combine(at.FullName, "docs", "method-diagnosing.md");
            if (File.Exists(page))
            {
                return page;
            }
        }

        throw new FileNotFoundException("docs/method-diagnosing.md is not above the tests.");
    }
}
