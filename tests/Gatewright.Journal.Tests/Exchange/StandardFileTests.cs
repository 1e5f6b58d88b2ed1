using System.Globalization;
using System.Text;
using Gatewright.Core.Geometry;
using Gatewright.Core.Judging;
using Gatewright.Journal.Exchange;

namespace Gatewright.Journal.Tests.Exchange;

/// <summary>A club's own standard, read from JSON.</summary>
public sealed class StandardFileTests
{
    public const string Whole =
        """
        {
          "format": "gatewright.standard/1",
          "name": "ours",
          "catch": { "lowest": 3.25, "highest": 5.5, "floor": 2.25 },
          "abeam": { "lowest": 3, "highest": 5, "floor": 2 },
          "finish": { "lowest": 1, "highest": 4.5, "floor": 0.5 },
          "largestDrop": 2.75,
          "largestRange": 1
        }
        """;

    private static readonly Standard s_ours = new(
        "ours",
        StationLimits.FromDegrees(3.25, 5.5, 2.25),
        StationLimits.FromDegrees(3, 5, 2),
        StationLimits.FromDegrees(1, 4.5, 0.5),
        Angle.FromDegrees(2.75),
        Angle.FromDegrees(1));

    [Fact]
    public void A_whole_standard_reads_as_it_stands() => Assert.Equal(s_ours, Of(Whole));

    [Fact]
    public void So_it_does_with_a_byte_order_mark_comments_and_a_comma_too_many() => Assert.Equal(
        s_ours, Of("\uFEFF// agreed in spring\n" + Whole.Replace("\"largestRange\": 1", "\"largestRange\": 1.0, /* elite: 0.5 */", StringComparison.Ordinal)));

    [Fact]
    public void So_it_does_under_a_decimal_comma()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal(s_ours, Of(Whole));
            Assert.Equal(
                "standard.json, at $.catch.lowest: '3.5' is above highest (2.5): expected lowest to be at most highest.",
                ErrorsOf("""{"format":"gatewright.standard/1","name":"ours","extends":"race","catch":{"lowest":3.5,"highest":2.5}}"""));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [InlineData("club")]
    [InlineData("race")]
    public void What_is_left_out_is_as_in_the_standard_that_it_extends(string basis)
    {
        Standard built = Standard.BuiltIn.Single(s => s.Name == basis);
        Assert.Equal(
            built with
            {
                Name = "ours",
                Finish = built.Finish with { Floor = Pitch.FromDegrees(1) },
                LargestRange = Angle.FromDegrees(0.75),
            },
            Of($$"""{"format":"gatewright.standard/1","name":" ours ","extends":"{{basis}}","finish":{"floor":1},"largestRange":0.75}"""));
    }

    [Theory]
    [InlineData("catch", "1.99", "2")]
    [InlineData("abeam", "1.99", "2")]
    [InlineData("finish", "-0.01", "0")]
    public void A_floor_below_the_built_in_one_is_taken_with_a_warning(string station, string floor, string builtIn)
    {
        StandardInput input = Read($$"""{"format":"gatewright.standard/1","name":"ours","extends":"club","{{station}}":{"floor": {{floor}} } }""");
        Assert.NotNull(input.Standard);
        Assert.Equal(
            $"standard.json, at $.{station}.floor: '{floor}' is below the built-in floor of {builtIn}: it takes away from the margin that keeps a blade from diving. Agree it with whoever answers for safety in the club.",
            Assert.Single(input.Warnings).ToString());
    }

    [Fact]
    public void A_floor_on_the_built_in_one_is_no_warning() => Assert.Empty(
        Read("""{"format":"gatewright.standard/1","name":"ours","extends":"club","catch":{"floor":2}}""").Warnings);

    [Fact]
    public void The_name_of_a_built_in_standard_is_taken_with_a_warning() => Assert.Equal(
        "standard.json, at $.name: 'Club' is also the name of a built-in standard, and a verdict does not tell them apart: choose another name.",
        Assert.Single(Read("""{"format":"gatewright.standard/1","name":"Club","extends":"club"}""").Warnings).ToString());

    private static Standard? Of(string json)
    {
        StandardInput input = Read(json);
        Assert.Equal("", Csv.Messages([.. input.Errors.Concat(input.Warnings).Select(e => e.ToString())]));
        return input.Standard;
    }

    private static string ErrorsOf(string json) => Csv.Messages([.. Read(json).Errors.Select(e => e.ToString())]);

    private static StandardInput Read(string json) => StandardFile.Read("standard.json", new MemoryStream(Encoding.UTF8.GetBytes(json)));
}
