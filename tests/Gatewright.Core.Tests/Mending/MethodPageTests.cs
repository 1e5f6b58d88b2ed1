using System.Globalization;
using Gatewright.Core.Advising;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Mending;
using Gatewright.Core.Tests.Support;

namespace Gatewright.Core.Tests.Mending;

/// <summary>That docs/method-advising-mending.md tells the numbers the program uses.</summary>
public sealed class MethodPageTests
{
    private static readonly Dictionary<string, List<string[]>> Tables = ReadTables();

    [Fact]
    public void Times_of_readings_are_those_of_the_page() => AssertNumbers(
        "reading", Enum.GetValues<NextItem>().ToDictionary(item => item.Code(), ReadingTimes.Default.Of));

    [Fact]
    public void Settings_of_the_advice_are_those_of_the_page() => AssertNumbers("setting", new()
    {
        ["cause found"] = AdvisingSettings.Default.CauseFound,
        ["lean known, degrees"] = AdvisingSettings.Default.LeanKnown.Degrees,
        ["verdict settled"] = AdvisingSettings.Default.VerdictSettled,
        ["least gain, bits"] = AdvisingSettings.Default.LeastGainBits,
        ["gates considered"] = AdvisingSettings.Default.MostGates,
    });

    [Fact]
    public void Lengths_are_those_of_the_page() => AssertNumbers("length", new()
    {
        ["pin's foot, from the shim to the edge it tips about"] = RigDimensions.Default.PinFootMm,
        ["between the upper and the lower bolt of the rigger's plate"] = RigDimensions.Default.PlateBoltsMm,
        ["pin's foot up to where the backstay holds the pin"] = RigDimensions.Default.BackstayHeightMm,
        ["pin's foot to its tip"] = RigDimensions.Default.PinLengthMm,
        ["shaft where the sleeve sits, across"] = RigDimensions.Default.ShaftDiameterMm,
    });

    [Fact]
    public void How_well_work_hits_is_that_of_the_page() => AssertNumbers("how well work hits", new()
    {
        ["insert, about its stamp"] = MendingSettings.Default.InsertU.Degrees,
        ["tilt by shim, washer or stay"] = MendingSettings.Default.TiltU.Degrees,
        ["new or straightened pin, refitted rigger, each way"] = MendingSettings.Default.NewPinU.Degrees,
    });

    [Fact]
    public void Remedies_and_their_minutes_are_those_of_the_page()
    {
        IEnumerable<Remedy> remedies = Faulty.EveryRemedy;
        string[] told = [.. Tables["cause"].Select(row => string.Join(' ', row)).Order(StringComparer.Ordinal)];

        Assert.Equal(
            remedies.Select(r => FormattableString.Invariant($"{r.Part.Cause.Code()} {r.Kind.Code()} {r.Minutes}")).Distinct().Order(StringComparer.Ordinal),
            told);
    }

    [Fact]
    public void Sizes_and_examples_in_the_text_are_those_of_the_program()
    {
        string page = string.Join('\n', Embedded.Lines("docs/method-advising-mending.md"));

        Assert.Equal([0.5, 1, 2], MendingSettings.Default.ShimSizesMm);
        Assert.Contains("come in 0.5, 1 and 2 mm, up to three on each other", page, StringComparison.Ordinal);
        Assert.Equal(3, ShimPack.Most);
        Assert.Contains($"1 mm under the pin's foot is {Tilt(RigDimensions.Default.PinFootMm)}°, 1 mm behind the plate {Tilt(RigDimensions.Default.PlateBoltsMm)}°", page, StringComparison.Ordinal);
        Assert.Contains(
            $"{Text(SleeveRemedy.RoundTheShaftMm(Angle.FromDegrees(1), 46), "0.0")} mm a degree round 46 mm", page, StringComparison.Ordinal);
        Assert.Contains($"likely cause ({Text(Remedies.LikelyEnough, "0.0")} or more)", page, StringComparison.Ordinal);
    }

    private static string Tilt(double length) => Text(Shim.Tilt(1, length).Degrees, "0.00");

    private static string Text(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);

    private static void AssertNumbers(string table, Dictionary<string, double> expected)
    {
        Dictionary<string, double> told = Tables[table].ToDictionary(row => row[0], row => double.Parse(row[1], CultureInfo.InvariantCulture));

        Assert.Equal(expected.OrderBy(e => e.Key, StringComparer.Ordinal), told.OrderBy(t => t.Key, StringComparer.Ordinal));
    }

    /// <summary>Every table of the page, by its first heading.</summary>
    private static Dictionary<string, List<string[]>> ReadTables()
    {
        var tables = new Dictionary<string, List<string[]>>();
        List<string[]>? rows = null;
        foreach (string line in Embedded.Lines("docs/method-advising-mending.md"))
        {
            string[] cells = [.. line.Trim('|').Split('|').Select(cell => cell.Trim())];
            if (!line.StartsWith('|'))
            {
                rows = null;
            }
            else if (rows is null)
            {
                tables.Add(cells[0], rows = []);
            }
            else if (!cells[0].StartsWith("---", StringComparison.Ordinal))
            {
                rows.Add(cells);
            }
        }

        return tables;
    }
}
